import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';
import {origin, sentence, sentences} from './advice.js';
import {sheetStyles} from './styles.js';

/** @import {Care} from './answer.js' */

/** What becomes of a joint: its metals, when to look at it again, its wear, and what it must never meet. */
class JwFitoutCare extends element({
  sheet: value(/** @type {Care} */ (of)),
  /** The numbers of the sources, by id. */
  numbers: value(/** @type {Map<string, number>} */ (of)),
}) {
  static styles = [
    base,
    sheetStyles,
    css`
      :host { display: contents; }
      section { padding-bottom: var(--space-3); break-inside: avoid-column; }
      @media print { section { padding-bottom: 1mm; break-inside: auto; } }
      .not { color: var(--alarm); font-weight: 700; }
    `,
  ];

  render() {
    const {galvanic, inspection, near_relatives: relatives, wear} = this.sheet;
    const {numbers} = this;
    return html`<section id="galvanic"><h3>Metals that meet</h3>
        <ul>${galvanic.map(
          (one) =>
            html`<li><span class=${one.passed ? '' : 'not'}>${one.contact}: ${one.sentence}</span>
            ${origin(one.kinds, one.sources, numbers)}</li>`,
        )}</ul></section>
      <section id="inspection"><h3>Inspect</h3>
        <p>Every ${inspection.interval_months} months${
          inspection.due ? html`, next by <b>${inspection.due}</b>` : ''
        }${inspection.note ? `; ${inspection.note}` : ''}.
        ${origin([inspection.kind], [inspection.source], numbers)}</p>
        ${sentences(inspection.checks, numbers)}</section>
      <section id="wear"><h3>Wear</h3><p>${wear.sentence} ${origin([wear.kind], [wear.source], numbers)}</p></section>
      ${
        relatives.length > 0
          ? html`<section id="relatives"><h3>Look-alikes: do not mate</h3>
            <ul>${relatives.map(
              (one) => html`<li><b>${one.name}, ${one.verdict}.</b> ${sentence(one, numbers)}</li>`,
            )}</ul></section>`
          : nothing
      }`;
  }
}

customElements.define('jw-fitout-care', JwFitoutCare);
