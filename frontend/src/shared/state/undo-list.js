/**
 * What the reader changed on the page, oldest first, and what of it was undone.
 *
 * A step belongs to the view whose question it changed; one that changed the station alone belongs to all of them. Each
 * view goes back and forth through its own steps and those of all.
 *
 * @template T
 * @typedef {{before: T, after: T}} Sides
 */

/**
 * @typedef {object} Step
 * @property {string} view - where it was made
 * @property {Sides<any>} [own] - the view's question; left out where the station alone changed
 * @property {Sides<any>} [station] - the changes that lead there
 */

/** Steps that can be undone. */
export const DEPTH = 200;

export class UndoList {
  /** @type {Step[]} */
  #done = [];
  /** @type {Step[]} */
  #undone = [];

  /** After a change; what had been undone is gone. */
  add(step) {
    this.#done = [...this.#done, step].slice(-DEPTH);
    this.#undone = [];
  }

  canUndo(view) {
    return lastOf(this.#done, view) !== -1;
  }

  canRedo(view) {
    return lastOf(this.#undone, view) !== -1;
  }

  /**
   * The step to take back; undefined where there is none.
   *
   * @param {string} view
   */
  undo(view) {
    return moved(this.#done, this.#undone, view);
  }

  /**
   * The step to do again; undefined where there is none.
   *
   * @param {string} view
   */
  redo(view) {
    return moved(this.#undone, this.#done, view);
  }
}

const lastOf = (steps, view) => steps.findLastIndex((step) => step.view === view || step.own === undefined);

/** @returns {Step | undefined} */
function moved(from, to, view) {
  const at = lastOf(from, view);
  if (at === -1) return undefined;
  const [step] = from.splice(at, 1);
  to.push(step);
  return step;
}
