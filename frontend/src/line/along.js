/** The ways to take lines along and to bring them in; each resolves to a notice for the reader, or to nothing. */
import {saveJson} from '../shared/export/save.js';
import {contentOf, fromFile} from './file.js';

export const ALONG = {
  export: async (document) => saveJson('jointwise-lines.json', contentOf(document.lines)),
  print: async () => window.print(),
};

/** The edit that brings the lines of a file in, or the notice that says why none came. */
export async function broughtIn(file, table) {
  try {
    return {edit: {kind: 'insert', lines: fromFile(await file.text(), table)}};
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return {notice: {text: `${file.name} is refused: ${error.message} Nothing was changed.`}};
  }
}
