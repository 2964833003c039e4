import {css, html, unsafeCSS} from 'lit';
import {element} from '../shared/elements/element.js';
import {STEPS, STEP_RULES, stepRange} from '../shared/margins/scale.js';
import {base} from '../shared/styles/base.js';

/** The key to the colours of the matrix, in one line. */
class JwKey extends element({}) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    css`
      div {
        display: flex; flex-wrap: wrap; gap: var(--space-half) var(--space-3); align-items: center;
        font-size: var(--type-small);
      }
      .scale {
        display: flex; flex: 1 1 20rem; max-width: 46rem; gap: var(--space-half); margin: 0; padding: 0;
        list-style: none;
      }
      li {
        flex: 1; padding: var(--space-half) var(--space-1); text-align: center; font-size: var(--type-fine);
        line-height: 1.3;
      }
      li:first-child { border-radius: 5px 0 0 5px; }
      li:last-child { border-radius: 0 5px 5px 0; }
      li b { display: block; font-weight: 600; }
      [data-step='refused'] {
        color: var(--refused-ink);
        background: repeating-linear-gradient(135deg, var(--refused) 0 4px, var(--refused-line) 4px 5px);
      }
      @media (max-width: 480px) {
        li { padding: var(--space-half) var(--space-half); }
        li[data-step='refused'] { display: none; }
      }
      @media print { div, li { font-size: var(--type-fine); } }
    `,
  ];

  render() {
    return html`<div><span id="scale">Margin, dB</span>
      <ul class="scale" aria-labelledby="scale">
        ${STEPS.map(({id, words}) => html`<li data-step=${id}><b>${words}</b> ${stepRange(id)}</li>`)}
        <li data-step="refused"><b>refused</b> not for use</li>
      </ul></div>`;
  }
}

customElements.define('jw-key', JwKey);
