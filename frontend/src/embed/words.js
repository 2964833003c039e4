/**
 * The element's own words, by language. Names, formulas and reasons come from the core, in English.
 *
 * A language here is whole: each has the same keys.
 *
 * @typedef {typeof en} Words
 */
import {decibels, frequency, power as watts, quantity, roundedDown} from '../shared/text/format.js';
import {valueText} from '../shared/text/measures.js';
import {LIMITED_BY, LIMIT_NAMES} from '../shared/margins/limits.js';
import {printed, returnLossWord, spokenCell} from '../shared/margins/reading.js';
import {STEPS, stepOf} from '../shared/margins/scale.js';

const point = (text) => text;
const comma = (text) => text.replaceAll('.', ',');

/** Units of the conditions, by the ending of the field's name. */
const UNITS = {c: '°C', w_per_m2: 'W/m²', m: 'm', s: 's', ohm: 'Ω', db: 'dB'};

const en = {
  code: 'en',
  number: point,
  day: (iso) => new Intl.DateTimeFormat('en-GB', {dateStyle: 'long'}).format(new Date(iso)),
  title: 'Power margins of coaxial joints',
  family: 'Connector',
  power: 'Power',
  level: watts,
  fetching: 'Fetching the matrix…',
  kept: (day) => `The copy kept on ${day}; a newer one could not be fetched.`,
  unreachable: 'The matrix could not be fetched; check the network, then try again.',
  refused: (status) => `The matrix could not be fetched: the answer was ${status}.`,
  noBlock: (id) => `src is "#${id}"; allowed: the id of a data block in this page.`,
  misshapen: (where, why) => `${where} holds no snapshot that can be shown: ${why}.`,
  again: 'Try again',
  key: 'Margin, dB',
  steps: Object.fromEntries(STEPS.map(({id, words}) => [id, words])),
  station: (name) => (name ? `Station: ${name}` : 'Example station'),
  marks: 'Marks and words in the cells',
  undecided: 'uncertain: the sources disagree on which side of the limit it lies',
  lowerFromMemory: 'a power figure from memory is lower than the margin shown',
  holds: 'on receive: return loss 26 dB, enough; there is no power to carry',
  missed: 'return loss 8 dB, less than asked for',
  conditions: 'Conditions',
  fields: {
    mode: 'Mode',
    vswr: 'SWR',
    exposure: 'Where it is',
    added_sealing: 'Sealed with tape or a boot',
    ambient_temperature_c: 'Air temperature',
    solar_irradiance_w_per_m2: 'Sun on the joint',
    altitude_m: 'Altitude',
    vibration: 'Vibration',
    region: 'ITU Region',
    power_is: 'Powers are',
    transmit_share: 'Share on the air',
    on_time_s: 'One over',
    off_time_s: 'Pause after it',
    system_impedance_ohm: 'Line impedance',
    return_loss_asked_db: 'Return loss asked for',
    condition: 'Joint condition',
    cable: 'Cable',
    cable_diameter_m: 'Other cable, diameter',
    added_resistance_ohm: 'Added contact resistance',
    matings_per_year: 'Swaps per year',
    service_life_years: 'Years in service',
  },
  choices: {
    indoor: 'indoors',
    sheltered: 'outdoors, sheltered',
    exposed: 'outdoors, exposed',
    immersed: 'under water',
    none: 'none',
    vehicle: 'vehicle',
    severe: 'severe',
    forward: 'forward power',
    net: 'net power',
  },
  customary: 'the usual one of each connector',
  yes: 'yes',
  no: 'no',
  caution:
    'An estimate from published figures. RF burns, high voltage, heights and lightning can kill: ' +
    'local codes and licensed practice come first.',
  cautions: 'Before you work on it',
  full: 'Open on the full page',
  close: 'Close',
  limits: LIMIT_NAMES,
  match: 'Return loss',
  asked: (db) => `asked for: ${db} dB`,
  words: {},
  cell: spokenCell,
  verdict: (cell) => {
    if (cell.refusedBy?.id === 'match')
      return (
        `Refused: its return loss is ${cell.returnLoss.toFixed(1)} dB by the cautious sources, ` +
        `${cell.returnLossHigh.toFixed(1)} dB by the generous ones, less than asked for.`
      );
    if (cell.refusedBy) return `Refused: ${cell.refusedBy.name}.`;
    if (cell.margin === null) return `Return loss ${cell.returnLoss.toFixed(1)} dB; there is no power to carry.`;
    if (cell.margin >= 0) {
      const step = en.steps[stepOf(cell.margin)];
      return `${cell.margin.toFixed(1)} dB margin (${step}); limited by ${LIMITED_BY[cell.limit]}.`;
    }
    if (cell.undecided)
      return (
        `Uncertain: limited by ${LIMITED_BY[cell.limit]}; the cautious sources put it over the limit, ` +
        'the generous ones leave a margin.'
      );
    return `${decibels(-cell.margin).slice(1)} dB over the limit; limited by ${LIMITED_BY[cell.limit]}.`;
  },
  binds: 'limits',
  last: 'what it allows, and the margin',
  range: (low, high) => `${low} to ${high} dB`,
  allows: (low, high) => `allows ${low} to ${high}`,
  receiving: 'no margin on receive',
  below: (edge) => `below ${edge}`,
  between: (low, high) => `${low} to ${high}`,
  above: (edge) => `above ${edge}`,
  largest: (cell) =>
    cell.largest === null ? 'No power is safe.' : `Largest safe power ${watts(roundedDown(cell.largest, 3))} PEP.`,
  source: 'Source',
  at: (column) => `at ${frequency(column.high_hz)}`,
};

