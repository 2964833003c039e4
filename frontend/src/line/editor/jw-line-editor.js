import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import '../../shared/fields/jw-own.js';
import {base} from '../../shared/styles/base.js';
import {panelStyles} from '../../shared/styles/panels.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import './jw-line-list.js';
import './jw-line-load.js';
import './jw-line-station.js';
import './jw-line-transmitter.js';

/**
 * @import {LineRequest} from '../../shared/lines/document.js'
 * @import {Placed} from '../placed.js'
 * @import {LineResult} from '../result.js'
 */

/** What the reader says of a line: its station, its transmitter, its elements, its antenna. */
class JwLineEditor extends element(
  {
    request: value(/** @type {LineRequest} */ (of)),
    /** What the line has its own of, and other than the station's. */
    own: value(/** @type {string[]} */ (of)),
    /** What the station's antenna is called; empty where it has none. */
    antenna: {type: String},
    /** Of the elements. */
    names: value(/** @type {string[]} */ (of)),
    /** The request of the result. */
    answered: value(/** @type {LineRequest | undefined} */ (of)),
    /** The last good answer; undefined before the first. */
    result: value(/** @type {LineResult | undefined} */ (of)),
    /** Marks the field it names. */
    refused: value(/** @type {Placed | undefined} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    panelStyles,
    css`
      :host {
        display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; min-width: 0;
      }
      .list { padding: var(--space-3) var(--space-2); }
      .list h2 { padding-left: var(--space-2); }
      .keep { font-size: var(--type-small); }
      @media print { .keep { display: none; } }
    `,
  ];

  render() {
    const {request} = this;
    const settings = this.own.filter((name) => name !== 'load' && name !== 'transmitter');
    const refusedIn = (group) => (this.refused?.group === group ? this.refused : undefined);
    return html`<section class="panel">
        <h2>Station and site</h2>
        ${this._ownOf(settings, settings.map((name) => this.vocabulary.labelOf(`station.${name}`)).join(', '))}
        <jw-line-station .request=${request} .refused=${refusedIn('station')}></jw-line-station>
      </section>
      <section class="panel">
        <h2>The transmitter</h2>
        ${this._ownOf(['transmitter'], 'its behaviour at a bad SWR')}
        <jw-line-transmitter .request=${request}
          .refused=${refusedIn('station') ?? refusedIn('transmitter')}></jw-line-transmitter>
      </section>
      <section class="panel list">
        <h2>The line <small>loss, and margin in dB</small></h2>
        <jw-line-list .elements=${request.elements} .names=${this.names} .answered=${this.answered}
          .result=${this.result} .refused=${refusedIn('elements')}></jw-line-list>
      </section>
      <section class="panel">
        <h2>The antenna <small>${this.own.includes('load') ? nothing : this.antenna}</small></h2>
        ${this._ownOf(['load'], 'antenna')}
        <jw-line-load .load=${request.load} .frequency=${this.result?.frequency_hz}
          .refused=${refusedIn('load')}></jw-line-load>
        ${
          this.own.includes('load')
            ? html`<button class="keep" id="keep-antenna"
                @click=${() => send(this, 'jw-line-edit', {kind: 'keep-antenna'})}>Make it the station’s</button>`
            : nothing
        }
      </section>`;
  }

  /** What of these the line has its own of, with the way back. */
  _ownOf(names, what) {
    const own = names.filter((name) => this.own.includes(name));
    return html`<jw-own of="This line" what=${own.length > 0 ? what : ''}
      @jw-leave=${() => send(this, 'jw-line-edit', {kind: 'leave', names: own})}></jw-own>`;
  }
}

customElements.define('jw-line-editor', JwLineEditor);
