/** Arrow keys on a grid whose header row and header column are numbered -1. */

const STEPS = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

const clamp = (value, low, high) => Math.min(Math.max(value, low), high);

/** Where a key leads from [row, column] in a grid of so many rows and columns; undefined for other keys. */
export function destination({key, ctrlKey}, [row, column], rows, columns) {
  const least = row === -1 ? 0 : -1;
  if (key === 'Home') return ctrlKey ? [0, 0] : [row, least];
  if (key === 'End') return ctrlKey ? [rows - 1, columns - 1] : [row, columns - 1];
  if (!(key in STEPS)) return undefined;
  const [down, right] = STEPS[key];
  const to = [clamp(row + down, -1, rows - 1), clamp(column + right, -1, columns - 1)];
  return to[0] === -1 && to[1] === -1 ? [row, column] : to;
}
