import {css, html, nothing} from 'lit';
import {FormView} from '../shared/elements/form-view.js';
import '../shared/elements/jw-cautions.js';
import {save} from '../shared/export/save.js';
import {refusedField} from '../shared/fields/refused.js';
import {given} from '../shared/state/given.js';
import {stationPart} from '../shared/station/link.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {pageStyles} from '../shared/styles/view.js';
import {cellFragment} from './cell.js';
import {choicesCsv} from './csv.js';
import {chooseRequest, missingWords} from './fields.js';
import './jw-choose-form.js';
import './jw-choose-table.js';
import './jw-choose-verdict.js';

/**
 * Which family to fit at a joint: the demands, the families that meet them, and why the others do not.
 *
 * @fires jw-notice - {text, link}: a sentence for the reader
 */
export class JwChooseView extends FormView {
  static view = 'choose';

  static ownNames = [
    'use',
    'frequencies_hz',
    'margin_asked_db',
    'dc_current_a',
    'dc_voltage_v',
    'installation',
    'port',
    'largest_diameter_m',
    'plan',
  ];

  static styles = [
    base,
    panelStyles,
    pageStyles,
    css`
      @media screen and (max-width: 1179px) {
        .answer { display: contents; }
        jw-choose-verdict, .waiting { order: -1; min-height: 6rem; }
        .trouble { order: -2; }
      }
      @media print {
        .onpaper { display: block; }
        #passing, #missed { break-inside: auto; }
        h2 small { display: none; }
      }
    `,
  ];

  constructor() {
    super();
    this._choose = this._enquiry('choose');
  }

  render() {
    const {error, result} = this._choose;
    return html`${this._progress(this._choose)}
      <main @jw-choose-change=${({detail}) => this._change(detail.changes, detail.live)}>
        ${this._trouble()}
        <jw-choose-form class="noprint" .state=${this._state} .refusal=${error}></jw-choose-form>
        ${
          result
            ? this._answer()
            : html`<p class="waiting quiet">${this._missing || error?.message || 'Calculating…'}</p>`
        }
      </main>`;
  }

  get ways() {
    const [link, print] = super.ways;
    const file = (result) => save('jointwise-choose.csv', 'text/csv', choicesCsv(result));
    const csv = () => this._withAnswer(this._choose.result, file);
    return [link, {id: 'csv', words: 'Save as CSV', run: csv}, print];
  }

  _answer() {
    const {answered, result} = this._choose;
    const missed = result.choices.filter(({passes}) => !passes);
    const passing = result.choices.filter(({passes}) => passes);
    return html`<div class="answer">
      <jw-choose-verdict .result=${result} .answered=${answered} .outdated=${this._outdated}></jw-choose-verdict>
      <p class="onpaper">${this._demands(answered)}</p>
      ${passing.length > 0 ? this._panel('passing', 'Connectors that meet every demand', passing) : nothing}
      ${missed.length > 0 ? this._panel('missed', 'Connectors that miss a demand', missed) : nothing}
      <jw-cautions .cautions=${result.cautions}></jw-cautions>
    </div>`;
  }

  _panel(id, heading, choices) {
    const {answered, result} = this._choose;
    const {first} = this.vocabulary;
    const {bands, band, frequency_hz} = this.station.settings;
    // the cell's fragment says the settings; what else the station has goes along
    const rest = stationPart({...this.station, settings: given({band, frequency_hz})}, ['band', 'frequency_hz']);
    const linkOf = (choice) =>
      [cellFragment(choice, answered, result, first.matrix, bands), rest].filter(Boolean).join('&');
    return html`<section class="panel" id=${id}>
      <h2>${heading} (${choices.length}) <small>tap a name to see how its margin is made</small></h2>
      <jw-choose-table .choices=${choices} .all=${result.choices} .plan=${answered.plan ?? ''} .heading=${heading}
        .linkOf=${linkOf}></jw-choose-table>
      ${
        id === 'passing'
          ? html`<p class="quiet legend">${result.rule} <span class="noprint">Tap a column’s head to sort by it,
          Rank to go back.</span>
          Loss is that of the mated pair at the highest frequency${
            answered.port ? ', with the joint it plugs into' : ''
          }.</p>`
          : nothing
      }
    </section>`;
  }

  /** Why the answer shown is not of the form; empty while it is. */
  get _outdated() {
    const why = this._missing || this._choose.error?.message;
    return why ? `Out of date: this is the answer before the last change. ${why}` : '';
  }

  /** What the reader has yet to say. */
  get _missing() {
    return missingWords(this._state, this.vocabulary);
  }

  /** A refusal that no field of the form can show. */
  _trouble() {
    const {error} = this._choose;
    if (!error || refusedField(error) in this.vocabulary.fields.choose) return nothing;
    return html`<p class="trouble" role="alert">${error.message} <button
      @click=${() => this._ask(true)}>Try again</button></p>`;
  }

  /** The demands in words, for paper. */
  _demands(answered) {
    return Object.entries(answered)
      .filter(([, value]) => !Array.isArray(value) || value.length > 0)
      .map(
        ([name, value]) =>
          `${this.vocabulary.labelOf(`choose.${name}`)}: ${this.vocabulary.spoken(`choose.${name}`, value)}`,
      )
      .join(' · ');
  }

  _ask(again = false) {
    if (this._missing) return;
    const request = chooseRequest(this._state, this.vocabulary);
    const text = JSON.stringify(request);
    if (again || text !== this._asked) this._choose.askNext(request);
    this._asked = text;
  }
}

customElements.define('jw-choose-view', JwChooseView);
