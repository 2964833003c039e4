import {css, html, nothing} from 'lit';
import {LOADING, STARTING, UNPACKING} from '../../worker/messages.js';
import {base} from '../styles/base.js';
import {element} from './element.js';

/** How far a start has come, in per cent, when a stage begins. */
const COME = {[UNPACKING]: 10, [STARTING]: 30, [LOADING]: 60};

/**
 * A thin line that moves while the core is at work; it always takes its height.
 * While a core of the page's own is starting, the stage it has reached is named,
 * and the line grows by stages: drawing one that moves slows the start, in WebKit to a third.
 */
class JwProgress extends element({
  /** Initial, pending, complete or error. */
  status: {type: String, reflect: true},
  /** How far starting has come; empty when nothing starts. */
  stage: {type: String},
}) {
  static styles = [
    base,
    css`
      :host { height: 3px; }
      div { height: 100%; overflow: hidden; }
      p {
        position: fixed; bottom: calc(var(--foot) + var(--space-3)); left: var(--space-3); z-index: 16;
        padding: var(--space-1) var(--space-3); font-size: var(--type-small);
        background: var(--card);
        border: 1px solid var(--line); border-radius: var(--round); box-shadow: 0 4px 20px #0003;
      }
      i { display: block; height: 100%; width: 30%; background: var(--focus); opacity: 0; }
      :host([status='pending']) i { opacity: 1; }
      :host([status='pending']) .moving { animation: pass 1.1s 0.15s infinite ease-in-out backwards; }
      @keyframes pass { from { translate: -100% 0; } to { translate: 340% 0; } }
      @media (prefers-reduced-motion: reduce) { :host([status='pending']) .moving { animation: none; width: 100%; } }
      @media print { :host { display: none; } }
    `,
  ];

  constructor() {
    super();
    this.status = 'initial';
    this.stage = '';
    this._reached = '';
  }

  /** What a start has reached stays until the first answer: a core that is ready has none yet. */
  willUpdate() {
    if (this.stage) this._reached = this.stage;
    else if (this.status !== 'pending') this._reached = '';
  }

  render() {
    const come = COME[this._reached];
    const line = come === undefined ? html`<i class="moving"></i>` : html`<i style="width: ${come}%"></i>`;
    const reached = this._reached ? html`<p role="status">Starting the core: ${this._reached}</p>` : nothing;
    return html`<div>${line}</div>${reached}`;
  }
}

customElements.define('jw-progress', JwProgress);
