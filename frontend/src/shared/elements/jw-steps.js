import {css, html, nothing} from 'lit';
import {packMark, packOfSource, packStyles} from '../packs/mark.js';
import {base} from '../styles/base.js';
import {quantity} from '../text/format.js';
import {unitsInForce} from '../text/measures.js';
import {mathNode} from '../text/mathml.js';
import {isText, reference} from '../text/source.js';
import {symbol} from '../text/symbol.js';
import {element, of, value} from './element.js';
import {reachable} from './reachable.js';

/** @import {Catalogue, Figure, Step} from '../answers.js' */

/** The steps of a calculation: formula, numbers put in, result. Without a catalogue the formula's name stands alone. */
class JwSteps extends element({
  steps: value(/** @type {Step[]} */ (of)),
  catalogue: value(/** @type {Catalogue | undefined} */ (of)),
}) {
  static styles = [
    base,
    packStyles,
    css`
      ol { list-style: none; margin: 0; padding: 0; }
      li { padding: var(--space-3) 0; border-top: 1px solid var(--line); }
      .title { display: flex; flex-wrap: wrap; gap: 0 var(--space-2); align-items: baseline; }
      .formula { overflow-x: auto; padding: var(--space-2) 0; font-size: var(--type-lead); }
      .plain { font-size: var(--type-small); }
      .plain td { border-bottom-style: dotted; }
      .plain td:first-child { white-space: nowrap; }
      .result { margin-top: var(--space-1); font-weight: 650; }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--soft);
        font-size: var(--type-small);
      }
      @media print {
        li { break-inside: avoid; padding: 1mm 0; }
        .formula { overflow: visible; padding: var(--space-half) 0; font-size: var(--type-text); }
        /* a long one fits the column */
        .formula[tabindex] { font-size: 4.7pt; }
      }
    `,
  ];

  updated() {
    reachable(this.renderRoot.querySelectorAll('.formula'));
  }

  render() {
    const generous = this.steps.filter((step) => step.end === 'high');
    return html`${unitsInForce() === 'us' ? html`<p class="quiet">The working is in SI units.</p>` : nothing}
      ${this._list(this.steps.filter((step) => step.end !== 'high'))}
      ${
        generous.length > 0
          ? html`<details class="more">
            <summary>The same with the most generous credible figures (${generous.length} steps)</summary>
            ${this._list(generous)}
          </details>`
          : nothing
      }`;
  }

  /** @param {Step[]} steps */
  _list(steps) {
    return html`<ol>
      ${steps.map((step) => this._step(step))}
    </ol>`;
  }

  /** @param {Step} step */
  _step(step) {
    const sheet = this.catalogue?.formulas.find(({id}) => id === step.formula);
    return html`<li data-formula=${step.formula}>
      <div class="title">
        <strong>${sheet?.title ?? step.formula}</strong>
        ${step.purpose ? html`<span class="quiet">${step.purpose}</span>` : nothing}
      </div>
      ${sheet ? html`<div class="formula">${mathNode(sheet.mathml)}</div>` : nothing}
      <table class="plain">
        <tbody>
          ${step.inputs.map((input) => this._input(input))}
        </tbody>
      </table>
      <p class="result">${symbol(step.result.symbol)} = ${quantity(step.result.value, step.result.unit)}</p>
    </li>`;
  }

  /** @param {Figure} input */
  _input(input) {
    const source = isText(input.source) ? this.catalogue?.sources.find(({id}) => id === input.source) : undefined;
    const pack = packOfSource(input.source, this.catalogue?.packs);
    return html`<tr>
      <td>${symbol(input.symbol)} = ${quantity(input.value, input.unit)}</td>
      <td>
        ${input.meaning}
        ${input.kind ? html`<span class="kind">${input.kind}</span>` : nothing}${packMark(pack)}
        ${source ? html`<br><span class="quiet">${reference(source)}</span>` : nothing}
      </td>
    </tr>`;
  }
}

customElements.define('jw-steps', JwSteps);
