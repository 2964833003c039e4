/**
 * A pack's text as far as the page needs it: what it is called and what it names.
 *
 * Whether it is a good pack, the core says. What stands in it reaches the page
 * as text only.
 */

/**
 * What the page's lists need of an entry of each table; throws where it is not there.
 *
 * @type {Record<string, (entry: any) => boolean>}
 */
const SHAPES = {
  interfaces: () => true,
  cables: () => true,
  bands: ({regions}) => Object.keys(regions).length > 0,
  modes: ({duty_factor: {value}}) => Number.isFinite(value),
};

const isText = (value) => typeof value === 'string';

/**
 * What a pack is called; throws where the text is none.
 *
 * @typedef {{text: string, id: string, name: string}} Pack
 *
 * @param {string} text
 * @returns {Pack}
 */
export function readPack(text) {
  const pack = JSON.parse(text);
  const isSound = Object.entries(SHAPES).every(([table, has]) =>
    (pack[table] ?? []).every((entry) => isText(entry.id) && isText(entry.name) && has(entry)),
  );
  if (!isText(pack.id) || !isText(pack.name) || !isSound) throw new TypeError('no pack');
  return {text, id: pack.id, name: pack.name};
}
