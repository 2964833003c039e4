import {css, html, svg} from 'lit';
import {codePath} from '../shared/codes/path.js';
import {element, of, value} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';

/** So many have room to be larger, and are read from farther away. */
const FEW = 4;

/** A station as codes on one sheet, each with its number. */
class JwCodes extends element({
  texts: value(/** @type {string[]} */ (of)),
  /** Station and day. */
  of: {type: String},
}) {
  static styles = [
    base,
    css`
      .codes {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 260px), 1fr)); gap: var(--space-4);
      }
      figure { padding: var(--space-2); color: #000; background: #fff; break-inside: avoid; }
      figcaption { text-align: center; font-size: var(--type-small); }
      svg { display: block; width: 100%; height: auto; }
      @media print {
        .codes { grid-template-columns: repeat(3, 51mm); gap: 3mm 10mm; margin-top: 2mm; }
        .codes[data-few] { grid-template-columns: repeat(2, 86mm); }
        figure { padding: 0; }
        figcaption { font-size: var(--type-small); }
        p { font-size: var(--type-text); }
      }
    `,
  ];

  constructor() {
    super();
    this.of = '';
  }

  render() {
    const count = this.texts.length;
    return html`<p>${this.of}. ${count === 1 ? 'One code holds' : `${count} codes together hold`} this station. Take a
        picture of ${count === 1 ? 'it' : 'them'}, and open it in Jointwise: Share and save, Save or open my page.</p>
      <div class="codes" ?data-few=${count <= FEW}>
        ${this.texts.map((text, at) => this._code(text, at + 1, count))}
      </div>`;
  }

  _code(text, number, count) {
    const {size, path} = codePath(text);
    return html`<figure>
      <svg viewBox="0 0 ${size} ${size}" role="img" aria-label="Code ${number} of ${count}"
        shape-rendering="crispEdges">
        ${svg`<rect width=${size} height=${size} fill="#fff"></rect><path d=${path} fill="#000"></path>`}
      </svg>
      <figcaption>${number} of ${count}</figcaption>
    </figure>`;
  }
}

customElements.define('jw-codes', JwCodes);
