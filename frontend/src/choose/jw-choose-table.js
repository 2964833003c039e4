import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import {STEP_RULES} from '../shared/margins/scale.js';
import {packMark, packStyles} from '../shared/packs/mark.js';
import {base} from '../shared/styles/base.js';
import {BY_RANK, COLUMNS, ordered, tapped} from './order.js';
import {
  bindingWords,
  couplingWords,
  lossWords,
  marginWords,
  rangeWords,
  rankWords,
  reasonWords,
  sizeWords,
  stepNameOf,
  wearWords,
  weatherWords,
} from './reading.js';

/**
 * @import {Choice} from './answer.js'
 * @import {Column, Order} from './order.js'
 */

/** Families as a table, those that pass ordered by a tap on a column's head; on a narrow screen each is a card. */
class JwChooseTable extends element({
  /** Those to show. */
  choices: value(/** @type {Choice[]} */ (of)),
  /** Those of the whole answer, for ties. */
  all: value(/** @type {Choice[]} */ (of)),
  /** The family that comes marked. */
  plan: {type: String},
  heading: {type: String},
  /** The fragment that opens a family's derivation. */
  linkOf: value(/** @type {(choice: Choice) => string} */ (of)),
  _order: state(/** @type {Order} */ (of)),
}) {
  static styles = [
    base,
    packStyles,
    unsafeCSS(STEP_RULES),
    css`
      table { width: 100%; border-collapse: collapse; font-size: var(--type-small); }
      th, td {
        padding: var(--space-1) var(--space-3) var(--space-1) 0; text-align: left; border-bottom: 1px solid var(--line);
      }
      thead th { color: var(--soft); font-weight: 500; }
      [aria-sort='ascending'] button::after { content: ' ▲'; }
      [aria-sort='descending'] button::after { content: ' ▼'; }
      .why { max-width: 24em; }
      tbody th a {
        display: inline-grid; align-items: center; min-height: var(--target); min-width: var(--target);
        font-size: var(--type-text);
        font-weight: 700;
      }
      .chip { min-width: 4.6em; }
      .number { white-space: nowrap; }
      .rank { font-size: var(--type-lead); font-weight: 700; }
      small { display: block; color: var(--soft); line-height: 1.3; font-weight: 400; }
      .mark {
        display: inline-block; white-space: nowrap; margin: 0 var(--space-1) var(--space-half) 0;
        padding: 0 var(--space-2); border: 1px solid var(--edge);
        border-radius: 99px; font-size: var(--type-fine); font-weight: 500; color: inherit;
      }
      .mark.plan { background: var(--accent-wash); border-color: var(--accent); }
      ul { padding-left: 1.1em; }
      .missed td, .missed th { vertical-align: top; }
      @media (max-width: 760px) {
        .missed thead { position: absolute; clip-path: inset(50%); }
        table, tbody, thead { display: block; }
        .passing thead tr { display: flex; flex-wrap: wrap; align-items: center; gap: 0 var(--space-3); }
        .passing thead tr::before { content: 'Order by: '; }
        .passing thead th { padding: 0; border: 0; }
        .passing thead th:not([aria-sort]) { display: none; }
        tbody tr {
          display: grid; grid-template-columns: 2.2em 1fr; align-items: center; padding: var(--space-2) 0;
          border-bottom: 1px solid var(--edge);
        }
        td, tbody th { padding: var(--space-half) 0; border: 0; }
        td:not(.rank), .missed th { grid-column: 1 / -1; }
        td[data-head]::before { content: attr(data-head) ': '; color: var(--soft); }
        .margin { display: flex; flex-wrap: wrap; gap: 0 var(--space-3); align-items: center; }
        tbody th { display: flex; flex-wrap: wrap; gap: 0 var(--space-3); align-items: center; }
        .margin::before { content: none !important; }
      }
      @media print {
        tr { break-inside: avoid; }
        tbody th a { min-height: 0; color: inherit; text-decoration: none; }
        th, td {
          padding: 0.4mm var(--space-2) 0.4mm 0; font-size: var(--type-fine); line-height: 1.2; white-space: nowrap;
        }
        button.head { min-height: 0; padding: 0; }
        td:is(.why, :last-child) { white-space: normal; }
        th > div, td.margin small { display: inline; }
      }
    `,
  ];

  constructor() {
    super();
    this._order = BY_RANK;
  }

  render() {
    return this.choices.length > 0 && this.choices.every(({passes}) => !passes) ? this._missed() : this._passing();
  }

  _passing() {
    return html`<table role="table" class="passing" aria-label=${this.heading}>
      <thead role="rowgroup"><tr role="row">${COLUMNS.map((column) => this._head(column))}</tr></thead>
      <tbody role="rowgroup">
        ${ordered(this.choices, this._order).map(
          (one) => html`<tr role="row" data-family=${one.family}>
            <td role="cell" class="rank"><span class="unseen">Rank</span> ${rankWords(one, this.all)}</td>
            ${this._name(one)}
            <td role="cell" class="why">${reasonWords(one)}</td>
            ${this._margin(one)}
            <td role="cell" class="number" data-head="Loss">${lossWords(one.loss_db)}</td>
            <td role="cell" class="number" data-head="Size">${sizeWords(one.diameter_m)}</td>
            <td role="cell" data-head="Coupling">${couplingWords(one)}</td>
            <td role="cell" data-head="Matings">${wearWords(one.wear)}</td>
            <td role="cell" data-head="Weather">${weatherWords(one.weather)}</td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }

  /** @param {Column} column */
  _head({id, head, by}) {
    if (!by) return html`<th role="columnheader" scope="col">${head}</th>`;
    const {id: ordering, down} = this._order;
    const direction = id === ordering ? (down ? 'descending' : 'ascending') : 'none';
    return html`<th role="columnheader" scope="col" aria-sort=${direction}><button class="head"
      @click=${() => (this._order = tapped(this._order, id))}>${head}</button></th>`;
  }

  _missed() {
    const heads = ['Connector', 'Margin', 'Demands missed'];
    return html`<table role="table" class="missed" aria-label=${this.heading}>
      <thead role="rowgroup"><tr role="row">${heads.map(
        (head) => html`<th role="columnheader" scope="col">${head}</th>`,
      )}</tr></thead>
      <tbody role="rowgroup">
        ${this.choices.map(
          (one) => html`<tr role="row" data-family=${one.family}>
            ${this._name(one)} ${this._margin(one)}
            <td role="cell" ><ul>${one.rejections.map(
              ({name, sentence}) => html`<li><b>${name}.</b> ${sentence}</li>`,
            )}</ul></td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }

  _name(one) {
    return html`<th role="rowheader" scope="row"><a href="#${this.linkOf(one)}"
      aria-label="${one.name}: open its derivation">${one.name}</a>
      <div>${one.family === this.plan ? html`<span class="mark plan">your plan</span>` : nothing}${packMark(one.pack)}
        <small>${one.also_called[0] ?? ''}</small></div></th>`;
  }

  _margin(one) {
    return html`<td role="cell" class="margin" data-head="Margin"><span
      class="chip" data-step=${stepNameOf(one)}>${marginWords(one)}</span>
      <small>${rangeWords(one)}</small><small>${bindingWords(one)}</small></td>`;
  }
}

customElements.define('jw-choose-table', JwChooseTable);
