import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {packMark, packStyles} from '../../shared/packs/mark.js';
import {base} from '../../shared/styles/base.js';
import {pairNumbers} from '../names.js';

/** @import {Row} from './packing.js' */

const FROM = {add: 'to add', own: 'you own it'};

/** The packing list. */
class JwKitPacking extends element({
  rows: value(/** @type {Row[]} */ (of)),
}) {
  static styles = [
    base,
    packStyles,
    css`
      .tick { width: 1px; }
      .tick i {
        display: inline-block; width: 0.95em; height: 0.95em; border: 1.5px solid var(--ink); border-radius: 2px;
        vertical-align: -0.15em;
      }
      .pairs { overflow-wrap: anywhere; }
      @media (max-width: 480px) { .known { display: none; } }
    `,
  ];

  render() {
    if (this.rows.length === 0) return html`<p>No adapter is needed.</p>`;
    return html`<table class="plain">
      <thead><tr><td></td><th scope="col">Adapter</th><th scope="col" class="number">How many</th><th
        scope="col">From</th><th scope="col">For the pairs</th><th scope="col"
        class="known">Known from</th></tr></thead>
      <tbody>${this.rows.map(
        (row) => html`<tr data-from=${row.from}><td class="tick"><i aria-hidden="true"></i></td><th
          scope="row">${row.what}${packMark(row.pack)}${
            row.stated ? html` <small class="quiet">${row.stated}</small>` : nothing
          }</th>
          <td class="number">${row.count}</td><td>${FROM[row.from]}</td><td
            class="pairs">${row.pairs.map(pairNumbers).join(', ')}</td><td class="known">${row.kind}</td></tr>`,
      )}</tbody>
    </table>`;
  }
}

customElements.define('jw-kit-packing', JwKitPacking);
