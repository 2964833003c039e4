import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {packMark, packStyles} from '../../shared/packs/mark.js';
import {base} from '../../shared/styles/base.js';
import {pairName} from '../names.js';
import {rowKey} from '../ticks.js';

/** @import {Row} from './packing.js' */

const FROM = {add: 'to add', own: 'yours'};

/** What everybody in the trade knows, and what the reader says himself, needs no remark. */
const isUnmarked = (kind) => ['', 'common practice'].includes(kind);

/**
 * The packing list, each row with a box to tick when it is packed.
 *
 * @fires jw-kit-edit
 */
class JwKitPacking extends element({
  rows: value(/** @type {Row[]} */ (of)),
  /** What the ports are called. */
  names: value(/** @type {string[]} */ (of)),
  /** Rows that are packed, by their keys. */
  ticked: value(/** @type {string[]} */ (of)),
}) {
  static styles = [
    base,
    packStyles,
    css`
      .plain :is(th, td) { vertical-align: middle; }
      .tick { width: 1px; padding-top: 0 !important; padding-bottom: 0 !important; }
      label { display: grid; place-items: center; min-width: var(--target); min-height: var(--target); }
      input { width: 22px; height: 22px; margin: 0; }
      .pairs {
        display: block; overflow-wrap: anywhere; color: var(--soft); font-weight: 400; font-size: var(--type-small);
      }
      .from { white-space: nowrap; }
      .plain thead .number { white-space: normal; }
      [data-packed] .what { color: var(--soft); }
      @media print {
        label { min-width: 0; min-height: 0; margin-right: 2mm; }
        input { appearance: none; width: 3.4mm; height: 3.4mm; border: 0.4mm solid var(--ink); border-radius: 0; }
        input:checked::after {
          content: '✓'; display: block; line-height: 2.6mm; text-align: center;
        }
        .pairs { display: inline; margin-left: 2mm; }
        [data-packed] .what { color: inherit; }
      }
    `,
  ];

  render() {
    if (this.rows.length === 0) return html`<p>No adapter is needed.</p>`;
    const packed = new Set(this.ticked);
    return html`<table class="plain">
      <thead><tr><th scope="col"><span class="unseen">Packed</span></th><th scope="col">Adapter, and what
        it joins</th><th scope="col" class="number">How many</th><th scope="col">From</th></tr></thead>
      <tbody>${this.rows.map((row) => this._row(row, packed.has(rowKey(row))))}</tbody>
    </table>`;
  }

  _row(row, isPacked) {
    const tick = ({target}) => send(this, 'jw-kit-edit', {kind: 'tick', key: rowKey(row), ticked: target.checked});
    const mark = isUnmarked(row.kind) ? nothing : html` <span class="quiet">(${row.kind})</span>`;
    return html`<tr data-from=${row.from} ?data-packed=${isPacked}><td class="tick"><label><input type="checkbox"
        aria-label="Packed: ${row.what}" .checked=${isPacked} @change=${tick}></label></td><th
        scope="row"><span class="what">${row.what}</span>${mark}${packMark(row.pack)}
        ${row.stated ? html`<small class="quiet">${row.stated}</small>` : nothing}
        <span class="pairs">${row.pairs.map((pair) => pairName(pair, this.names)).join('; ')}</span></th>
      <td class="number">${row.count}</td><td class="from">${FROM[row.from]}</td></tr>`;
  }
}

customElements.define('jw-kit-packing', JwKitPacking);
