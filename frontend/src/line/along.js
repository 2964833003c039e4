/** The ways to take lines along and to bring them in; each resolves to a notice for the reader, or to nothing. */
import {copyLink} from '../shared/export/copy-link.js';
import {saveJson} from '../shared/export/save.js';
import {currentOf} from '../shared/lines/document.js';
import {toLink} from '../shared/lines/link.js';
import {LONGEST_LINK} from '../shared/state/document-link.js';
import {contentOf, fromFile} from './file.js';

const TOO_LONG = `This line is too long for a link (over ${LONGEST_LINK} characters); export it as a file instead.`;

export const ALONG = {
  export: async (document) => saveJson('jointwise-lines.json', contentOf(document.lines)),
  link: async (document) => (toLink(currentOf(document), null).whole ? copyLink() : {text: TOO_LONG}),
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
