import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-steps.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {decibels, power} from '../../shared/text/format.js';

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
    css`
      details { border: 1px solid var(--line); border-radius: var(--round); }
      :host([binding]) details { border: 2px solid var(--accent); }
      summary {
        display: flex; flex-wrap: wrap; gap: 4px 10px; align-items: center; min-height: 52px; padding: 6px 12px;
        cursor: pointer;
      }
      summary::marker { content: ''; }
      summary::after {
        content: 'steps'; margin-left: auto; color: var(--accent); font-size: 0.85rem; text-decoration: underline;
      }
      details[open] summary::after { content: 'fold'; }
      .margin { padding: 3px 8px; border-radius: 5px; font-weight: 700; }
      .binds {
        padding: 1px 8px; border-radius: 99px; background: var(--accent); color: var(--accent-ink); font-size: 0.75rem;
      }
      p { flex: 1 0 100%; font-size: 0.9rem; }
      jw-steps { padding: 0 12px 10px; }
      @media print {
        summary { min-height: 0; break-inside: avoid; break-after: avoid; }
        summary::after { display: none; }
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
        ${limit.binding ? html`<span class="binds">binding</span>` : nothing}
        ${
          limit.margin_db === null
            ? html`<span class="quiet">no margin in receive</span>`
            : html`<span class="margin" data-step=${stepOf(limit.margin_db)}>${decibels(limit.margin_db)} dB</span>
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
