/**
 * Lays packs over the lists the page's forms offer, as the core lays them over its catalogue.
 *
 * The lists are the snapshot's own, so that every form has the packs' entries
 * without knowing of packs; an entry of a pack says so in its name.
 */
import snapshot from '../../../build/snapshot.json';
import {FIELDS, FIRST_STATE} from '../state/station.js';

const BUILT_IN = structuredClone({
  families: snapshot.families,
  cables: snapshot.cables,
  bands: snapshot.bands,
  modes: snapshot.modes,
  powers: FIRST_STATE.powers_w,
});

const ENTRY = {
  families: ({id, name}) => ({id, name}),
  cables: ({id, name, dielectric, outer_diameter_m: diameter}) => ({id, name, dielectric, diameter_m: diameter.value}),
  bands: ({id, name, regions}) => ({id, name, regions: Object.keys(regions).sort()}),
  modes: (mode) => mode,
};
const OF_PACK = {families: 'interfaces', cables: 'cables', bands: 'bands', modes: 'modes'};

/** @param {{text: string}[]} packs - those in force, which the core has taken */
export function layOver(packs) {
  const read = packs.map(({text}) => JSON.parse(text));
  for (const [list, table] of Object.entries(OF_PACK)) {
    const entries = new Map(BUILT_IN[list].map((entry) => [entry.id, entry]));
    for (const pack of read) {
      for (const entry of pack[table] ?? []) {
        const {name, ...rest} = ENTRY[list](entry);
        entries.set(entry.id, {...rest, name: `${name} (pack ${pack.name})`});
      }
    }
    snapshot[list].splice(0, Infinity, ...entries.values());
  }
  const powers = read.findLast(({default_powers_w: given}) => given?.length)?.default_powers_w ?? BUILT_IN.powers;
  FIRST_STATE.powers_w = FIELDS.powers_w.default = powers;
  snapshot.packed = packs.length > 0;
}
