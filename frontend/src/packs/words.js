/** What a pack adds or changes, in words. */

const TABLES = {
  interfaces: 'connector',
  cables: 'cable',
  wire_lines: 'two-wire line',
  adapters: 'adapter',
  matings: 'mating',
  bands: 'band',
  modes: 'mode',
  house_limits: 'house limit',
  default_powers_w: 'default powers',
};

const spaced = (text) => text.replaceAll('_', ' ').replaceAll('.', ' ');

/** Paths of the core, "interfaces/bnc.working_voltage_rms_v.low", as "interface bnc (working voltage rms v low)". */
export function entriesInWords(paths) {
  const entries = new Map();
  for (const path of paths) {
    const [, table, id = '', inside = ''] = /^([^/]+)(?:\/([^.]+)(?:\.(.+))?)?$/.exec(path) ?? [];
    const name = `${TABLES[table]} ${id}`.trim();
    entries.set(name, [...(entries.get(name) ?? []), ...(inside ? [spaced(inside)] : [])]);
  }
  return [...entries].map(([name, fields]) => (fields.length > 0 ? `${name} (${fields.join(', ')})` : name)).join('; ');
}
