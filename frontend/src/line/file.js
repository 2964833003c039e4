/** Lines as a file to take along, and back. */
import {checkedLines} from '../shared/lines/check.js';

const FORMAT = 'jointwise lines';
const VERSION = 1;

export const asFile = (lines) => JSON.stringify({format: FORMAT, version: VERSION, lines}, null, 1);

/** The lines of a file. Throws a RangeError with one sentence for a file that can't be taken whole. */
export function fromFile(text, table) {
  let value;
  try {
    value = JSON.parse(text);
  } catch {
    throw new RangeError('The file is no JSON; allowed: a file of lines exported here.');
  }
  if (value?.format !== FORMAT) throw new RangeError(`format is ${JSON.stringify(value?.format) ?? 'left out'}; allowed: "${FORMAT}".`);
  if (value.version !== VERSION) throw new RangeError(`version is ${JSON.stringify(value.version) ?? 'left out'}; allowed: ${VERSION}.`);
  return checkedLines(value.lines, table);
}
