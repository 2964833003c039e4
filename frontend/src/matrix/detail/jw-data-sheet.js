import {LitElement, css, html, nothing} from 'lit';
import {packMark, packOfSource, packStyles} from '../../shared/packs/mark.js';
import {base} from '../../shared/styles/base.js';
import {quantity} from '../../shared/text/format.js';

/**
 * Everything the catalogue holds about a family.
 *
 * @property {object} sheet
 * @property {object[]} sources
 * @property {object[]} packs - in force
 */
class JwDataSheet extends LitElement {
  static styles = [
    base,
    packStyles,
    css`
      section { margin-top: 18px; }
      h3 { margin-bottom: 6px; }
      .hazard { padding: 8px 12px; margin-top: 6px; border-left: 4px solid var(--alarm); background: var(--alarm-wash); }
      td:nth-child(2) { font-weight: 600; }
    `,
  ];

  static properties = {sheet: {attribute: false}, sources: {attribute: false}, packs: {attribute: false}};

  render() {
    const {sheet} = this;
    return html`<p>${sheet.summary}${packMark(sheet.pack)}</p>
      ${sheet.also_called.length > 0 ? html`<p class="quiet">Also called ${sheet.also_called.join(', ')}.</p>` : nothing}
      ${sheet.hazards.length > 0 ? html`<section><h3>Near relatives: what not to mate</h3>${sheet.hazards.map((hazard) => this._hazard(hazard))}</section>` : nothing}
      <section>
        <h3>Values</h3>
        <table class="plain">
          <thead><tr><th>Quantity</th><th>Value</th><th>From</th></tr></thead>
          <tbody>${sheet.values.map((value) => this._value(value))}</tbody>
        </table>
      </section>`;
  }

  _hazard(hazard) {
    return html`<div class="hazard">${hazard.text} <span class="kind">${hazard.kind}</span></div>`;
  }

  _value(value) {
    const {unit, low, high} = value;
    const shown = low === high ? quantity(low, unit) : `${quantity(low, unit)} to ${quantity(high, unit)}`;
    return html`<tr data-field=${value.field}>
      <th scope="row">${value.name}</th>
      <td>${shown}</td>
      <td>
        ${value.kinds.map((kind) => html`<span class="kind">${kind}</span> `)}${packMark(this._pack(value))}
        <div class="quiet">${value.sources.map((id) => this._title(id)).join('; ')}${value.note ? html`. ${value.note}` : nothing}</div>
      </td>
    </tr>`;
  }

  _pack({sources}) {
    return sources.map((id) => packOfSource(id, this.packs)).find(Boolean);
  }

  _title(id) {
    return this.sources.find((source) => source.id === id)?.title ?? id;
  }
}

customElements.define('jw-data-sheet', JwDataSheet);
