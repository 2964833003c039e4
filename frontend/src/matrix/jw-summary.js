import {LitElement, css, html} from 'lit';
import {WORDS, spoken} from '../shared/fields/words.js';
import {base} from '../shared/styles/base.js';

/**
 * The scenario in words, for paper.
 *
 * @property {object} state
 */
class JwSummary extends LitElement {
  static styles = [
    base,
    css`
      dl { columns: 4; column-gap: 5mm; font-size: 7pt; line-height: 1.3; }
      div { break-inside: avoid; }
      dt, dd { display: inline; }
      dt { color: var(--soft); }
      dt::after { content: ': '; }
    `,
  ];

  static properties = {state: {attribute: false}};

  render() {
    const given = Object.keys(WORDS).filter((name) => this.state[name] !== null && this.state[name].length !== 0);
    return html`<dl>
      ${given.map((name) => html`<div><dt>${WORDS[name].label}</dt><dd>${spoken(name, this.state[name])}</dd></div>`)}
    </dl>`;
  }
}

customElements.define('jw-summary', JwSummary);
