/** What to pack for the lines and the kit, and what to do on arrival, as boxes to tick. */
import {jointsOf} from '../joints/identity.js';
import {frequency} from '../text/format.js';

/**
 * @import {LineRequest} from '../lines/document.js'
 *
 * @typedef {{id: string, words: string}} Item - `id` stays the same while what it is about does
 * @typedef {{heading: string, items: Item[]}} Group
 * @typedef {{pack: Group[], arrival: Group[]}} Checklist
 *
 * @typedef {{name: string, request: LineRequest, sheets: any}} FittedLine - with what the core says of fitting it
 */

const texts = (all) => all.map(({text}) => text);
const once = (all) => [...new Set(all)];
const group = (heading, items) => (items.length > 0 ? [{heading, items}] : []);

/** One spare pair of each family, whatever the lines have of it. */
function spares(sheets) {
  const counts = new Map();
  for (const {family_name: family} of sheets) counts.set(family, (counts.get(family) ?? 0) + 1);
  return [...counts].map(([family, count]) => ({
    id: `spare/${family}`,
    words: `Spare plug and jack of ${family}, for ${count === 1 ? 'one joint' : `${count} joints`}`,
  }));
}

/** The boxes of a joint: tightened, sealed where it is to be, looked at. */
function jointItems({label, sealing, torque}, code) {
  const item = (what, words) => ({id: `joint/${code}/${what}`, words: `${label.name}, ${label.family}: ${words}`});
  const layers = sealing.layers.map(({name}) => name).join(', ');
  return [
    item('looked', 'looked at, clean and dry'),
    ...(torque.tightened ? [item('tightened', `tightened, ${torque.figures}`)] : []),
    ...(layers ? [item('sealed', `sealed with ${layers}`)] : []),
  ];
}

/** What is measured once a line stands. */
function measured({name, sheets: {measurement}}) {
  const {frequency_hz: hertz, least_return_loss_db: least} = measurement;
  if (least === null) return [];
  const words = `Measured with a good load: return loss ${least.toFixed(0)} dB or more at ${frequency(hertz)}`;
  return [{id: `line/${name}/measured`, words}];
}

/**
 * @param {FittedLine[]} lines
 * @param {{adapters: {name: string, count: number}[]} | undefined} kit - what the core says of it
 * @returns {Checklist}
 */
export function checklistOf(lines, kit) {
  const sheets = lines.flatMap((line) => line.sheets.joints);
  const adapters = (kit?.adapters ?? []).map(({name, count}) => ({id: `adapter/${name}`, words: `${count} × ${name}`}));
  const tools = once(sheets.flatMap((sheet) => texts(sheet.tools))).map((text) => ({id: `tool/${text}`, words: text}));
  const arrival = lines.flatMap((line) => {
    const joints = jointsOf(line);
    const boxes = line.sheets.joints.flatMap((sheet, at) => jointItems(sheet, joints[at].code));
    return group(line.name, [...boxes, ...measured(line)]);
  });
  return {
    pack: [...group('Adapters', adapters), ...group('Tools', tools), ...group('Spares', spares(sheets))],
    arrival,
  };
}