const LIMITS_DE = {
  contact: 'Erwärmung des Kontakts',
  cable: 'Erwärmung des Kabels',
  voltage: 'Spannung',
};

const de = {
  code: 'de',
  number: comma,
  day: (iso) => new Intl.DateTimeFormat('de', {dateStyle: 'long'}).format(new Date(iso)),
  title: 'Leistungsreserve von HF-Steckern',
  family: 'Stecker',
  power: 'Leistung',
  level: (value) => (value === 0 ? 'Empfang' : comma(watts(value))),
  fetching: 'Die Tabelle wird geholt …',
  kept: (day) => `Aufbewahrte Fassung vom ${day}; eine neuere war nicht zu erreichen.`,
  unreachable: 'Die Tabelle war nicht zu erreichen; bitte das Netz prüfen und erneut versuchen.',
  refused: (status) => `Die Tabelle war nicht zu holen: Die Antwort war ${status}.`,
  noBlock: (id) => `src ist „#${id}“; erlaubt: die id eines Datenblocks auf dieser Seite.`,
  misshapen: (where, why) => `${where} enthält keine Tabelle, die sich zeigen lässt: ${why}.`,
  again: 'Erneut versuchen',
  key: 'Reserve, dB',
  steps: {over: 'über der Grenze', at: 'an der Grenze', tight: 'knapp', fine: 'gut', ample: 'reichlich'},
  station: (name) => (name ? `Station: ${name}` : 'Beispielstation'),
  marks: 'Zeichen und Wörter in den Zellen',
  undecided: 'unsicher: die Quellen sind uneins, auf welcher Seite der Grenze es liegt',
  lowerFromMemory: 'ein Leistungswert aus dem Gedächtnis liegt unter der gezeigten Reserve',
  holds: 'beim Empfang: Rückflussdämpfung 26 dB, genug; Leistung ist keine zu tragen',
  missed: 'Rückflussdämpfung 8 dB, weniger als verlangt',
  conditions: 'Bedingungen',
  fields: {
    mode: 'Betriebsart',
    vswr: 'SWR',
    exposure: 'Standort',
    added_sealing: 'Mit Band oder Tülle abgedichtet',
    ambient_temperature_c: 'Lufttemperatur',
    solar_irradiance_w_per_m2: 'Sonne auf der Verbindung',
    altitude_m: 'Höhe',
    vibration: 'Erschütterung',
    region: 'ITU-Region',
    power_is: 'Leistung gilt als',
    transmit_share: 'Sendeanteil',
    on_time_s: 'Ein Durchgang',
    off_time_s: 'Pause danach',
    system_impedance_ohm: 'Leitungsimpedanz',
    return_loss_asked_db: 'Verlangte Rückflussdämpfung',
    condition: 'Zustand der Kontakte',
    cable: 'Kabel',
    cable_diameter_m: 'Anderes Kabel, Durchmesser',
    added_resistance_ohm: 'Zusätzlicher Kontaktwiderstand',
    matings_per_year: 'Steckvorgänge im Jahr',
    service_life_years: 'Betriebsjahre',
  },
  choices: {
    indoor: 'innen',
    sheltered: 'außen, geschützt',
    exposed: 'außen, frei',
    immersed: 'unter Wasser',
    none: 'keine',
    vehicle: 'Fahrzeug',
    severe: 'stark',
    forward: 'vorlaufende Leistung',
    net: 'abgegebene Leistung',
  },
  customary: 'das jeweils übliche des Steckers',
  yes: 'ja',
  no: 'nein',
  caution:
    'Eine Schätzung aus veröffentlichten Werten. HF-Verbrennung, Hochspannung, Absturz und Blitz können töten: ' +
    'Örtliche Vorschriften und fachkundige Praxis gehen vor.',
  cautions: 'Vor der Arbeit daran',
  full: 'Auf der ganzen Seite öffnen',
  close: 'Schließen',
  limits: LIMITS_DE,
  match: 'Rückflussdämpfung',
  asked: (db) => `verlangt: ${db} dB`,
  words: {
    te11: 'TE11',
    cable_te11: 'TE11',
    no_figures: 'Freq.',
    receive_only: 'nur Rx',
    no_heat_room: 'heiß',
    immersion: 'nass',
  },
  cell: (cell) => {
    const where = `${cell.family.name}, ${cell.column.name}, ${de.level(cell.power)}`;
    if (cell.refusedBy?.id === 'match')
      return `${where}: ausgeschlossen, ${returnLossWord(cell.returnLoss)}, Rückflussdämpfung in dB zu klein`;
    if (cell.refusedBy) return `${where}: ausgeschlossen, ${de.words[cell.refusedBy.id] ?? cell.refusedBy.name}`;
    if (cell.margin === null) return `${where}: ${returnLossWord(cell.returnLoss)}, Rückflussdämpfung in dB`;
    const step = de.steps[stepOf(cell.margin)];
    const parts = [
      `${where}: Reserve ${comma(decibels(cell.margin))} dB, ${step}, begrenzt durch ${LIMITS_DE[cell.limit]}`,
    ];
    parts.push(`Bereich ${comma(decibels(cell.margin))} bis ${comma(decibels(cell.high))} dB`);
    if (cell.undecided) parts.push(de.undecided);
    if (cell.lowerFromMemory) parts.push(de.lowerFromMemory);
    return [...parts, ...cell.marks.map((gate) => gate.name)].join('. ');
  },
  verdict: (cell) => {
    if (cell.refusedBy?.id === 'match')
      return (
        `Ausgeschlossen: Rückflussdämpfung nach den vorsichtigen Quellen ${comma(cell.returnLoss.toFixed(1))} dB, ` +
        `nach den großzügigen ${comma(cell.returnLossHigh.toFixed(1))} dB, weniger als verlangt.`
      );
    if (cell.refusedBy) return `Ausgeschlossen: ${cell.refusedBy.name}.`;
    if (cell.margin === null)
      return `Rückflussdämpfung ${comma(cell.returnLoss.toFixed(1))} dB; Leistung ist keine zu tragen.`;
    if (cell.margin >= 0) {
      const step = de.steps[stepOf(cell.margin)];
      return `${comma(cell.margin.toFixed(1))} dB Reserve (${step}); begrenzt durch ${LIMITS_DE[cell.limit]}.`;
    }
    if (cell.undecided)
      return (
        `Unsicher: ${LIMITS_DE[cell.limit]} ist nach den vorsichtigen Quellen überschritten, ` +
        'nach den großzügigen nicht.'
      );
    return `Grenze um ${comma(decibels(-cell.margin).slice(1))} dB überschritten: ${LIMITS_DE[cell.limit]}.`;
  },
  binds: 'begrenzt',
  last: 'was es erlaubt, und die Reserve',
  range: (low, high) => `${low} bis ${high} dB`,
  allows: (low, high) => `erlaubt ${low} bis ${high}`,
  receiving: 'keine Reserve beim Empfang',
  below: (edge) => `unter ${edge}`,
  between: (low, high) => `${low} bis ${high}`,
  above: (edge) => `über ${edge}`,
  largest: (cell) =>
    cell.largest === null
      ? 'Keine Leistung ist sicher.'
      : `Größte sichere Leistung ${comma(watts(roundedDown(cell.largest, 3)))} PEP.`,
  source: 'Quelle',
  at: (column) => `bei ${comma(frequency(column.high_hz))}`,
};

