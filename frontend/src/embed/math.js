/** A formula's MathML as elements: tag by tag from a list, so that a snapshot can bring nothing else in. */

const NAMESPACE = 'http://www.w3.org/1998/Math/MathML';
const KNOWN = new Set([
  'math',
  'mrow',
  'mi',
  'mo',
  'mn',
  'mtext',
  'msub',
  'msup',
  'mfrac',
  'msqrt',
  'mtable',
  'mtr',
  'mtd',
]);
const NAMED = {amp: '&', lt: '<', gt: '>', quot: '"'};
const PIECES = /<(\/?)([a-z]+)[^<>]*>|([^<]+)/g;
/** The deepest formula of the core has a third of it. */
const DEEPEST = 40;

const decoded = (text) =>
  text.replace(/&(?:#(\d{1,6})|([a-z]+));/g, (whole, number, name) =>
    number ? String.fromCodePoint(number) : (NAMED[name] ?? whole),
  );

/**
 * The math element; undefined when the markup is none, or holds what no formula does.
 *
 * @param {string} markup
 */
export function mathElement(markup) {
  const root = document.createElementNS(NAMESPACE, 'mrow');
  const open = [root];
  for (const [, closes, name, text] of markup.matchAll(PIECES)) {
    const innermost = open[open.length - 1];
    if (text !== undefined) innermost.append(decoded(text));
    else if (!KNOWN.has(name)) return undefined;
    else if (closes) {
      open.pop();
      if (innermost.localName !== name || open.length === 0) return undefined;
    } else {
      const child = document.createElementNS(NAMESPACE, name);
      innermost.append(child);
      if (open.push(child) > DEEPEST) return undefined;
    }
  }
  const math = root.firstElementChild;
  if (open.length !== 1 || math?.localName !== 'math') return undefined;
  math.setAttribute('display', 'block');
  return math;
}
