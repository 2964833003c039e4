import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {changesOf, control} from '../../shared/fields/control.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {contrastWords, noiseWords} from './reception.js';

/**
 * @import {LineRequest} from '../../shared/lines/document.js'
 * @import {Placed} from '../placed.js'
 * @import {LineResult} from '../result.js'
 */

const PREAMPLIFIER = ['preamplifier.gain_db', 'preamplifier.noise_figure_db'];
const VIEW = 'receiver.antenna_view';
/** Chosen in place of a view: its temperature stands for all that the antenna hears. */
const GIVEN = 'given';
/** Of the views, the one whose elevation is not asked for. */
const LEVEL = 'horizon';
/** Offered where the answer has no temperature yet. */
const FIRST_KELVIN = 290;
const FIRST = {gain_db: 15, noise_figure_db: 1};

/**
 * The line on receive: receiver and preamplifier, and what each part costs in signal over noise.
 *
 * @fires jw-line-edit
 */
class JwLineReceive extends element(
  {
    request: value(/** @type {LineRequest} */ (of)),
    result: value(/** @type {LineResult} */ (of)),
    /** Of the elements of the request. */
    names: value(/** @type {string[]} */ (of)),
    refused: value(/** @type {Placed | undefined} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
      }
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      .own { padding-bottom: var(--space-4); }
      .why { margin: var(--space-1) 0 var(--space-3); }
      .scroll { overflow-x: auto; }
      i { display: block; height: 8px; min-width: 1px; background: var(--soft); border-radius: 3px; }
      .two {
        display: grid; grid-template-columns: repeat(auto-fit, minmax(min(280px, 100%), 1fr)); gap: var(--space-4);
      }
      .bar { width: 40%; vertical-align: middle; }
      h3 { margin-bottom: var(--space-half); font-size: var(--type-text); }
      .plain :is(th, td) { padding-top: var(--space-half); padding-bottom: var(--space-half); }
      .here { font-weight: 700; }
      @media print { .fields { display: none; } .two { gap: 4mm; } }
    `,
  ];

  render() {
    const {reception, bands, column} = this.result;
    const rows = bands.map((band, at) => ({
      id: band.column.id,
      name: band.column.name,
      cost: reception.whole_cost_by_band_db[at],
    }));
    return html`<div class="fields" @jw-change=${this._changed}>${this._form()}</div>
      <p class="why">${contrastWords(this.result)}</p>
      <div class="two">
        <section>
          <h3>By part on ${column.name}</h3>
          ${this._bars(
            reception.costs.map(({part, name, cost_db}) => ({id: String(part), name, cost: cost_db})),
            'Whole line',
            reception.whole_cost_db,
          )}
          <p class="quiet">${noiseWords(reception)}</p>
        </section>
        <section><h3>Whole line by band</h3>${this._bars(rows, '', 0, column.id)}</section>
      </div>`;
  }

  _bars(rows, last, whole, here) {
    const most = Math.max(...rows.map(({cost}) => cost ?? 0), whole ?? 0, 0.01);
    const row = ({id, name, cost}) => html`<tr data-id=${id} class=${id === here ? 'here' : ''}>
      <th scope="row">${name}</th>
      <td class="number">${cost === null ? '–' : `${cost.toFixed(2).replace('-', '−')} dB`}</td>
      <td class="bar"><i style="width:${(Math.max(cost ?? 0, 0) / most) * 100}%"></i></td>
    </tr>`;
    return html`<table class="plain">
      <tbody>${rows.map(row)}${last ? row({id: 'whole', name: last, cost: whole}) : nothing}</tbody>
    </table>`;
  }

  _form() {
    const {receiver = {}} = this.request;
    const {preamplifier} = receiver;
    const place = preamplifier?.before_element;
    const error = (name) =>
      this.refused && `${this.refused.group}.${this.refused.field}` === name ? this.refused.message : '';
    const field = (record, name) => control(this.vocabulary, name, this.vocabulary.valueOf(record, name), error(name));
    const {antenna_temperature_k: kelvin = null} = receiver;
    const view = kelvin === null ? this.vocabulary.valueOf(receiver, VIEW) : GIVEN;
    const views = [...this.vocabulary.optionsOf(VIEW), [GIVEN, 'a temperature']];
    return html`${field(receiver, 'receiver.noise_figure_db')}${field(receiver, 'receiver.environment')}
      <div class="own">
        <label for="antenna-view">${this.vocabulary.labelOf(VIEW)}</label>
        <select id="antenna-view" @change=${this._looked}>
          ${views.map(([id, words]) => html`<option value=${id} .selected=${id === view}>${words}</option>`)}
        </select>
      </div>
      ${view === GIVEN ? field(receiver, 'receiver.antenna_temperature_k') : nothing}
      ${view === GIVEN || view === LEVEL ? nothing : field(receiver, 'receiver.elevation_deg')}
      <div class="own">
        <label for="preamplifier">Preamplifier</label>
        <select id="preamplifier" @change=${this._placed}>
          <option value="" .selected=${!preamplifier}>none</option>
          ${this.names.map(
            (name, at) => html`<option value=${at} .selected=${place === at}>before ${at + 1}, ${name}</option>`,
          )}
        </select>
      </div>
      ${preamplifier ? PREAMPLIFIER.map((name) => field(preamplifier, name)) : nothing}`;
  }

  _looked({target}) {
    const {antenna_temperature_k: kelvin} = this.result.reception;
    if (target.value === GIVEN) this._edit({antenna_temperature_k: kelvin === null ? FIRST_KELVIN : whole(kelvin)});
    else this._edit({antenna_view: target.value, antenna_temperature_k: null});
  }

  _placed({target}) {
    const before = this.request.receiver?.preamplifier ?? FIRST;
    this._edit({preamplifier: target.value === '' ? null : {...before, before_element: Number(target.value)}});
  }

  _changed(event) {
    event.stopPropagation();
    const changes = changesOf(event);
    const ofAmplifier = Object.keys(event.detail.changes).some((name) => name.startsWith('preamplifier'));
    this._edit(ofAmplifier ? {preamplifier: {...this.request.receiver.preamplifier, ...changes}} : changes);
  }

  _edit(changes) {
    send(this, 'jw-line-edit', {kind: 'receiver', changes});
  }
}

const whole = (kelvin) => Math.max(1, Math.round(kelvin));

customElements.define('jw-line-receive', JwLineReceive);
