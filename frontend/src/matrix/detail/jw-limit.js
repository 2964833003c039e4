import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-steps.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {decibels, power} from '../../shared/text/format.js';
import {foldStyles} from './fold.js';

/** @import {Catalogue, Limit} from '../../shared/answers.js' */

/** One limit of a cell with its margin, its sentence and its steps. */
class JwLimit extends element({
  limit: value(/** @type {Limit} */ (of)),
  catalogue: value(/** @type {Catalogue | undefined} */ (of)),
  binding: {type: Boolean, reflect: true},
  _open: state(/** @type {boolean} */ (of)),
}) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    foldStyles,
    css`
      :host([binding]) details { border: 2px solid var(--accent); }
      .binds {
        padding: 1px 8px; border-radius: 99px; background: var(--accent); color: var(--accent-ink); font-size: 0.75rem;
      }
    `,
  ];

  willUpdate(changed) {
    if (!changed.has('limit')) return;
    const {binding} = this.limit;
    if (changed.get('limit')?.binding !== binding) this._open = binding;
    this.binding = binding;
  }

  render() {
    const {limit} = this;
    return html`<details ?open=${this._open} @toggle=${(event) => (this._open = event.target.open)}>
      <summary>
        <strong>${limit.name}</strong>
        ${limit.binding ? html`<span class="binds">limits</span>` : nothing}
        ${
          limit.margin_db === null
            ? html`<span class="quiet">no margin in receive</span>`
            : html`<span class="number" data-step=${stepOf(limit.margin_db)}>${decibels(limit.margin_db)} dB</span>
              <span class="quiet">to ${decibels(limit.margin_high_db)} dB${this._allowed()}</span>`
        }
        <p>${limit.sentence}</p>
      </summary>
      ${this._open ? html`<jw-steps .steps=${limit.steps} .catalogue=${this.catalogue}></jw-steps>` : nothing}
    </details>`;
  }

  _allowed() {
    const {allowed_w, allowed_high_w} = this.limit;
    return allowed_w === null ? '' : `; allows ${power(allowed_w)} to ${power(allowed_high_w)}`;
  }
}

customElements.define('jw-limit', JwLimit);
