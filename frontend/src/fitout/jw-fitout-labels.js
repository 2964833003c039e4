import {css, html, nothing, svg} from 'lit';
import {codePath} from '../shared/codes/path.js';
import {element, of, state, value} from '../shared/elements/element.js';
import {EMPTY_BOOK, entriesOf, valuesOf} from '../shared/joints/book.js';
import {dueOf} from '../shared/joints/due.js';
import {spokenCode} from '../shared/joints/identity.js';
import {AtStation} from '../shared/station/at-station.js';
import {addressOf, isServed, ownAddress, refusalOf} from '../shared/station/web-address.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {frequency} from '../shared/text/format.js';
import {lossWords} from '../shared/text/loss.js';
import {codeText, jointText} from './code.js';

/**
 * @import {Book} from '../shared/joints/book.js'
 * @import {Joint} from '../shared/joints/identity.js'
 * @import {Answer} from './answer.js'
 */

/** To be written on by hand. */
const BLANK = '\u2026'.repeat(8);

/**
 * Labels to cut out, one for each joint, with what the joint book says of it. The code on it opens the joint where its
 * line is kept, else its derivation.
 */
class JwFitoutLabels extends element(
  {
    result: value(/** @type {Answer} */ (of)),
    book: value(/** @type {Book} */ (of)),
    /** The joints of a line that is kept, one for each sheet; else none. */
    joints: value(/** @type {Joint[]} */ (of)),
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
    this.book = EMPTY_BOOK;
    this.joints = [];
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
      <div class="labels">${this.result.joints.map((sheet, at) => this._label(sheet, this.joints[at]))}</div>
    </section>`;
  }

  get _address() {
    return addressOf(this.station, location);
  }

  _about() {
    const isKept = this.joints.length > 0;
    if (isServed(this._address))
      return `Each code opens ${isKept ? 'its joint' : 'the derivation of its joint'} at ${this._address}.`;
    if (isKept)
      return (
        'This page is a file, so each code holds the joint’s own code as plain text; ' +
        'give the address of a served page, and the codes open the joint there.'
      );
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

  _label({halves, heading, inspection, label, torque}, joint) {
    const {station} = this.result;
    const values = valuesOf(joint ? entriesOf(this.book, joint.code) : []);
    const fitted = values.fitted_on || label.date;
    const next = dueOf({...values, fitted_on: fitted}, inspection.interval_months);
    const tightened = values.torque ? `used ${values.torque}` : torque.figures;
    const text = joint
      ? jointText(this._address, joint.code)
      : codeText(this._address, label, this.vocabulary.first.matrix.powers_w);
    const {size, path} = codePath(text);
    return html`<div class="label">
      <div>
        <p class="name">${label.name}${joint ? html` <small>${spokenCode(joint.code)}</small>` : nothing}</p>
        <p><b>${label.family}</b>${station ? `, ${station}` : ''}</p>
        <p class="joins">${halves.map(({on}) => on).join(' to ')}</p>
        <p>Fitted ${fitted || BLANK} by ${values.fitted_by || BLANK}</p>
        ${tightened ? html`<p class="torque">Torque ${tightened}</p>` : nothing}
        <p class="next">Next inspection ${next || BLANK}</p>
        <p>At ${frequency(label.frequency_hz)}: loss ${lossWords(label.expected_loss_db)},
        return loss ${label.expected_return_loss_db.toFixed(0)} dB, least ${label.least_return_loss_db.toFixed(0)}
        dB</p>
      </div>
      <svg viewBox="0 0 ${size} ${size}" role="img"
        aria-label="Code that opens ${joint ? '' : 'the derivation of '}${heading}"
        shape-rendering="crispEdges">
        ${svg`<rect width=${size} height=${size} fill="#fff"></rect><path d=${path} fill="#000"></path>`}
      </svg>
    </div>`;
  }
}

customElements.define('jw-fitout-labels', JwFitoutLabels);
