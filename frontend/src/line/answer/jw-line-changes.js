import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {decibels} from '../../shared/text/format.js';
import {LIKELY, WORST, sides} from '../sides.js';

/**
 * @import {Told} from '../answers.js'
 * @import {Change, LineResult} from '../result.js'
 */

const FIRST = 5;
/** Below this a gain is none. */
const NOTICED_DB = 0.05;

/**
 * What would help, the best first; those that make no difference under one line.
 *
 * @fires jw-line-compare - {change}; without one the comparison is put away
 * @fires jw-line-take - {change}
 */
class JwLineChanges extends element({
  result: value(/** @type {LineResult} */ (of)),
  /** Whether the result is of the line as it stands. */
  current: {type: Boolean},
  /** Laid beside the line as it stands; undefined where none is. */
  compared: value(/** @type {Change | undefined} */ (of)),
  /** What the core says of the line with it. */
  after: value(/** @type {Told} */ (of)),
}) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    css`
      ol { list-style: none; margin: 0; padding: 0; }
      li { padding: var(--space-2) 0; border-top: 1px solid var(--line); }
      ol:first-child > li:first-child { border-top: 0; padding-top: 0; }
      .row {
        display: grid; grid-template-columns: minmax(0, 1fr) auto auto; gap: var(--space-half) var(--space-3);
        align-items: center;
      }
      .what { font-weight: 600; }
      .cost { display: block; font-weight: 400; color: var(--soft); font-size: var(--type-small); }
      .gain { text-align: right; font-size: var(--type-text); }
      .gain b { white-space: nowrap; }
      .gain span { display: block; color: var(--soft); font-size: var(--type-fine); }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; font-size: var(--type-text);
        border-top: 1px solid var(--line);
      }
      .beside {
        margin: var(--space-2) 0 var(--space-1); padding: var(--space-3); background: var(--sunk);
        border-radius: var(--round);
      }
      .scroll { overflow-x: auto; }
      .plain td { font-weight: 650; }
      .plain td small { display: block; font-weight: 400; color: var(--soft); }
      .acts { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-top: var(--space-2); }
      @media (max-width: 480px) {
        .row { grid-template-columns: minmax(0, 1fr) auto; }
        .row .what { grid-column: 1 / -1; }
        .gain { text-align: left; }
        .gain :is(b, span) { display: inline; }
      }
      @media print { button, details { display: none; } }
    `,
  ];

  render() {
    const {changes} = this.result;
    const better = changes.filter(({same}) => !same);
    const same = changes.filter((change) => change.same);
    const more = better.slice(FIRST);
    if (changes.length === 0) return html`<p class="quiet">Nothing in the catalogue would do better here.</p>`;
    return html`${better.length === 0 ? html`<p>Nothing in the catalogue would make a difference.</p>` : nothing}
      ${this._list(better.slice(0, FIRST))}
      ${this._folded(more, `${more.length} more`)}
      ${this._folded(same, `${same.length} that ${same.length === 1 ? 'makes' : 'make'} no difference`)}`;
  }

  _list(changes) {
    if (changes.length === 0) return nothing;
    return html`<ol>${changes.map((change) => this._item(change))}</ol>`;
  }

  _folded(changes, words) {
    if (changes.length === 0) return nothing;
    return html`<details class="more"><summary>${words}</summary>${this._list(changes)}</details>`;
  }

  _item(change) {
    const compared = change === this.compared;
    const compare = () => send(this, 'jw-line-compare', compared ? {} : {change});
    return html`<li data-change=${change.title}>
      <div class="row">
        <p class="what">${change.title}
          ${change.costs.length > 0 ? html`<span class="cost">${change.costs.join('; ')}</span>` : nothing}</p>
        <p class="gain">${this._gain(change)}</p>
        <button aria-expanded=${compared} ?disabled=${!this.current && !compared} aria-label="Compare: ${change.title}"
          @click=${compare}>Compare</button>
      </div>
      ${compared ? this._beside(change) : nothing}
    </li>`;
  }

  /** More at the antenna; of what changes nothing there, more margin. */
  _gain({gained_db: gained, gained_low_db: low, gained_high_db: high, margin_gained_db: margin, same}) {
    const first = gained !== null && Math.abs(gained) >= NOTICED_DB;
    const ofMargin = margin === null || Math.abs(margin) < NOTICED_DB ? '' : `${decibels(margin)} dB margin`;
    if (same)
      return html`<b>no difference</b> <span>${[rangeWords(low, high), ofMargin].filter(Boolean).join('; ')}</span>`;
    if (!first && ofMargin) return html`<b>${ofMargin}</b>`;
    return html`<b>${gained === null ? '–' : `${decibels(gained)} dB`}</b>
      <span>${[rangeWords(low, high), ofMargin].filter(Boolean).join('; ')}</span>`;
  }

  /** The line as it stands beside the line with the change. */
  _beside(change) {
    const {result, problem} = this.after;
    return html`<div class="beside" role="group" aria-label="Before and after">
      ${
        result
          ? this._table(this.result, result)
          : html`<p class=${problem ? 'error' : 'quiet'} role="status">${problem ?? 'Calculating…'}</p>`
      }
      <div class="acts">
        <button class="use" ?disabled=${!this.current || problem !== undefined}
          @click=${() => send(this, 'jw-line-take', {change})}>Use this</button>
        <button @click=${() => send(this, 'jw-line-compare', {})}>Leave it</button>
      </div>
    </div>`;
  }

  _table(before, after) {
    const [left, right] = [sides(before), sides(after)];
    const number = ({likely, worst}) => html`${likely} <small>at worst ${worst}</small>`;
    const row = (term, one, other) => html`<tr><th scope="row">${term}</th><td>${one}</td><td>${other}</td></tr>`;
    const numbers = left.flatMap((one) => {
      const other = right.find(({id}) => id === one.id);
      return one.id === 'impedance' || !other ? [] : [row(one.term, number(one), number(other))];
    });
    return html`<div class="scroll"><table class="plain" aria-label="${LIKELY}, and ${WORST.toLowerCase()}">
      <thead><tr><td></td><th scope="col">As it stands</th><th scope="col">With the change</th></tr></thead>
      <tbody>
        ${numbers}${row('Smallest margin', chip(before), chip(after))}
        ${row('Weakest part', weakest(before), weakest(after))}
      </tbody>
    </table></div>`;
  }
}

const rangeWords = (low, high) => (low === null || high === null ? '' : `${decibels(low)} to ${decibels(high)} dB`);

const chip = ({margin_db: margin}) =>
  margin === null
    ? html`<span class="chip none">none</span>`
    : html`<span class="chip" data-step=${stepOf(margin)}>${decibels(margin)} dB</span>`;

const weakest = ({weakest: at, parts}) => (at === null ? '–' : parts[at].name);

customElements.define('jw-line-changes', JwLineChanges);
