import {css, html, nothing} from 'lit';
import '../shared/charts/jw-chart.js';
import {element, of, state, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {saveJson} from '../shared/export/save.js';
import {base} from '../shared/styles/base.js';
import {panelStyles, pickStyles} from '../shared/styles/panels.js';
import {contentOf, fromFile, historyOf} from '../shared/sweeps/history.js';
import {historyFigure} from './figures.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {KeptSweep} from '../shared/sweeps/history.js'
 */

const today = () => new Date().toISOString().slice(0, 10);

/**
 * Sweeps kept by line and day: to keep one more, to compare with, to take along and bring back.
 *
 * @fires jw-sweep-keep - {date}; jw-sweep-compare, jw-sweep-drop - {entry}; jw-sweep-import - {entries}; jw-notice
 */
class JwSweepHistory extends element({
  entries: value(/** @type {KeptSweep[]} */ (of)),
  /** The name of the line at hand. */
  line: {type: String},
  /** Whether there is an answer to keep. */
  keepable: {type: Boolean},
  /** Brings the chart library. */
  load: value(/** @type {LoadCharts} */ (of)),
  _date: state(/** @type {string} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    pickStyles,
    css`
      .bar {
        display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: end;
        margin-bottom: var(--space-2);
      }
      .bar label:not(.pick) { font-size: var(--type-small); font-weight: 600; }
      .bar input[type='date'] { width: auto; }
      .scroll { overflow-x: auto; }
      @media print { .bar, td:last-child, th:last-child { display: none; } }
    `,
  ];

  constructor() {
    super();
    this._date = today();
  }

  willUpdate(changed) {
    if (!changed.has('entries') && !changed.has('line')) return;
    const history = historyOf(this.entries, this.line);
    this._figure = history && ((colours) => historyFigure(history, colours));
    this._title = history?.title;
  }

  render() {
    const {entries} = this;
    const dated = (event) => (this._date = event.target.value || today());
    const exported = () => saveJson('jointwise-sweeps.json', contentOf(entries));
    return html`<section class="panel" id="kept">
      <h2>Kept sweeps <small>in this browser only</small></h2>
      <div class="bar">
        <label>Measured on <input id="day" type="date" .value=${this._date} @change=${dated}></label>
        <button id="keep" ?disabled=${!this.keepable}
          @click=${() => send(this, 'jw-sweep-keep', {date: this._date})}>Keep this sweep</button>
        <button id="export" ?disabled=${entries.length === 0} @click=${exported}>Export</button>
        <label class="pick">Import<input id="import" type="file" accept=".json" @change=${this._import}></label>
      </div>
      ${
        entries.length === 0
          ? html`<p class="quiet">None yet. Keep one after each inspection, and what changes will show.</p>`
          : this._table()
      }
      ${
        this._figure
          ? html`<jw-chart id="history" .figure=${this._figure} .load=${this.load}
              label="${this._title} of ${this.line} over the days of the kept sweeps"></jw-chart>`
          : nothing
      }
    </section>`;
  }

  _table() {
    return html`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Day</th><th scope="col">Line</th><th scope="col">Result</th><th scope="col">Do</th>
        </tr>
      </thead>
      <tbody>
        ${this.entries.toReversed().map((entry) => this._row(entry))}
      </tbody>
    </table></div>`;
  }

  _row(entry) {
    const {date, line, verdict} = entry;
    return html`<tr>
      <td>${date}</td><th scope="row">${line}</th><td>${verdict}</td>
      <td>
        <button aria-label="Compare with the sweep of ${line} of ${date}"
          @click=${() => send(this, 'jw-sweep-compare', {entry})}>Compare</button>
        <button aria-label="Remove the sweep of ${line} of ${date}"
          @click=${() => send(this, 'jw-sweep-drop', {entry})}>Remove</button>
      </td>
    </tr>`;
  }

  async _import({target: input}) {
    const [file] = input.files;
    if (!file) return;
    const text = await file.text();
    input.value = '';
    try {
      send(this, 'jw-sweep-import', {entries: fromFile(text)});
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      send(this, 'jw-notice', {text: `${file.name} was not taken. ${error.message}`});
    }
  }
}

customElements.define('jw-sweep-history', JwSweepHistory);
