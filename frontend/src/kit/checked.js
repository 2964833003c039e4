/** Reads a kit that comes from outside, a link or what the browser kept: all or nothing, as a line is read. */
import {fields, list, record, refuse, text} from '../shared/state/check.js';

function pair(path, value, count) {
  const ends = list(path, value, 2, 2, 'ports');
  const wrong = ends.find((port) => !Number.isInteger(port) || port < 0 || port >= count);
  if (wrong !== undefined) refuse(path, value, `numbers of ports, 0 to ${count - 1}`);
}

/** Rows of a packing list that may be ticked, and letters of each: more than there are. */
const MOST_TICKED = 400;
const LONGEST_ROW = 200;

/** What kits held before the cable itself was asked for; it is left behind. */
export const OF_THE_PAST = 'cable_dielectric';

/** A request as it may be asked. Throws a RangeError whose message is for the reader. */
export function checkedKit(given, table) {
  const {ports, owned, pairs, ...rest} = table.kit;
  const {[OF_THE_PAST]: _, ...value} = record('kit', given);
  // a kit begins with nothing; the core is asked once there is a pair
  list('ports', value.ports, 0, ports.most, 'ports').forEach((port, at) => {
    fields(`ports[${at}]`, record(`ports[${at}]`, port), table.port);
  });
  if (value.owned !== undefined) {
    list('owned', value.owned, owned.least, owned.most, 'adapters').forEach((adapter, at) => {
      fields(`owned[${at}]`, record(`owned[${at}]`, adapter), table.owned);
    });
  }
  if (value.pairs !== undefined) {
    list('pairs', value.pairs, pairs.least, pairs.most, 'pairs').forEach((one, at) =>
      pair(`pairs[${at}]`, one, value.ports.length),
    );
  }
  if (value.ticked !== undefined)
    list('ticked', value.ticked, 0, MOST_TICKED, 'rows').forEach((row, at) => text(`ticked[${at}]`, row, LONGEST_ROW));
  fields('', value, rest, ['ports', 'owned', 'pairs', 'ticked']);
  return value;
}
