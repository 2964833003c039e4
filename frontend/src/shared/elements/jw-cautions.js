import {css, html} from 'lit';
import {base} from '../styles/base.js';
import {element, of, value} from './element.js';

/** What can hurt someone at this work, a sentence for each. */
class JwCautions extends element({cautions: value(/** @type {string[]} */ (of)), heading: {type: String}}) {
  static styles = [
    base,
    css`
      section {
        padding: var(--space-3) var(--space-4); border-left: 4px solid var(--alarm); background: var(--alarm-wash);
        border-radius: 4px;
      }
      h2 { margin-bottom: var(--space-1); font-size: var(--type-text); }
      ul { padding-left: 1.1em; font-size: var(--type-text); }
      li + li { margin-top: var(--space-1); }
      @media print {
        section { padding: 1mm 3mm; break-inside: avoid; }
        h2, ul { font-size: var(--type-small); }
        h2 { margin: 0; }
        ul { columns: 2; column-gap: 6mm; line-height: 1.25; }
        li + li { margin: 0; }
      }
    `,
  ];

  constructor() {
    super();
    this.cautions = [];
    this.heading = 'Cautions';
  }

  render() {
    return html`<section>
      <h2>${this.heading}</h2>
      <ul>
        ${this.cautions.map((sentence) => html`<li>${sentence}</li>`)}
      </ul>
    </section>`;
  }
}

customElements.define('jw-cautions', JwCautions);
