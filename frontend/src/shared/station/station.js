/**
 * The station: what every view is asked about, described once.
 *
 * @typedef {{name: string, power_w: number, behaviour?: string, family?: string, gender?: string}} Rig - a transmitter
 * with its greatest power, what it does at a bad SWR, and its output socket
 * @typedef {{name: string, load: {kind: string, [field: string]: any}}} Antenna - `load` as a line's
 * @typedef {{name: string, family: string, gender: string, highest_frequency_hz: number, power_w: number,
 *   impedance_ohm?: number}} GearPort - as a kit's
 * @typedef {Record<string, any>} Settings - by their request names; what is left out is what the core takes then
 *
 * @typedef {object} Station
 * @property {number} version
 * @property {string} name - printed on paper
 * @property {string} address - of the page on the web, where links and codes lead; empty for where the page is
 * @property {'metric' | 'us'} units
 * @property {Settings} settings - fields that requests of several operations share
 * @property {Rig[]} rigs
 * @property {number} rig - the one in use; -1 for none
 * @property {Antenna[]} antennas
 * @property {number} antenna - the one in use; -1 for none
 * @property {GearPort[]} gear
 * @property {string[]} cables - those in use, by id
 *
 * @typedef {Partial<Station>} StationChanges - of the settings only those named change; one that is undefined or null
 * is as where none is given
 */

export const VERSION = 1;

/** @type {Station} */
export const FIRST_STATION = Object.freeze({
  version: VERSION,
  name: '',
  address: '',
  units: 'metric',
  settings: {},
  rigs: [],
  rig: -1,
  antennas: [],
  antenna: -1,
  gear: [],
  cables: [],
});

/** @param {Station} station */
export const rigOf = ({rigs, rig}) => rigs[rig];

/** @param {Station} station */
export const antennaOf = ({antennas, antenna}) => antennas[antenna];

const isSaid = (value) => value !== undefined && value !== null;

/** A line is looked at on a band or at a spot frequency: the one that is said last. */
function settled(settings, changes) {
  const said = Object.fromEntries(Object.entries({...settings, ...changes}).filter(([, value]) => isSaid(value)));
  if (isSaid(changes.band)) delete said.frequency_hz;
  else if (isSaid(changes.frequency_hz)) delete said.band;
  return said;
}

/**
 * @param {Station} station
 * @param {StationChanges} changes
 * @returns {Station}
 */
export const changed = (station, {settings, ...rest}) => ({
  ...station,
  ...rest,
  settings: settings ? settled(station.settings, settings) : station.settings,
});

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

/** The values of `of` where it differs from `other`; undefined stands for what it leaves out. */
const differing = (of, other) =>
  Object.fromEntries(
    Object.keys({...of, ...other})
      .filter((name) => !same(of[name], other[name]))
      .map((name) => [name, of[name]]),
  );

/**
 * The changes that lead from one station to another.
 *
 * @param {Station} from
 * @param {Station} to
 * @returns {StationChanges}
 */
export function changesBetween(from, to) {
  const {settings: _, ...rest} = differing(to, from);
  const settings = differing(to.settings, from.settings);
  return Object.keys(settings).length > 0 ? {...rest, settings} : rest;
}

/** What the load of an antenna says of the SWR on the line; one known in another way says nothing. */
const vswrOf = (antenna) => (antenna?.load.kind === 'vswr' ? {vswr: antenna.load.vswr} : {});

/**
 * The changes that put a rig to use: it gives the power.
 *
 * @param {Station} station
 * @param {number} rig - its place; -1 for none
 * @returns {StationChanges}
 */
export const withRig = ({rigs}, rig) => ({rig, settings: {power_w: rigs[rig]?.power_w}});

/**
 * The changes that put an antenna to use: one known by its SWR gives that of the line.
 *
 * @param {Station} station
 * @param {number} antenna - its place; -1 for none
 * @returns {StationChanges}
 */
export const withAntenna = ({antennas}, antenna) => ({
  antenna,
  settings: {vswr: undefined, ...vswrOf(antennas[antenna])},
});

/**
 * The settings of a station of which nothing is said but its rig and its antenna.
 *
 * @param {Station} station
 * @returns {Settings}
 */
export const plainSettings = (station) => ({
  ...(rigOf(station) && {power_w: rigOf(station).power_w}),
  ...vswrOf(antennaOf(station)),
});

/**
 * What a line of this station ends in: the antenna in use, with the SWR looked at where it is known by one.
 *
 * @param {Station} station
 * @param {number} firstVswr - where none is said
 */
export function loadOf(station, firstVswr) {
  const load = antennaOf(station)?.load ?? {kind: 'vswr'};
  return load.kind === 'vswr' ? {...load, vswr: station.settings.vswr ?? firstVswr} : load;
}

/**
 * What sends into a line of this station; undefined where nothing is known of it.
 *
 * @param {Station} station
 */
export const transmitterOf = (station) => rigOf(station)?.behaviour && {behaviour: rigOf(station).behaviour};

/**
 * What counts in a field: the setting, or what counts where nothing is said. Either band or frequency is looked at.
 *
 * @param {Settings} settings
 * @param {string} name
 * @param {any} first - where nothing is said
 */
export function settingOf(settings, name, first) {
  if (name === 'band' && isSaid(settings.frequency_hz)) return null;
  return settings[name] ?? first;
}

/**
 * A question with the station's settings in the places that are not its own.
 *
 * @param {Record<string, any>} own
 * @param {Station} station
 * @param {Record<string, any>} first - by the name of each field, what counts where nothing is said
 */
export const withSettings = (own, {settings}, first) =>
  Object.fromEntries(
    Object.keys(first).map((name) => {
      if (Object.hasOwn(own, name)) return [name, own[name]];
      return [name, settingOf(settings, name, first[name])];
    }),
  );

/**
 * The station of a link: all of it where the link describes one, else the settings it names without rig and antenna of
 * one's own, as links had before there were stations. The reader's own address is not the link's matter, nor metric
 * units.
 *
 * @param {Station} station - at hand
 * @param {StationChanges} changes - what the link says
 * @returns {Station}
 */
export function fromLink(station, {settings = {}, units = station.units, ...rest}) {
  const {address} = station;
  const base = Object.keys(rest).length > 0 ? {...FIRST_STATION, address} : {...station, rig: -1, antenna: -1};
  return {...base, ...rest, units, settings};
}

/**
 * The station with the settings of a time before; what it has stays.
 *
 * @param {Station} station
 * @param {StationChanges} [changes] - what the address said then; none where nothing differed from a first visit
 * @returns {Station}
 */
export const broughtBack = (station, changes) =>
  same(station.settings, changes?.settings ?? {}) ? station : {...station, settings: changes?.settings ?? {}};
