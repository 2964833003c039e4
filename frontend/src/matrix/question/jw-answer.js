import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {digits, power} from '../../shared/text/format.js';

/** @import {Answer} from './answer.js' */

/** A power that is safe is rounded down to so many figures. */
const SAFE_DIGITS = 3;

function safePower(watts) {
  const scale = 10 ** (Math.floor(Math.log10(watts)) - SAFE_DIGITS + 1);
  const down = Math.floor((watts / scale) * (1 + 1e-9)) * scale;
  return down >= 1000 ? `${digits(down / 1000)} kW` : power(down);
}

/**
 * The answer: the verdict in words, the largest safe power, what limits it, and what would make it better.
 *
 * @fires jw-ask - {values}: a change that makes it better
 * @fires jw-why
 */
class JwAnswer extends element({
  answer: value(/** @type {Answer | undefined} */ (of)),
  /** What is said while there is no answer, or in place of one. */
  waiting: {type: String},
  /** Whether the answer is of a question before. */
  outdated: {type: Boolean, reflect: true},
}) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    css`
      :host { display: grid; gap: var(--space-2); align-content: start; min-height: 15rem; }
      :host([outdated]) { opacity: 0.6; }
      .verdict { display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: center; }
      strong { padding: var(--space-1) var(--space-3); border-radius: var(--round); font-size: var(--type-lead); }
      [data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
      dl {
        display: grid; grid-template-columns: auto minmax(0, 1fr); gap: var(--space-half) var(--space-3);
        font-size: var(--type-text);
      }
      dt { color: var(--soft); }
      ul { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--space-1); }
      li { display: grid; gap: 0 var(--space-2); }
      li button { text-align: left; padding: var(--space-1) var(--space-3); line-height: 1.3; display: grid; }
      li small { color: var(--soft); font-size: var(--type-small); }
      h3 { font-size: var(--type-text); }
      @media (min-width: 700px) {
        :host { min-height: 8.2rem; }
        ul { grid-template-columns: repeat(auto-fill, minmax(250px, 1fr)); }
      }
      @media (max-width: 480px) {
        dl { grid-template-columns: minmax(0, 1fr); }
        dd { margin-bottom: var(--space-1); }
      }
    `,
  ];

  constructor() {
    super();
    this.waiting = '';
    this.outdated = false;
  }

  render() {
    const verdict = this.answer?.verdict;
    if (!this.answer || !verdict) return html`<p class="quiet" role="status">${this.waiting}</p>`;
    const {better, doubts, largest_power_w: largest, limited_by: limit} = this.answer;
    return html`<div class="verdict" role="status"><strong data-step=${this._step}
        data-verdict=${verdict.step}>${verdict.headline}</strong><button class="why"
        @click=${() => send(this, 'jw-why', {})}>Why</button><p>${verdict.sentence}</p></div>
      <dl>
        ${largest === null ? nothing : html`<dt>Largest safe power</dt><dd id="largest">${safePower(largest)}</dd>`}
        ${
          limit && !verdict.sentence.includes(limit.sentence)
            ? html`<dt>Limited by</dt><dd id="limit">${limit.sentence}</dd>`
            : nothing
        }
        ${doubts.map(({name, sentence}) => html`<dt>${name}</dt><dd>${sentence}</dd>`)}
      </dl>
      ${
        better.length > 0
          ? html`<h3 id="better">Better</h3><ul aria-labelledby="better">${better.map(
              (change) => html`<li><button @click=${() => send(this, 'jw-ask', {values: change.changes})}
                ><b>${change.title}</b><small>${change.sentence}</small></button></li>`,
            )}</ul>`
          : nothing
      }
    `;
  }

  /** The colour, as in the matrix. */
  get _step() {
    const {margin_db: margin, verdict} = /** @type {Answer} */ (this.answer);
    if (verdict?.step === 'refused') return 'refused';
    return margin === null ? 'holds' : stepOf(margin);
  }
}

customElements.define('jw-answer', JwAnswer);
