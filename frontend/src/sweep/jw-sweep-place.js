import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';
import {scaleOf, unitIn} from '../shared/text/measures.js';
import {placeAt} from './places.js';

/** @import {EchoCheck, LineCheck} from './result.js' */

/** What is at 12 m? A distance, and what the sweep says of it. */
class JwSweepPlace extends element({
  check: value(/** @type {LineCheck | EchoCheck} */ (of)),
  _distance: state(/** @type {?number} */ (of)),
}) {
  static styles = [
    base,
    css`
      :host { margin-top: var(--space-2); }
      label { font-size: var(--type-text); font-weight: 600; }
      input:not([type='checkbox']) { width: 6.5rem; margin: 0 var(--space-1); }
      p { margin-top: var(--space-1); font-size: var(--type-text); }
      @media print { :host { display: none; } }
    `,
  ];

  constructor() {
    super();
    this._distance = null;
  }

  render() {
    const place = this._distance === null ? undefined : placeAt(this.check, this._distance);
    return html`<label>What is at
        <input id="at" type="number" inputmode="decimal" min="0" step="any" placeholder="12"
          @input=${this._typed}> ${unitIn('m')}?</label>
      <div role="status">${place ? html`<p>${place.echo} ${place.part}</p>` : nothing}</div>`;
  }

  _typed({target: {value: typed, validity}}) {
    this._distance = typed === '' || !validity.valid ? null : scaleOf('m').sent(Number(typed));
  }
}

customElements.define('jw-sweep-place', JwSweepPlace);
