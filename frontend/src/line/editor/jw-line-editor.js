import {css, html} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {base} from '../../shared/styles/base.js';
import {panelStyles} from '../../shared/styles/panels.js';
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
class JwLineEditor extends element({
  request: value(/** @type {LineRequest} */ (of)),
  /** Of the elements. */
  names: value(/** @type {string[]} */ (of)),
  /** The request of the result. */
  answered: value(/** @type {LineRequest | undefined} */ (of)),
  /** The last good answer; undefined before the first. */
  result: value(/** @type {LineResult | undefined} */ (of)),
  /** Marks the field it names. */
  refused: value(/** @type {Placed | undefined} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; min-width: 0; }
      .list { padding: 12px 8px; }
      .list h2 { padding-left: 6px; }
    `,
  ];

  render() {
    const {request} = this;
    const refusedIn = (group) => (this.refused?.group === group ? this.refused : undefined);
    return html`<section class="panel">
        <h2>Station and site</h2>
        <jw-line-station .request=${request} .refused=${refusedIn('station')}></jw-line-station>
      </section>
      <section class="panel">
        <h2>The transmitter</h2>
        <jw-line-transmitter .request=${request}
          .refused=${refusedIn('station') ?? refusedIn('transmitter')}></jw-line-transmitter>
      </section>
      <section class="panel list">
        <h2>The line <small>loss, and margin in dB</small></h2>
        <jw-line-list .elements=${request.elements} .names=${this.names} .answered=${this.answered}
          .result=${this.result} .refused=${refusedIn('elements')}></jw-line-list>
      </section>
      <section class="panel">
        <h2>The antenna</h2>
        <jw-line-load .load=${request.load} .frequency=${this.result?.frequency_hz}
          .refused=${refusedIn('load')}></jw-line-load>
      </section>`;
  }
}

customElements.define('jw-line-editor', JwLineEditor);
