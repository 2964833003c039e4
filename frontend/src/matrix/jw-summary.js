import {css, html} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';
import {Speaking} from '../shared/vocabulary/speaking.js';

/** @import {State} from './fields.js' */

/** The scenario in words, for paper. */
class JwSummary extends element(
  {
    state: value(/** @type {State} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      dl { columns: 4; column-gap: 5mm; font-size: var(--type-fine); line-height: 1.3; }
      div { break-inside: avoid; }
      dt, dd { display: inline; }
      dt { color: var(--soft); }
      dt::after { content: ': '; }
    `,
  ];

  render() {
    const given = Object.keys(this.vocabulary.words).filter((name) => (this.state[name] ?? []).length !== 0);
    return html`<dl>
      ${given.map(
        (name) =>
          html`<div><dt>${this.vocabulary.labelOf(name)}</dt><dd>${this.vocabulary.spoken(name, this.state[name])}</dd
            ></div>`,
      )}
    </dl>`;
  }
}

customElements.define('jw-summary', JwSummary);
