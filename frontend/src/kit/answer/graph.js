/**
 * Where the ports of a kit and the lines of its pairs stand when they are drawn.
 *
 * On a wide drawing the ports stand around an ellipse and lines bend towards its
 * middle; on a narrow one they stand in a column and the lines are bows beside it.
 */

/** More would be a tangle; the list has them all. */
export const MOST_DRAWN = 24;
const NARROW = 560;
const ROW = 44;
const MARK_APART = 26;
const LABEL_ROOM = 150;
const COLUMN = 150;
const SIDE = 22;
/** How far a line of the ellipse bends from its own middle to that of the drawing. */
const BEND = 0.15;
/** Where on a line its mark may stand; the first place that is free is taken. */
const PLACES = [0.5, 0.42, 0.58, 0.34, 0.66, 0.27, 0.73, 0.2, 0.8];

/** @typedef {{x: number, y: number}} Point */

const mixed = (a, b, t) => ({x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t});
const apart = (a, b) => Math.hypot(a.x - b.x, a.y - b.y);

/**
 * The point at `t` of a curve with these control points.
 *
 * @param {Point[]} points
 * @param {number} t - from 0 to 1
 * @returns {Point}
 */
function along(points, t) {
  if (points.length === 1) return points[0];
  return along(
    points.slice(1).map((point, at) => mixed(points[at], point, t)),
    t,
  );
}

const written = ({x, y}) => `${x.toFixed(1)} ${y.toFixed(1)}`;

/** @param {Point[]} points */
function pathOf([start, ...rest]) {
  return `M${written(start)}${rest.length === 3 ? 'C' : 'Q'}${rest.map(written).join(' ')}`;
}

function around(count, width) {
  const height = Math.min(Math.max(count * 48, 280), 560);
  const middle = {x: width / 2, y: height / 2};
  const [wide, high] = [width / 2 - LABEL_ROOM - 10, height / 2 - 44];
  const points = Array.from({length: count}, (_, at) => {
    const turn = (2 * Math.PI * at) / count - Math.PI / 2;
    const [side, level] = [Math.cos(turn), Math.sin(turn)];
    const upright = Math.abs(side) < 0.2;
    return {
      x: middle.x + wide * side,
      y: middle.y + high * level,
      anchor: upright ? 'middle' : side > 0 ? 'start' : 'end',
      label: upright ? {x: 0, y: level < 0 ? -27 : 22} : {x: side > 0 ? 13 : -13, y: -3},
    };
  });
  return {points, height, curve: (one, other) => [one, mixed(mixed(one, other, 0.5), middle, BEND), other]};
}

function stacked(count, width, longest) {
  const points = Array.from({length: count}, (_, at) => ({
    x: COLUMN,
    y: ROW * (at + 0.5),
    anchor: 'end',
    label: {x: -13, y: -3},
  }));
  // a bow with both control points at this distance stands out by three quarters of it
  const reach = (width - COLUMN - SIDE) / 0.75 / longest;
  const curve = (one, other) => {
    const x = COLUMN + (reach * Math.abs(one.y - other.y)) / ROW;
    return [one, {x, y: one.y}, {x, y: other.y}, other];
  };
  return {points, height: ROW * count, curve};
}

/**
 * {height, ports: [{x, y, anchor, label}], lines: [{path, mark}]} in a drawing of `width` pixels; label is where the
 * name stands from its port, mark where a line is told about.
 */
export function laidOut(count, pairs, width) {
  const longest = Math.max(1, ...pairs.map(([one, other]) => Math.abs(one - other)));
  const {points, height, curve} = width < NARROW ? stacked(count, width, longest) : around(count, width);
  const marks = [];
  const lines = pairs.map(([one, other]) => {
    const bow = curve(points[one], points[other]);
    const places = PLACES.map((t) => along(bow, t));
    const free = places.find((place) => marks.every((mark) => apart(mark, place) >= MARK_APART));
    marks.push(free ?? places[0]);
    return {path: pathOf(bow), mark: marks.at(-1)};
  });
  return {height, ports: points, lines};
}

/** What stands on a line: how many adapters, "no" where nothing joins the pair, "!" where it looks as if it fitted. */
export const markOf = ({joined, trap}) => `${joined ? joined.adapters.length : 'no'}${trap ? '!' : ''}`;

/** The drawing in a sentence. */
export function spokenGraph(count, {pairs, joined}) {
  const unjoined = pairs.length - joined;
  const rest = unjoined === 0 ? 'all can be joined' : `${joined} can be joined, ${unjoined} can’t`;
  const many = pairs.length === 1 ? '1 pair' : `${pairs.length} pairs`;
  return `${count} ports and ${many}: ${rest}. Every pair is in the list below.`;
}
