import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';
import {SCENARIOS} from './scenarios.js';

/** @import {State} from './fields.js' */

const holds = (state, fields) =>
  Object.entries(fields).every(([name, preset]) => JSON.stringify(state[name]) === JSON.stringify(preset));

/**
 * Invented stations to start from, one tap each.
 *
 * @fires jw-preset - {fields}: the request fields, everything else as on a first visit
 */
class JwPresets extends element({
  state: value(/** @type {State} */ (of)),
}) {
  static styles = [
    base,
    css`
      :host { container-type: inline-size; }
      .try { padding-left: 4px; }
      @container (max-width: 640px) { .try { display: none; } }
      div { display: flex; flex-wrap: wrap; gap: 6px; align-items: center; }
      button { font-size: 0.82rem; border-radius: 99px; padding: 0 11px; }
      .story { flex-basis: 100%; }
    `,
  ];

  render() {
    const held = SCENARIOS.find(({fields}) => holds(this.state, fields));
    return html`<div role="group" aria-label="Invented example stations">
      <span class="quiet try">Invented stations</span>
      ${SCENARIOS.map(
        (scenario) => html`<button data-preset=${scenario.id} aria-pressed=${scenario === held}
          @click=${() => this._choose(scenario)}>
          ${scenario.name}
        </button>`,
      )}
      <button data-preset="first" @click=${() => this._choose({fields: {}})}>Reset</button>
      ${held ? html`<span class="quiet story">${held.story}</span>` : nothing}
    </div>`;
  }

  _choose({fields}) {
    this.dispatchEvent(new CustomEvent('jw-preset', {detail: {fields}, bubbles: true, composed: true}));
  }
}

customElements.define('jw-presets', JwPresets);
