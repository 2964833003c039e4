import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {changesOf, control} from '../../shared/fields/control.js';
import {readingChoices, readingStyles} from '../../shared/fields/readings.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {newLoads} from '../new-parts.js';
import {readingsOfPoints, rowsOf} from './rows.js';

/**
 * @import {Element} from '../../shared/lines/document.js'
 * @import {Reading} from '../../shared/text/number-typed.js'
 * @import {Placed} from '../placed.js'
 */

const WAYS = [
  ['vswr', 'its SWR'],
  ['resonant', 'its resonance'],
  ['impedance', 'one impedance'],
  ['table', 'impedances in a table'],
  ['measured', 'a measured file'],
  ['dummy', 'being a dummy load'],
];
const FIELDS = {
  vswr: ['load_vswr.vswr', 'load_vswr.angle_deg'],
  resonant: [
    'load_resonant.resonance_hz',
    'load_resonant.vswr',
    'load_resonant.bandwidth_hz',
    'load_resonant.bandwidth_vswr',
  ],
  impedance: ['load_impedance.resistance_ohm', 'load_impedance.reactance_ohm'],
  measured: ['load_measured.touchstone'],
  dummy: ['load_dummy.vswr', 'load_dummy.power_limit_w'],
  table: [],
};

/** What is taken for granted, where it is not plain. */
const SAID = {
  vswr:
    'An SWR alone says nothing of its phase. With the angle left empty, the answer covers every phase: what is ' +
    'likely, and the worst.',
  resonant: 'A series circuit: resistive at resonance, with this SWR at the edges of the bandwidth.',
};

/**
 * How the antenna is known. Another way takes its place once it has its data.
 *
 * @fires jw-line-edit
 */
class JwLineLoad extends element(
  {
    load: value(/** @type {Element} */ (of)),
    /** Looked at; undefined before the first answer. */
    frequency: value(/** @type {number | undefined} */ (of)),
    refused: value(/** @type {Placed | undefined} */ (of)),
    _way: state(/** @type {string} */ (of)),
    _problem: state(/** @type {string} */ (of)),
    /** Of the rows, where it has to be asked which is meant. */
    _readings: state(/** @type {Reading[]} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    readingStyles,
    css`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
      }
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      textarea {
        width: 100%; min-height: 130px; padding: var(--space-2); font: var(--type-small)/1.4 ui-monospace, monospace;
        color: inherit;
        background: var(--card); border: 1px solid var(--edge); border-radius: var(--round);
      }
      .own { padding-bottom: var(--space-4); }
      .wide { grid-column: 1 / -1; }
      .onpaper { display: none; }
      @media print { .fields { display: none; } .onpaper { display: block; } }
    `,
  ];

  willUpdate(changed) {
    // the same load comes anew whenever the station is put to the line: a way just chosen stays
    if (!changed.has('load') || JSON.stringify(changed.get('load')) === JSON.stringify(this.load)) return;
    this._way = this.load.kind;
    this._problem = '';
    this._readings = [];
  }

  render() {
    const shown = (name) => (this._way === this.load.kind ? this.vocabulary.valueOf(this.load, name) : '');
    const error = (name) => (this.refused?.field === name.split('.')[1] ? this.refused?.message : '');
    return html`<p class="onpaper">${this._inWords()}</p>
    <div class="fields" @jw-change=${this._changed}>
      <div class="own">
        <label for="way">Known by</label>
        <select id="way" @change=${this._rechosen}>
          ${WAYS.map(([id, words]) => html`<option value=${id} .selected=${id === this._way}>${words}</option>`)}
        </select>
      </div>
      ${FIELDS[this._way].map((name) => control(this.vocabulary, name, shown(name), error(name)))}
      ${this._way === 'table' ? this._table() : nothing}
      ${this._way in SAID ? html`<p class="quiet wide">${SAID[this._way]}</p>` : nothing}
      ${this.refused?.field === '' ? html`<p class="error wide" role="alert">${this.refused.message}</p>` : nothing}
    </div>`;
  }

  /** For paper: figures as they are given, a table or a file by its way alone. */
  _inWords() {
    const {kind} = this.load;
    const figures = FIELDS[kind].filter((name) => !name.endsWith('.touchstone'));
    const inWords = (name) =>
      `${this.vocabulary.labelOf(name)}: ${this.vocabulary.spoken(name, this.vocabulary.valueOf(this.load, name))}`;
    return [`Known by ${WAYS.find(([id]) => id === kind)?.[1]}`, ...figures.map(inWords)].join(' · ');
  }

  _table() {
    const problem = this._problem || (this.refused?.field === 'points' ? this.refused.message : '');
    return html`<div class="wide">
      <label for="rows">Rows of frequency in MHz, resistance and reactance in Ω</label>
      <textarea id="rows" spellcheck="false" placeholder="14.0  42  -8"
        aria-invalid=${problem ? 'true' : 'false'} aria-describedby="rows-under"
        .value=${this.load.points ? rowsOf(this.load.points) : ''} @change=${this._pasted}></textarea>
      <p id="rows-under" class=${problem ? 'error' : 'quiet'} role=${problem ? 'alert' : 'note'}>
        ${problem || 'Paste them from a table or an analyser’s export.'}
      </p>
      ${this._readings.length > 0 ? readingChoices('The rows', this._readings, this._meant) : nothing}
    </div>`;
  }

  _rechosen(event) {
    this._way = event.target.value;
    const fresh = newLoads(this.frequency)[this._way];
    if (fresh) this._set(fresh);
  }

  _pasted({target: {value: text}}) {
    this._readings = [];
    try {
      const readings = readingsOfPoints(text);
      if (readings.length === 1) return this._meant(readings[0]);
      this._readings = readings;
      const meant = readings.map(({words}) => words).join(' or ');
      this._problem = `The rows can be read in more than one way: is one of them ${meant}?`;
    } catch (error) {
      this._problem = /** @type {Error} */ (error).message;
    }
  }

  _meant = ({value: points}) => {
    this._readings = [];
    this._problem = '';
    this._set({kind: 'table', points});
  };

  _changed(event) {
    event.stopPropagation();
    this._set({...(this._way === this.load.kind ? this.load : {kind: this._way}), ...changesOf(event)});
  }

  _set(load) {
    send(this, 'jw-line-edit', {kind: 'load', load});
  }
}

customElements.define('jw-line-load', JwLineLoad);
