import {css, html} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {base} from '../shared/styles/base.js';

/** @import {Matrix} from '../shared/answers.js' */

/**
 * Steps from band to band where one is shown alone, and from there to the whole table and back.
 *
 * @fires jw-band - {band}: its id
 * @fires jw-whole - {whole}: whether all of them are shown
 */
class JwBands extends element({
  columns: value(/** @type {Matrix['columns']} */ (of)),
  /** Id of the one shown; empty for all of them. */
  band: {type: String},
}) {
  static styles = [
    base,
    css`
      div { display: flex; gap: var(--space-2); align-items: center; justify-content: space-between; }
      select { flex: 1; text-align-last: center; font-weight: 650; font-size: var(--type-text); }
      button { padding: 0 var(--space-3); }
      .step span { font-size: var(--type-lead); line-height: 1; }
    `,
  ];

  render() {
    const at = this.columns.findIndex(({id}) => id === this.band);
    if (at === -1)
      return html`<div><button @click=${() => send(this, 'jw-whole', {whole: false})}>One band</button></div>`;
    const step = (words, sign, to) =>
      html`<button class="step" aria-label=${words} ?disabled=${to === undefined}
        @click=${() => this._turn(to.id)}><span>${sign}</span></button>`;
    return html`<div>
      ${step('Band before', '‹', this.columns[at - 1])}
      <select aria-label="Band in the list" @change=${({target}) => this._turn(target.value)}>
        ${this.columns.map(({id, name}) => html`<option value=${id} .selected=${id === this.band}>${name}</option>`)}
      </select>
      ${step('Band after', '›', this.columns[at + 1])}
      <button @click=${() => send(this, 'jw-whole', {whole: true})}>Whole table</button>
    </div>`;
  }

  _turn(band) {
    send(this, 'jw-band', {band});
  }
}

customElements.define('jw-bands', JwBands);
