import {css, html, nothing, svg} from 'lit';
import {element, of, state, value} from '../shared/elements/element.js';
import {AtStation} from '../shared/station/at-station.js';
import {addressOf, isServed, ownAddress, refusalOf} from '../shared/station/web-address.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {frequency} from '../shared/text/format.js';
import {lossWords} from '../shared/text/loss.js';
import {codePath, codeText} from './code.js';

/** @import {Answer} from './answer.js' */

/** Labels to cut out, one for each joint, each with a code that opens the joint's derivation. */
class JwFitoutLabels extends element(
  {
    result: value(/** @type {Answer} */ (of)),
    /** What was typed and can't be taken; empty where nothing is wrong. */
    _refused: state(/** @type {string} */ (of)),
  },
  AtStation,
) {
  static styles = [
    base,
    panelStyles,
    css`
      .address { max-width: 640px; margin-bottom: var(--space-3); }
      label { display: block; font-size: var(--type-small); font-weight: 600; }
      .labels {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 340px), 1fr)); gap: var(--space-3);
      }
      .label {
        display: flex; gap: var(--space-2); justify-content: space-between; padding: var(--space-2); color: #000;
        background: #fff;
        border: 1px dashed #666; break-inside: avoid;
      }
      .label p { font-size: var(--type-small); line-height: 1.3; }
      .label .name { font-size: var(--type-text); font-weight: 700; overflow-wrap: anywhere; }
      svg { flex: none; width: 128px; height: 128px; }
      @media print {
        .noprint { display: none; }
        .panel { border: 0; padding: 0; break-inside: auto; }
        .labels { display: block; font-size: 0; }
        .label {
          display: inline-flex; width: 88mm; height: 36mm; padding: 2mm; margin: 0 2mm 2mm 0; vertical-align: top;
          overflow: hidden;
        }
        .label p { font-size: var(--type-small); }
        .label .name { font-size: var(--type-lead); }
        svg { width: 31mm; height: 31mm; }
      }
    `,
  ];

  constructor() {
    super();
    this._refused = '';
  }

  render() {
    const refusal = refusalOf(this._refused);
    return html`<section class="panel">
      <h2>Labels</h2>
      <div class="address noprint">
        <label for="address">Address of the page in the codes</label>
        <input id="address" type="url" autocomplete="off" placeholder=${ownAddress(location)} 
          .value=${this._refused || this.station.address}
          aria-invalid=${refusal ? 'true' : 'false'} aria-describedby="about" @change=${this._changed}>
        <p id="about" class=${refusal ? 'error' : 'quiet'}
          role=${refusal ? 'alert' : 'note'}>${refusal || this._about()}</p>
      </div>
      <div class="labels">${this.result.joints.map((joint) => this._label(joint))}</div>
    </section>`;
  }

  get _address() {
    return addressOf(this.station, location);
  }

  _about() {
    if (isServed(this._address)) return `Each code opens the derivation of its joint at ${this._address}.`;
    return (
      'This page is a file, so its codes open on this device only; ' +
      'give the address of a served page, and they open there.'
    );
  }

  _changed(event) {
    const address = event.target.value.trim();
    this._refused = refusalOf(address) ? address : '';
    if (!this._refused) this.stationStore.change('fitout', {address});
  }

  _label({heading, label}) {
    const text = codeText(this._address, label, this.vocabulary.first.matrix.powers_w);
    const {size, path} = codePath(text);
    const {station} = this.result;
    return html`<div class="label">
      <div>
        <p class="name">${label.name}</p>
        <p><b>${label.family}</b>${station ? `, ${station}` : ''}</p>
        ${label.date ? html`<p>Fitted ${label.date}</p>` : nothing}
        <p>At ${frequency(label.frequency_hz)}:</p>
        <p>loss ${lossWords(label.expected_loss_db)}</p>
        <p>return loss ${label.expected_return_loss_db.toFixed(0)} dB, least ${label.least_return_loss_db.toFixed(0)}
        dB</p>
      </div>
      <svg viewBox="0 0 ${size} ${size}" role="img" aria-label="Code that opens the derivation of ${heading}"
        shape-rendering="crispEdges">
        ${svg`<rect width=${size} height=${size} fill="#fff"></rect><path d=${path} fill="#000"></path>`}
      </svg>
    </div>`;
  }
}

customElements.define('jw-fitout-labels', JwFitoutLabels);
