/** The attributes of the element, each judged with a sentence that names it, its value and what is allowed. */
import {expectedSize, leadsToMatrix} from './question.js';

export const NAMES = ['src', 'link', 'power', 'theme', 'lang', 'compact', 'size'];
const THEMES = ['auto', 'light', 'dark'];
const SCHEMES = ['http:', 'https:', 'file:'];
const SIZE = /^([1-9]\d?|100)x([1-9]\d?|[12]\d\d|300)$/;

export class BadAttribute extends Error {
  /**
   * @param {string} name
   * @param {?string} value
   * @param {string} allowed
   */
  constructor(name, value, allowed) {
    super(`${name} is ${value === null ? 'missing' : `"${value.slice(0, 100)}"`}; allowed: ${allowed}.`);
    this.attribute = name;
  }
}

function address(name, text, allowed) {
  let found;
  try {
    found = new URL(text, document.baseURI);
  } catch {
    throw new BadAttribute(name, text, allowed);
  }
  if (!SCHEMES.includes(found.protocol)) throw new BadAttribute(name, text, allowed);
  return found;
}

function theme(text) {
  if (text !== null && !THEMES.includes(text)) throw new BadAttribute('theme', text, 'auto, light or dark');
  return text ?? 'auto';
}

function power(text) {
  if (text === null) return undefined;
  const watts = Number(text);
  if (text.trim() === '' || !(watts >= 0 && watts <= 1e5))
    throw new BadAttribute('power', text, 'a number from 0 to 100000, in W');
  return watts;
}

function size(text, link) {
  if (text === null) return expectedSize(link);
  const found = SIZE.exec(text);
  if (!found) throw new BadAttribute('size', text, 'rows x columns, such as 19x16');
  return {rows: Number(found[1]), columns: Number(found[2])};
}

function linked(text) {
  if (text === null) return undefined;
  const link = address('link', text, 'a link copied from the Jointwise page');
  if (!leadsToMatrix(link)) throw new BadAttribute('link', text, 'a link to a matrix, copied from the Jointwise page');
  return link;
}

/**
 * What the attributes say. Throws a BadAttribute.
 *
 * @param {Element} element
 * @param {boolean} given - whether the snapshot came by the property
 */
export function readAttributes(element, given) {
  const text = (name) => element.getAttribute(name);
  const src = text('src');
  const link = linked(text('link'));
  if (src === null && !link && !given) {
    throw new BadAttribute(
      'src',
      null,
      'the address of a snapshot, # and the id of one in the page, or a link to a server instead',
    );
  }
  return {
    block: src?.startsWith('#') ? src.slice(1) : undefined,
    src: src === null || src.startsWith('#') ? undefined : address('src', src, 'an http, https or relative address'),
    link,
    power: power(text('power')),
    theme: theme(text('theme')),
    compact: element.hasAttribute('compact'),
    size: size(text('size'), src === null ? link : undefined),
  };
}
