import {toFragment} from '../state/fragment.js';
import {viewFragment, viewState} from '../state/view-link.js';
import {plainSettings, withSettings} from '../station/station.js';
import {element, of, state} from './element.js';
import {View} from './view.js';

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

const picked = (record, test) => Object.fromEntries(Object.entries(record).filter(([name]) => test(name)));

/**
 * A view whose question is one form: its own fields, and among them the station's. The fields are those of the
 * vocabulary's group of the view's name; `ownNames` lists the view's own.
 */
export class FormView extends element(
  {
    _own: state(/** @type {Record<string, any>} */ (of)),
  },
  View,
) {
  _begin() {
    this._own = this._firstOwn;
  }

  /**
   * The values of a first visit.
   *
   * @returns {Record<string, any>}
   */
  get _first() {
    return this.vocabulary.first[this._name];
  }

  get _firstOwn() {
    return picked(this._first, (name) => this._ownNames.includes(name));
  }

  /**
   * The form as it stands.
   *
   * @returns {Record<string, any>}
   */
  get _state() {
    return withSettings(this._own, this.station, this._first);
  }

  get _fragment() {
    const {views} = this.vocabulary;
    const first = this._firstOwn;
    return this._name === views[0] ? toFragment(this._own, first) : viewFragment(this._name, this._own, first);
  }

  /**
   * @param {string} fragment
   * @returns {ReturnType<View['_restore']>}
   */
  _restore(fragment) {
    const first = this._firstOwn;
    const fields = picked(this.vocabulary.fields[this._name], (name) => this._ownNames.includes(name));
    const {state: own, unknown} = this._readOwn(fragment, fields, first);
    if (!same(own, this._own)) this._own = own;
    return {unknown};
  }

  /** The question in a fragment, and the parts that name no field or hold no value of its kind. */
  _readOwn(fragment, fields, first) {
    return viewState(fragment, fields, first);
  }

  /**
   * Changes of the form: of the view's own fields, and of the station's.
   *
   * @param {Record<string, any>} changes
   * @param {boolean | {live?: boolean, isStep?: boolean}} [how] - live, or as for any change of a view
   */
  _change(changes, how = {}) {
    const isOwn = (name) => this._ownNames.includes(name);
    const own = {...this._own, ...picked(changes, isOwn)};
    const settings = this._settings(
      picked(changes, (name) => !isOwn(name)),
      this._first,
    );
    this._put(
      same(own, this._own) ? this._own : own,
      Object.keys(settings).length > 0 ? {settings} : {},
      typeof how === 'boolean' ? {live: how} : how,
    );
  }

  /** As on a first visit, but for what the station has: its rig gives the power, its antenna the SWR. */
  reset() {
    const names = Object.keys(this._first).filter((name) => !this._ownNames.includes(name));
    const plain = plainSettings(this.station);
    const settings = Object.fromEntries(names.map((name) => [name, plain[name]]));
    this._put(this._firstOwn, {settings});
  }
}
