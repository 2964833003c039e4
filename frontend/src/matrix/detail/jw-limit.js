import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-steps.js';
import {byPurpose} from '../../shared/margins/purposes.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {decibels, power} from '../../shared/text/format.js';
import {foldStyles, turned} from './fold.js';

/** @import {Catalogue, Limit} from '../../shared/answers.js' */

/** What the steps lead to that are for nothing else. */
const LAST = 'what it allows, and the margin';

/** A group says once what its steps are for. */
const unpurposed = (step) => ({...step, purpose: ''});

/** The working of one limit of a cell: its sentence, then its steps folded by what they are for. */
class JwLimit extends element({
  limit: value(/** @type {Limit} */ (of)),
  catalogue: value(/** @type {Catalogue | undefined} */ (of)),
  /** Names of the groups of steps that are open. */
  _open: state(/** @type {Set<string>} */ (of)),
}) {
  static styles = [base, unsafeCSS(STEP_RULES), foldStyles, css`.group { border-width: 1px 0 0; border-radius: 0; }`];

  constructor() {
    super();
    this._open = new Set();
  }

  render() {
    const {limit} = this;
    return html`<details ?open=${this._open.has('')} @toggle=${(event) => (this._open = turned(this._open, event, ''))}>
      <summary>
        <strong>${limit.name}</strong>
        ${limit.binding ? html`<span class="binds sign">limits</span>` : nothing}
        ${
          limit.margin_db === null
            ? html`<span class="quiet">no margin on receive</span>`
            : html`<span class="number" data-step=${stepOf(limit.margin_db)}>${decibels(limit.margin_db)} dB</span>
              <span class="quiet">to ${decibels(limit.margin_high_db)} dB${this._allowed()}</span>`
        }
        <p>${limit.sentence}</p>
      </summary>
      ${this._open.has('') ? byPurpose(limit.steps, LAST).map((group) => this._group(group)) : nothing}
    </details>`;
  }

  _group({purpose, steps}) {
    const count = steps.filter(({end}) => end !== 'high').length;
    return html`<details class="group more" ?open=${this._open.has(purpose)}
      @toggle=${(event) => (this._open = turned(this._open, event, purpose))}>
      <summary>${purpose} <span class="quiet">${count} ${count === 1 ? 'step' : 'steps'}</span></summary>
      ${
        this._open.has(purpose)
          ? html`<jw-steps .steps=${steps.map(unpurposed)} .catalogue=${this.catalogue}></jw-steps>`
          : nothing
      }
    </details>`;
  }

  _allowed() {
    const {allowed_w, allowed_high_w} = this.limit;
    return allowed_w === null ? '' : `; allows ${power(allowed_w)} to ${power(allowed_high_w)}`;
  }
}

customElements.define('jw-limit', JwLimit);
