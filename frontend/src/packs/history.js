/**
 * Undo and redo over any plain value, oldest first.
 *
 * @template T
 * @typedef {{past: T[], present: T, future: T[]}} History
 */

/** Steps that can be undone. */
export const DEPTH = 200;

/**
 * @template T
 * @param {T} present
 * @returns {History<T>}
 */
export const begun = (present) => ({past: [], present, future: []});

/**
 * After a change; what had been undone is gone. An equal value is no change.
 *
 * @template T
 * @param {History<T>} history
 * @param {T} present
 * @returns {History<T>}
 */
export function advanced(history, present) {
  if (present === history.present) return history;
  return {past: [...history.past, history.present].slice(-DEPTH), present, future: []};
}

/**
 * One step back; the same history where there is none.
 *
 * @template T
 * @param {History<T>} history
 * @returns {History<T>}
 */
export function undone({past, present, future}) {
  if (past.length === 0) return {past, present, future};
  return {past: past.slice(0, -1), present: past[past.length - 1], future: [present, ...future]};
}

/**
 * One step forward again.
 *
 * @template T
 * @param {History<T>} history
 * @returns {History<T>}
 */
export function redone({past, present, future}) {
  if (future.length === 0) return {past, present, future};
  return {past: [...past, present], present: future[0], future: future.slice(1)};
}
