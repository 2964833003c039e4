/** What a pack may hold and what the catalogue has, as the build writes it. */
import START from '../../build/start-data.json';

export const {shapes: SHAPES, groups: GROUPS, kinds: KINDS, most_bytes: MOST_BYTES} = START.pack;

/** Entries that can be copied, by the pack's table. */
export const BUILT_IN = {
  interfaces: START.families,
  cables: START.cables,
  wire_lines: START.wire_lines,
  bands: START.bands,
  modes: START.modes,
};