const LANGUAGES = new Map([
  ['en', en],
  ['de', de],
]);

/**
 * The words of a language tag such as de-AT; English where there are none.
 *
 * @param {string} tag
 * @returns {Words}
 */
export const wordsFor = (tag) => LANGUAGES.get(tag.toLowerCase().split('-')[0]) ?? en;

/** What a cell prints. */
export const printedIn = (words, cell) => words.words[cell.refusedBy?.id] ?? words.number(printed(cell, 'margin'));

/**
 * Whose station a snapshot is of, and of what day; what none says is an example of this version.
 *
 * @param {Words} words
 * @param {import('./snapshot.js').Snapshot | undefined} snapshot
 * @param {string} version - of this script
 */
export function stationIn(words, snapshot, version) {
  const {name = '', date} = snapshot?.station ?? {};
  return [words.station(name), date ? words.day(date) : `Jointwise ${version}`].join(', ');
}

/** A value with its unit, as the language writes numbers. */
export const quantityIn = (words, value, unit) => words.number(quantity(value, unit));

/** What a snapshot was asked with: pairs of a label and a value; what the catalogue names keeps its name. */
export function conditionsIn(words, {request, names}) {
  const given = Object.entries(words.fields).filter(([name]) => (request[name] ?? null) !== null || name === 'cable');
  const value = (name, one) => {
    if (name in names) return names[name];
    if (name === 'cable') return words.customary;
    if (typeof one === 'boolean') return one ? words.yes : words.no;
    if (typeof one !== 'number') return Object.hasOwn(words.choices, one) ? words.choices[one] : String(one);
    const unit = Object.keys(UNITS).find((ending) => name.endsWith(`_${ending}`));
    return words.number(valueText(one, UNITS[unit] ?? '', undefined, request.units ?? 'metric'));
  };
  return given.map(([name, label]) => [label, value(name, request[name])]);
}
