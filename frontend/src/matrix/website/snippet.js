/** What a webmaster pastes: one line of markup for each way to bring the matrix in. */

export const SNAPSHOT_FILE = 'club-matrix.json';
export const SCRIPT_FILE = 'embed.js';

/** What the frame's page has above and below its rows, in px; a script on the website makes it exact. */
const FRAME_AROUND = 460;
const FRAME_ROW = 46;
const FRAME_COMPACT_ROW = 28;

const quoted = (text) => `"${String(text).replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;')}"`;

/** Attributes as markup; false and empty ones are left out. */
function tag(name, attributes) {
  const given = Object.entries(attributes).filter(([, value]) => value !== '' && value !== false);
  const written = given.map(([key, value]) => (value === true ? ` ${key}` : ` ${key}=${quoted(value)}`));
  return `<${name}${written.join('')}></${name}>`;
}

/** Lets a frame have the height its page tells; a site without scripts leaves it out. */
const FITTED =
  '<script>addEventListener("message",e=>{for(const f of document.querySelectorAll("iframe"))' +
  'if(f.contentWindow===e.source&&e.data&&e.data.type==="jointwise-height")f.height=e.data.height})</script>';

/**
 * @typedef {{theme: string, lang: string, compact: boolean, page: string}} Look - with the address of the full page
 *
 * @param {string} way - files, server or frame
 * @param {Look & {server: string, fragment: string, rows: number, columns: number}} wanted - with the address of this
 * page's server, and the scenario as in a link
 */
export function snippet(way, {server, fragment, page, theme, lang, compact, rows, columns}) {
  const look = {theme: theme === 'auto' ? '' : theme, lang, compact};
  const link = fragment ? `${server}#${fragment}` : server;
  const script = (src) => tag('script', {src});
  switch (way) {
    case 'files':
      return (
        script(SCRIPT_FILE) +
        tag('jointwise-matrix', {src: SNAPSHOT_FILE, size: `${rows}x${columns}`, link: page, ...look})
      );
    case 'server':
      return script(new URL(SCRIPT_FILE, server).href) + tag('jointwise-matrix', {link, ...look});
  }
  const address = new URL('embed.html', server);
  const query = Object.entries(look)
    .filter(([, value]) => value)
    .map(([name, value]) => [name, value === true ? '' : String(value)]);
  address.search = String(new URLSearchParams(query));
  address.hash = fragment;
  const height = FRAME_AROUND + rows * (compact ? FRAME_COMPACT_ROW : FRAME_ROW);
  return (
    tag('iframe', {
      src: address.href,
      title: 'Power margins of coaxial joints',
      width: '100%',
      height,
      loading: 'lazy',
    }) + FITTED
  );
}
