import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {Speaking} from '../shared/vocabulary/speaking.js';
import {planWords} from './reading.js';

/**
 * @import {Answer, Relaxation} from './answer.js'
 * @import {Demands} from './fields.js'
 */

/**
 * The answer in sentences: the verdict, how the plan stands, doubts about the port, and what would help where nothing
 * passes.
 *
 * @fires jw-choose-change - a relaxation is taken
 */
class JwChooseVerdict extends element(
  {
    result: value(/** @type {Answer} */ (of)),
    /** The request it is of. */
    answered: value(/** @type {Demands} */ (of)),
    /** Why it is not of the form as it stands; empty while it is. */
    outdated: {type: String},
  },
  Speaking,
) {
  static styles = [
    base,
    panelStyles,
    css`
      #verdict { font-size: var(--type-lead); font-weight: 600; line-height: 1.35; }
      #plan { font-weight: 600; margin-top: var(--space-2); }
      .place { margin-top: var(--space-1); }
      .outdated, .doubts {
        padding: var(--space-2) var(--space-3); margin-top: var(--space-2); background: var(--alarm-wash);
        border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      h3 { margin-top: var(--space-3); }
      ul { padding-left: 1.1em; }
      .ways { display: grid; gap: var(--space-3); padding: var(--space-1) 0 0; list-style: none; }
      .ways li {
        display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center;
        min-height: var(--target);
      }
      @media print {
        button { display: none; }
        .ways { gap: 0; }
        .ways li { min-height: 0; }
      }
    `,
  ];

  render() {
    const {result, answered} = this;
    const misses = result.choices.find(({family}) => family === answered.plan)?.rejections ?? [];
    return html`<section class="panel">
      <div role="status">
        <p id="verdict">${result.verdict}</p>
        ${answered.plan ? html`<p id="plan">${planWords(answered.plan, result)}</p>` : nothing}
      </div>
      ${
        misses.length > 0
          ? html`<ul class="misses">${misses.map(({name, sentence}) => html`<li>${name}: ${sentence}</li>`)}</ul>`
          : nothing
      }
      <p class="quiet place">${result.place}</p>
      ${result.notes.map((note) => html`<p class="quiet note">${note}</p>`)}
      ${this.outdated ? html`<p class="outdated" role="alert">${this.outdated}</p>` : nothing}
      ${this._doubts()} ${this._ways()}
    </section>`;
  }

  _doubts() {
    const {port_doubts: doubts} = this.result;
    if (doubts.length === 0) return nothing;
    return html`<div class="doubts"><p>What speaks against that port:</p><ul>${doubts.map(
      (sentence) => html`<li>${sentence}</li>`,
    )}</ul></div>`;
  }

  _ways() {
    const {relaxations} = this.result;
    if (relaxations.length === 0) return nothing;
    return html`<h3>What would let a connector pass</h3>
      <ul class="ways">${relaxations.map((one) => this._way(one))}</ul>`;
  }

  /** @param {Relaxation} relaxation */
  _way({demand, sentence, field, value: eased}) {
    return html`<li data-demand=${demand}>
      <span>${sentence}</span>
      ${
        field
          ? html`<button ?disabled=${this.outdated !== ''}
            @click=${() => send(this, 'jw-choose-change', {changes: {[field]: eased}, live: false})}>
            Set ${this._changeWords(field, eased)}
          </button>`
          : nothing
      }
    </li>`;
  }

  /** What a button that eases a demand sets, in words. */
  _changeWords(field, eased) {
    const name = `choose.${field}`;
    return `${this.vocabulary.labelOf(name).toLowerCase()}: ${this.vocabulary.spoken(name, eased)}`;
  }
}

customElements.define('jw-choose-verdict', JwChooseVerdict);
