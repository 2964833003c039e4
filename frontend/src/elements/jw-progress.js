import {LitElement, css, html} from 'lit';
import {base} from './base.js';

/**
 * A thin line that moves while the core is at work; it always takes its height.
 *
 * @property {string} status - initial, pending, complete or error
 */
class JwProgress extends LitElement {
  static styles = [
    base,
    css`
      :host { height: 3px; overflow: hidden; }
      i { display: block; height: 100%; width: 30%; background: var(--accent); opacity: 0; }
      :host([status='pending']) i { opacity: 1; animation: pass 1.1s 0.15s infinite ease-in-out backwards; }
      @keyframes pass { from { translate: -100% 0; } to { translate: 340% 0; } }
      @media (prefers-reduced-motion: reduce) { :host([status='pending']) i { animation: none; width: 100%; } }
      @media print { :host { display: none; } }
    `,
  ];

  static properties = {status: {type: String, reflect: true}};

  constructor() {
    super();
    this.status = 'initial';
  }

  render() {
    return html`<i></i>`;
  }
}

customElements.define('jw-progress', JwProgress);
