import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {packMark, packOfSource, packStyles} from '../../shared/packs/mark.js';
import {base} from '../../shared/styles/base.js';
import {valueText} from '../../shared/text/measures.js';
import {reference} from '../../shared/text/source.js';

/**
 * @import {Source} from '../../shared/answers.js'
 *
 * @typedef {object} DataSheet - of a family
 * @property {string} summary
 * @property {string} pack
 * @property {string[]} also_called
 * @property {{text: string, kind: string}[]} hazards
 * @property {Entry[]} values
 *
 * @typedef {object} Entry - a value of the family, by the lowest and the highest of its sources
 * @property {string} field
 * @property {string} name
 * @property {string} unit
 * @property {number | string} low
 * @property {number | string} high
 * @property {string[]} sources
 * @property {string[]} kinds
 * @property {string} note
 */

/** Everything the catalogue holds about a family. */
class JwDataSheet extends element({
  sheet: value(/** @type {DataSheet} */ (of)),
  sources: value(/** @type {Source[]} */ (of)),
  /** The packs in force. */
  packs: value(/** @type {{id: string, name: string}[]} */ (of)),
}) {
  static styles = [
    base,
    packStyles,
    css`
      section { margin-top: var(--space-4); }
      h3 { margin-bottom: var(--space-2); }
      .hazard {
        padding: var(--space-2) var(--space-3); margin-top: var(--space-2); border-left: 4px solid var(--alarm);
        background: var(--alarm-wash);
      }
      td:nth-child(2) { font-weight: 600; }
    `,
  ];

  render() {
    const {sheet} = this;
    return html`<p>${sheet.summary}${packMark(sheet.pack)}</p>
      ${
        sheet.also_called.length > 0 ? html`<p class="quiet">Also called ${sheet.also_called.join(', ')}.</p>` : nothing
      }
      ${
        sheet.hazards.length > 0
          ? html`<section><h3>Near relatives: what not to
          mate</h3>${sheet.hazards.map((hazard) => this._hazard(hazard))}</section>`
          : nothing
      }
      <section>
        <h3>Values</h3>
        <table class="plain">
          <thead><tr><th>Quantity</th><th>Value</th><th>From</th></tr></thead>
          <tbody>${sheet.values.map((entry) => this._value(entry))}</tbody>
        </table>
      </section>`;
  }

  _hazard(hazard) {
    return html`<div class="hazard">${hazard.text} <span class="kind">${hazard.kind}</span></div>`;
  }

  /** @param {Entry} entry */
  _value(entry) {
    const {unit, low, high} = entry;
    const shown = low === high ? valueText(low, unit) : `${valueText(low, unit)} to ${valueText(high, unit)}`;
    return html`<tr data-field=${entry.field}>
      <th scope="row">${entry.name}</th>
      <td>${shown}</td>
      <td>
        ${entry.kinds.map((kind) => html`<span class="kind">${kind}</span> `)}${packMark(this._pack(entry))}
        <div class="quiet">${entry.sources.map((id) => this._title(id)).join('; ')}${
          entry.note ? html`. ${entry.note}` : nothing
        }</div>
      </td>
    </tr>`;
  }

  _pack({sources}) {
    return sources.map((id) => packOfSource(id, this.packs)).find(Boolean);
  }

  _title(id) {
    return reference(this.sources.find((source) => source.id === id)) || id;
  }
}

customElements.define('jw-data-sheet', JwDataSheet);
