import {css, html} from 'lit';
import {BANDS, FIRST_STATE} from '../state/station.js';
import {Field} from './field.js';

/**
 * The bands of the Region as buttons that stay down.
 *
 * @property {number} region
 */
class JwBandsField extends Field {
  static styles = [
    ...Field.styles,
    css`
      fieldset { margin: 0; padding: 0; border: 0; min-width: 0; }
      .bands { display: flex; flex-wrap: wrap; gap: 4px; }
      button { padding: 0 10px; }
      .all { border-style: dashed; }
    `,
  ];

  static properties = {region: {type: Number}};

  render() {
    const known = BANDS.filter((band) => band.regions.includes(String(this.region)));
    const all = known.map((band) => band.id);
    return html`<fieldset id=${this.name} aria-describedby="under">
      <legend>${this.label} of Region ${this.region}</legend>
      <div class="bands">
        ${known.map(
          ({id, name}) => html`<button value=${id} aria-pressed=${this.value.includes(id)} @click=${this._toggle}>
            ${name}
          </button>`,
        )}
        <button class="all" @click=${() => this.change(FIRST_STATE.bands)}>usual sixteen</button>
        <button class="all" @click=${() => this.change(all)}>all</button>
      </div>
      ${this.under('National limits differ from the Region’s edges; yours decide.')}
    </fieldset>`;
  }

  /** Bands stay in the catalogue's order, from long to short waves. */
  _toggle(event) {
    const id = event.currentTarget.value;
    const chosen = new Set(this.value);
    if (!chosen.delete(id)) chosen.add(id);
    if (chosen.size > 0) this.change(BANDS.map((band) => band.id).filter((band) => chosen.has(band)));
  }
}

customElements.define('jw-bands-field', JwBandsField);
