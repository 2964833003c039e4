import {css, html} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {base} from '../shared/styles/base.js';
import {power} from '../shared/text/format.js';

/**
 * Which power level the cells are of, what they print, and whether they have their marks.
 *
 * @fires jw-change
 * @fires jw-marked - {marked}
 */
class JwPowerChoice extends element({
  /** Levels in W. */
  powers: value(/** @type {number[]} */ (of)),
  /** One of them. */
  chosen: {type: Number},
  /** Margin or largest. */
  shows: {type: String},
  /** Whether every cell has its marks. */
  marked: {type: Boolean},
}) {
  static styles = [
    base,
    css`
      :host { display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-4); align-items: end; }
      fieldset { margin: 0; padding: 0; border: 0; min-width: 0; }
      legend { font-size: var(--type-small); font-weight: 600; padding: 0; margin-bottom: var(--space-1); }
      div { display: flex; flex-wrap: wrap; }
      label {
        display: grid; place-items: center; min-height: var(--target); min-width: var(--target);
        padding: 0 var(--space-3);
        border: 1px solid var(--edge); margin-left: -1px; background: var(--card); cursor: pointer; white-space: nowrap;
      }
      label:first-of-type { border-radius: var(--round) 0 0 var(--round); margin-left: 0; }
      label:last-of-type { border-radius: 0 var(--round) var(--round) 0; }
      label:has(:checked) {
        background: var(--accent); border-color: var(--accent); color: var(--accent-ink); position: relative;
      }
      label:has(:focus-visible) {
        outline: 3px solid var(--focus); outline-offset: 2px; z-index: 1; position: relative;
      }
      input { position: absolute; opacity: 0; pointer-events: none; }
      @media (max-width: 420px) { label { padding: 0 var(--space-2); font-size: var(--type-small); } }
    `,
  ];

  render() {
    const showings = [
      ['margin', 'margin'],
      ['largest', 'largest power'],
    ];
    return html`<fieldset id="power_w">
        <legend>Power shown</legend>
        <div>${this.powers.map((watts) => this._option('power_w', watts, power(watts), watts === this.chosen))}</div>
      </fieldset>
      <fieldset id="shows">
        <legend>Show</legend>
        <div>${showings.map(([id, words]) => this._option('shows', id, words, id === this.shows))}</div>
      </fieldset>
      <button id="marked" aria-pressed=${this.marked} @click=${this._turn}>Show marks</button>`;
  }

  _option(name, choice, words, checked) {
    return html`<label>
      <input type="radio" name=${name} value=${choice} .checked=${checked}
        @change=${() => this._change({[name]: choice})}>${words}
    </label>`;
  }

  _turn() {
    send(this, 'jw-marked', {marked: !this.marked});
  }

  _change(changes) {
    send(this, 'jw-change', {changes, live: false});
  }
}

customElements.define('jw-power-choice', JwPowerChoice);
