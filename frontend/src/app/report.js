/** A fault as text that can be sent to whoever looks after the page: what of it is the reader's own is left out. */

const LONGEST_MESSAGE = 300;
const MOST_LINES = 12;
const ADDRESS = /\b(?:file|https?|blob|data):[^\s()]*?([^\s()/]*?)(?:[?#][^\s():]*)?(:\d+:\d+)?(?=[\s)]|$)/g;
/** What an engine quotes of a text it could not read. */
const QUOTED = /"(?:[^"\\]|\\.)*"|“[^”]*”/g;

const anonymous = (text) => text.replace(ADDRESS, '$1$2').replace(QUOTED, '"…"');

/**
 * @param {Error} error
 * @param {{version: string, view: string}} where
 */
export function reportOf(error, {version, view}) {
  const message = anonymous(`${error.name}: ${error.message}`).slice(0, LONGEST_MESSAGE);
  // some engines begin the stack with the message
  const calls = (error.stack ?? '')
    .split('\n')
    .filter((line) => /^\s*at |@/.test(line) && !line.includes(error.message));
  const stack = calls.slice(0, MOST_LINES).map((line) => anonymous(line).trim());
  return [`Jointwise ${version}`, `View: ${view}`, `Message: ${message}`, ...stack].join('\n');
}
