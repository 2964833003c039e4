import {LitElement, css, html} from 'lit';
import {base} from './base.js';

const KINDS = [['link', 'Copy link'], ['csv', 'CSV'], ['json', 'JSON'], ['print', 'Print']];

/**
 * Ways to take the shown matrix along.
 *
 * @fires jw-export - {kind}: link, csv, json or print
 */
class JwExports extends LitElement {
  static styles = [
    base,
    css`
      div { display: flex; flex-wrap: wrap; gap: 6px; }
      button { font-size: 0.82rem; padding: 0 9px; }
    `,
  ];

  render() {
    return html`<div role="group" aria-label="Take along">
      ${KINDS.map(([kind, words]) => html`<button id="export-${kind}" @click=${() => this._export(kind)}>${words}</button>`)}
    </div>`;
  }

  _export(kind) {
    this.dispatchEvent(new CustomEvent('jw-export', {detail: {kind}, bubbles: true, composed: true}));
  }
}

customElements.define('jw-exports', JwExports);
