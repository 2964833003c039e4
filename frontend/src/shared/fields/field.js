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
      label, legend { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; padding: 0; }
      .under {
        display: block; min-height: 1.35em; margin-top: 2px; font-size: 0.75rem; line-height: 1.35; color: var(--soft);
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

  /** The core's sentence speaks in the unit sent; a field shown in another unit says it in its own. */
  get problem() {
    if (!this.error || !this.vocabulary.isConverted(this.name)) return this.error;
    const shown = this.vocabulary.spoken(this.name, this.value);
    return `${this.label} is ${shown}; allowed: ${this.vocabulary.rangeOf(this.name)}.`;
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
