/** The lines this browser keeps. */
import {Kept} from '../state/kept.js';
import {freeName, mergedLists} from '../state/merge.js';
import {LONGEST_NAME, checkedLines} from './checked.js';

/** @import {LineDocument} from './document.js' */

const PLACE = {
  key: 'jointwise-lines',
  blocked: 'This browser keeps nothing for the page: your lines end when it is closed. Export them to keep them.',
  full: 'This browser has no room for all of your lines: the latest changes are not kept. Export them to keep them.',
  spoilt:
    'The lines kept in this browser could not be read and were set aside. ' +
    'Save them as a file to look for what is left.',
};

/**
 * The lines of both tabs, this tab's shown; a line that both changed stands there twice.
 *
 * @param {import('../state/kept.js').Versions<LineDocument>} versions
 * @returns {LineDocument}
 */
function merged({base, mine, theirs}) {
  const shown = mine.lines[mine.current];
  const requests = new Set(mine.lines.map(({request}) => JSON.stringify(request)));
  const lines = mergedLists(
    {base: base.lines, mine: mine.lines, theirs: theirs.lines},
    ({name}) => name,
    (line, taken) =>
      requests.has(JSON.stringify(line.request))
        ? undefined
        : {...line, name: freeName(line.name, taken, LONGEST_NAME)},
  );
  const at = lines.findIndex(({name}) => name === shown.name);
  return {lines, current: at === -1 ? Math.min(mine.current, lines.length - 1) : at};
}

export const KEPT_LINES = new Kept(
  PLACE,
  ({lines, current}, fields) => {
    const checked = checkedLines(lines, fields);
    return {lines: checked, current: Number.isInteger(current) && checked[current] ? current : 0};
  },
  merged,
);
