/**
 * Where the parts of a line stand when it is drawn, in rows from the transmitter to the antenna.
 *
 * Cables share the room that is left by the root of their length, so that a
 * patch lead and a long run both can be seen.
 */

export const ROW_HEIGHT = 128;
/** How far below the top of its row a part's own line runs. */
export const AXIS = 56;
const WIDTHS = {start: 66, joint: 62, end: 84};
/** Of a part in a box. */
const BOX = 86;
/** What is drawn as long as it is. */
export const RUNS = ['cable', 'wires', 'section'];
const CABLE = {least: 76, perRootMetre: 17};
/** Of what a cable would like beyond its least, it gets at most so much in the last row. */
const MOST_STRETCH = 3;
const CHARACTER = 6.4;

/** The least room an item needs, and what a cable would like beyond it. */
function wanted({kind, length_m}, most) {
  if (!RUNS.includes(kind)) return {width: Math.min(WIDTHS[kind] ?? BOX, most), more: 0};
  return {width: Math.min(CABLE.least, most), more: CABLE.perRootMetre * Math.sqrt(length_m)};
}

function rowsOf(items, width) {
  const rows = [];
  let room = 0;
  for (const item of items) {
    const own = wanted(item, width);
    if (rows.length === 0 || own.width > room) {
      rows.push([]);
      room = width;
    }
    rows.at(-1).push({...item, ...own});
    room -= own.width;
  }
  return rows;
}

function stretched(row, width, last) {
  const sum = (key) => row.reduce((all, one) => all + one[key], 0);
  const liked = sum('more');
  if (liked === 0) return row;
  const whole = (width - sum('width')) / liked;
  const factor = last ? Math.min(whole, MOST_STRETCH) : whole;
  return row.map((one) => ({...one, width: one.width + factor * one.more}));
}

/**
 * Items with `x`, `y`, `width` in a drawing of `width` pixels, and its height.
 *
 * @param {{kind: string, length_m?: number}[]} items - start, the parts, end
 */
export function laidOut(items, width) {
  const rows = rowsOf(items, width);
  const placed = rows.flatMap((row, at) => {
    let x = 0;
    return stretched(row, width, at === rows.length - 1).map((item) => {
      const here = {...item, x, y: at * ROW_HEIGHT, row: at};
      x += item.width;
      return here;
    });
  });
  return {items: placed, rows: rows.length, height: rows.length * ROW_HEIGHT};
}

/** A name on at most two lines of a width in pixels; what does not fit is cut. */
export function twoLines(name, width) {
  const most = Math.max(Math.floor(width / CHARACTER), 4);
  const cut = (text) => (text.length > most ? `${text.slice(0, most - 1)}…` : text);
  if (name.length <= most) return [name];
  const space = name.lastIndexOf(' ', most);
  if (space <= 0) return [cut(name)];
  return [name.slice(0, space), cut(name.slice(space + 1))];
}
