import {css, html, nothing} from 'lit';
import {element} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';

const KINDS = [
  ['link', 'Copy link'],
  ['csv', 'CSV'],
  ['json', 'JSON'],
  ['print', 'Print'],
  ['website', 'Put on a website'],
];

/**
 * Ways to take the shown matrix along.
 *
 * @fires jw-export - {kind}: link, csv, json, print or website
 */
class JwExports extends element({
  /** Address of the page as one file; empty where there is none. */
  file: {type: String},
}) {
  static styles = [
    base,
    css`
      div { display: flex; flex-wrap: wrap; gap: 6px; }
      button, a { font-size: 0.82rem; padding: 0 9px; }
      a {
        display: grid; align-items: center; min-height: var(--target); color: inherit; text-decoration: none;
        border: 1px solid var(--edge); border-radius: var(--round); background: var(--card);
      }
      a:hover { border-color: var(--ink); }
    `,
  ];

  constructor() {
    super();
    this.file = '';
  }

  render() {
    return html`<div role="group" aria-label="Take along">
      ${KINDS.map(
        ([kind, words]) => html`<button id="export-${kind}" @click=${() => this._export(kind)}>${words}</button>`,
      )}
      ${
        this.file
          ? html`<a id="export-offline" href=${this.file} download="jointwise.html">Save for offline use</a>`
          : nothing
      }
    </div>`;
  }

  _export(kind) {
    this.dispatchEvent(new CustomEvent('jw-export', {detail: {kind}, bubbles: true, composed: true}));
  }
}

customElements.define('jw-exports', JwExports);
