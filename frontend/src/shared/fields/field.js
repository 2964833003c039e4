import {css, html} from 'lit';
import {element, of, value} from '../elements/element.js';
import {base} from '../styles/base.js';
import {Speaking} from '../vocabulary/speaking.js';

/**
 * What every field of a form shares: its frame, its place for the range or the error, its event.
 *
 * @fires jw-change - {changes: {[name]: value}, live: boolean}
 */
export class Field extends element(
  {
    /** The request's field; also the id of the control. */
    name: {type: String},
    /** In the request's unit. */
    value: value(of),
    /** A sentence; the control is marked while there is one. */
    error: {type: String},
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      :host { min-width: 0; }
      label, legend {
        display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); padding: 0;
      }
      .under {
        display: block; min-height: 1.35em; margin-top: var(--space-half); font-size: var(--type-fine);
        line-height: 1.35; color: var(--soft);
      }
      .under.error { color: var(--alarm); font-weight: 600; }
    `,
  ];

  constructor() {
    super();
    this.error = '';
  }

  get label() {
    return this.vocabulary.labelOf(this.name);
  }

  /**
   * The line under the control: the error, else what may stand there.
   *
   * @param {string} hint
   */
  under(hint) {
    const {problem} = this;
    return html`<span class=${problem ? 'under error' : 'under'} id="under" role=${problem ? 'alert' : 'note'}
      >${problem || hint}</span>`;
  }

  /** What the core refused is no problem any more once another value stands here, even before the core has said so. */
  get problem() {
    return this._refusedValue === JSON.stringify(this.value) ? this.error : '';
  }

  willUpdate(changed) {
    if (changed.has('error')) this._refusedValue = JSON.stringify(this.value);
  }

  get invalid() {
    return this.problem ? 'true' : 'false';
  }

  get field() {
    return this.vocabulary.fieldOf(this.name);
  }

  /**
   * @param {any} changed - the new value
   * @param {boolean} [live] - whether more is to come, as while a slider is dragged
   */
  change(changed, live = false) {
    const detail = {changes: {[this.name]: changed}, live};
    this.dispatchEvent(new CustomEvent('jw-change', {detail, bubbles: true, composed: true}));
  }
}
