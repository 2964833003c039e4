/** The state as the fragment of the page's address, and back: only what differs from a first visit. */

/** Longest fragment that is read: more than the page ever writes, whatever is set in it. */
export const LONGEST_FRAGMENT = 8000;

const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);

function written(value) {
  return Array.isArray(value) ? value.join(',') : String(value);
}

function readOne(text, field) {
  if (field.type === 'number') return text === '' || !Number.isFinite(Number(text)) ? undefined : Number(text);
  if (field.type === 'boolean') return {true: true, false: false}[text];
  if (field.type === 'choice') return field.choices.includes(text) ? text : undefined;
  return text.length > (field.longest ?? Infinity) ? undefined : text;
}

function read(text, field) {
  if (field.type !== 'list') return readOne(text, field);
  const most = field.most ?? Infinity;
  const texts = text === '' ? [] : text.split(',', most + 1);
  if (texts.length < field.least || texts.length > most) return undefined;
  const items = texts.map((item) => readOne(item, field.items));
  return items.includes(undefined) ? undefined : items;
}

/** The fragment without its "#"; empty on a first visit. */
export function toFragment(state, first) {
  const entries = Object.keys(first)
    .filter((name) => !same(state[name], first[name]))
    .map((name) => `${name}=${encodeURIComponent(written(state[name])).replaceAll('%2C', ',')}`);
  return entries.join('&');
}

/** The state in a fragment, and the parts that name no field or hold no value of its kind. */
export function fromFragment(fragment, fields, first) {
  const state = {...first};
  const unknown = [];
  for (const [name, text] of new URLSearchParams(fragment.replaceAll('+', '%2B'))) {
    const value = Object.hasOwn(fields, name) ? read(text, fields[name]) : undefined;
    if (value === undefined) unknown.push(text === '' ? name : `${name}=${text}`);
    else state[name] = value;
  }
  return {state, unknown};
}
