import {KeptDocument} from '../state/kept-document.js';
import {UndoList} from '../state/undo-list.js';
import {KEPT_STATION} from './kept.js';
import {FIRST_STATION, changed, changesBetween} from './station.js';
import {recalledAddress} from './web-address.js';

/**
 * @import {Groups} from '../vocabulary/start-data.js'
 * @import {Store} from '../state/kept.js'
 * @import {Station, StationChanges} from './station.js'
 */

const isEmpty = (changes) => Object.keys(changes).length === 0;

/** The one station of the page, kept in the browser, and all that was changed on the page, to take it back. */
export class StationStore {
  present = FIRST_STATION;
  /** @type {KeptDocument<Station>} */
  #document;
  #undoList = new UndoList();
  /** @type {Set<(live: boolean) => void>} */
  #heard = new Set();
  /** What stood before a change that is not settled yet, as while a slider is dragged, by the view that makes it. */
  #before;

  /**
   * @param {() => Store} storage - may throw where the browser keeps nothing
   * @param {Groups} table
   */
  constructor(storage, table) {
    const address = recalledAddress(storage);
    const first = address ? {...FIRST_STATION, address} : FIRST_STATION;
    this.#document = new KeptDocument(KEPT_STATION, storage, table, first);
    this.present = this.#document.present;
  }

  /** What the browser could not keep or read, in a sentence; empty when all is well. */
  get problem() {
    return this.#document.problem;
  }

  /** Text that was kept and could not be read. */
  get spoilt() {
    return this.#document.spoilt;
  }

  /** Keeps in step with other tabs. */
  follow() {
    KEPT_STATION.listen(() => {
      if (!this.#document.catchUp()) return;
      this.present = this.#document.present;
      this.#tell();
    });
  }

  #keep() {
    this.#document.put(this.present);
    this.present = this.#document.present;
  }

  /** Whether nothing was ever said of it. */
  get isNew() {
    return this.present === FIRST_STATION;
  }

  /**
   * Calls `heard` whenever the station changes, and says whether more is to come; the function returned ends that.
   *
   * @param {(live: boolean) => void} heard
   */
  listen(heard) {
    this.#heard.add(heard);
    return () => this.#heard.delete(heard);
  }

  /**
   * Another station, which is no step to undo.
   *
   * @param {Station} next
   */
  put(next) {
    if (next === this.present) return;
    this.present = next;
    this.#keep();
    this.#tell();
  }

  /**
   * A change of the station, of a view's question, or of both: one step to undo.
   *
   * @param {string} view - where it is made
   * @param {StationChanges} changes
   * @param {{before: any, after: any}} [own] - the view's question
   * @param {boolean} [live] - whether more is to come, as while a slider is dragged
   */
  change(view, changes, own, live = false) {
    const before = this.#before ?? {station: this.present, own: own?.before};
    this.#before = live ? before : undefined;
    this.present = changed(this.present, changes);
    if (!live) {
      this.#add(view, before, own);
      this.#keep();
    }
    this.#tell(live);
  }

  /**
   * The station of a link in place of the one at hand; what the reader is told, empty where nothing of his is gone.
   *
   * @param {string} view
   * @param {Station} next
   */
  bring(view, next) {
    const {isNew} = this;
    const changes = changesBetween(this.present, next);
    if (isEmpty(changes)) return '';
    if (isNew) this.put(changed(this.present, changes));
    else this.change(view, changes);
    return isNew ? '' : 'The station of this link is shown; Undo brings back yours.';
  }

  #add(view, before, own) {
    const back = changesBetween(this.present, before.station);
    const forth = changesBetween(before.station, this.present);
    const isOwn = own !== undefined && own.after !== before.own;
    if (isEmpty(forth) && !isOwn) return;
    this.#undoList.add({
      view,
      ...(!isEmpty(forth) && {station: {before: back, after: forth}}),
      ...(isOwn && {own: {before: before.own, after: own.after}}),
    });
  }

  canUndo(view) {
    return this.#undoList.canUndo(view);
  }

  canRedo(view) {
    return this.#undoList.canRedo(view);
  }

  /**
   * One step back, or forth again; undefined where there is none. `own` is what the view's question came from and comes
   * to, where that changes.
   *
   * @param {'undo' | 'redo'} way
   * @param {string} view
   * @returns {{own?: {from: any, to: any}} | undefined}
   */
  turn(way, view) {
    const step = this.#undoList[way](view);
    const [from, to] = way === 'undo' ? ['after', 'before'] : ['before', 'after'];
    if (!step) return undefined;
    if (step.station) this.put(changed(this.present, step.station[to]));
    else this.#tell();
    return step.own ? {own: {from: step.own[from], to: step.own[to]}} : {};
  }

  #tell(live = false) {
    for (const heard of this.#heard) heard(live);
  }
}
