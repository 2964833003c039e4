import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {inside} from '../shared/elements/inside.js';
import {send} from '../shared/elements/send.js';
import {changesOf, control} from '../shared/fields/control.js';
import {refusedField} from '../shared/fields/refused.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {frequency} from '../shared/text/format.js';
import {Speaking} from '../shared/vocabulary/speaking.js';
import {END_REASONS, HANDS_ON, MAKE_SAFE, STEPS, errand, stepAfter} from './hunt.js';
import './jw-sweep-file.js';
import {NO_LINE, choices, isExample, lineOf} from './lines.js';
import {refusalWords} from './reading.js';

/**
 * @import {Refused} from '../shared/answers.js'
 * @import {LineDocument} from '../shared/lines/document.js'
 * @import {Hunt} from './hunt.js'
 * @import {SweepState, SweepFile} from './request.js'
 * @import {SpanResult, SweepResult} from './result.js'
 */

/** The fields of the hunt that the span is asked by. */
const FIELDS = ['lowest_hz', 'highest_hz', 'most_points', 'length_m', 'velocity_factor'];

const NO_OCTAVE = 'The range of your analyser must end at twice its beginning or higher.';

/**
 * A hunt for a fault, one step after the other: the one at hand is open, each says why, and has one thing to do.
 *
 * @fires jw-sweep-change - {changes}; jw-sweep-file - {name, file}; jw-sweep-hunt - {hunt}
 */
class JwSweepHunt extends element(
  {
    hunt: value(/** @type {Hunt} */ (of)),
    state: value(/** @type {SweepState} */ (of)),
    /** The lines kept in this browser. */
    document: value(/** @type {LineDocument} */ (of)),
    /** The sweep at hand. */
    file: value(/** @type {SweepFile | undefined} */ (of)),
    /** How to set the analyser. */
    span: value(/** @type {SpanResult | undefined} */ (of)),
    /** Why there is no such setting. */
    spanRefusal: value(/** @type {Refused | undefined} */ (of)),
    /** What the sweep at hand tells, and why it tells nothing. */
    result: value(/** @type {SweepResult | undefined} */ (of)),
    refusal: value(/** @type {Refused | undefined} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    formStyles,
    css`
      :host {
        padding: var(--space-3); background: var(--card); border: 1px solid var(--line); border-radius: var(--round);
      }
      h2 { font-size: var(--type-lead); margin-bottom: var(--space-1); }
      ol.steps { list-style: none; margin: 0; padding: 0; }
      .steps > li {
        border-top: 1px solid var(--line); border-left: 4px solid transparent; padding-left: var(--space-2);
      }
      .steps > li[data-open] { border-left-color: var(--accent); }
      h3 { font-weight: 600; }
      h3 button {
        display: grid; grid-template-columns: 1.8em minmax(0, 1fr); width: 100%;
        padding: var(--space-2) var(--space-half); font-weight: 600; font-size: var(--type-text); align-items: center;
      }
      h3 button[aria-expanded='true'] { font-weight: 700; }
      h3 small { grid-column: 2; font-weight: 400; color: var(--soft); overflow-wrap: anywhere; }
      .body {
        display: grid; gap: var(--space-2); padding: 0 var(--space-half) var(--space-3) 1.8em;
        font-size: var(--type-text); justify-items: start;
      }
      .body[hidden] { display: none; }
      .body > * { max-width: 100%; min-width: 0; }
      .body ol, .body ul { margin: 0; padding-left: 1.2em; }
      .body ul { list-style: disc; }
      .body li + li { margin-top: var(--space-1); }
      .hands {
        padding: var(--space-2) var(--space-3); border-left: 4px solid var(--alarm); background: var(--alarm-wash);
        border-radius: 4px;
      }
      .next { background: var(--ink); border-color: var(--ink); color: var(--paper); font-weight: 600; }
      .buttons { display: flex; flex-wrap: wrap; gap: var(--space-2); }
      .of { width: 100%; }
      .of label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      .fields { width: 100%; }
      dl { display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-4); }
      dt { font-size: var(--type-small); color: var(--soft); }
      dd { font-size: var(--type-lead); font-weight: 700; }
      jw-sweep-file { width: 100%; }
      .places { font-weight: 650; }
      @media (max-width: 600px) { .body { padding-left: var(--space-half); } }
    `,
  ];

  updated(changed) {
    const before = changed.get('hunt');
    // the button that was pressed is gone with its step: who walks by keyboard goes on at the next one
    if (before && before.at !== this.hunt.at && this._pressed) inside(this.renderRoot, `#step-${this.hunt.at}`).focus();
    this._pressed = false;
  }

  render() {
    return html`<h2>Find it step by step</h2>
      <ol class="steps" @jw-change=${this._changed}>${STEPS.map(([id, title], at) => this._step(id, title, at))}</ol>`;
  }

  _step(id, title, at) {
    const isOpen = id === this.hunt.at;
    const done = this._done(id);
    return html`<li ?data-open=${isOpen}>
      <h3><button id="step-${id}" class="head" aria-expanded=${isOpen ? 'true' : 'false'} aria-controls="body-${id}"
        @click=${() => this._go(id)}>
        <span aria-hidden="true">${at + 1}</span><span>${title}</span>${done ? html`<small>${done}</small>` : nothing}
      </button></h3>
      <div class="body" id="body-${id}" ?hidden=${!isOpen}>${isOpen ? this._body(id) : nothing}</div>
    </li>`;
  }

  /** What a step has come to, beside its title. */
  _done(id) {
    const {file, hunt, span, state} = this;
    if (id === 'line') return state.of === NO_LINE ? 'none described' : lineOf(state.of, this.document).name;
    if (id === 'span' && span) return `${frequency(span.low_hz)} to ${frequency(span.high_hz)}, ${span.points} points`;
    if (id === 'end') return this.vocabulary.wordsOf('sweep.end').options?.[state.end];
    if (id === 'sweep') return (hunt.before?.file ?? file)?.name;
    if (id === 'again' && hunt.before) return file?.name;
    return '';
  }

  _body(id) {
    switch (id) {
      case 'line':
        return this._line();
      case 'safe':
        return html`<ol>${MAKE_SAFE.map((one) => html`<li>${one}</li>`)}</ol>${this._next('Off and locked out')}`;
      case 'span':
        return this._span();
      case 'calibrate':
        return this._calibrate();
      case 'end':
        return html`<p class="hands">${HANDS_ON}</p>${this._field('end')}<p>${END_REASONS[this.state.end]}</p>
          ${this._next('The far end is ready')}`;
      case 'sweep':
        return this._sweep();
      case 'place':
        return this._place();
      case 'again':
        return this._again();
      default:
        return this._compare();
    }
  }

  _line() {
    const {state} = this;
    const chosen = (event) => send(this, 'jw-sweep-change', {changes: {of: event.target.value}});
    return html`<p>
        With its parts described, the page knows what a good line of this kind shows, and can name the joint. Without
        them it shows echoes by distance.
      </p>
      <div class="of">
        <label for="of">The line</label>
        <select id="of" @change=${chosen}>
          ${choices(this.document).map(
            ([id, words]) => html`<option value=${id} .selected=${id === state.of}>${words}</option>`,
          )}
        </select>
      </div>
      ${
        state.of === NO_LINE
          ? html`<div class="fields">${this._field('length_m')}${this._field('velocity_factor')}</div>`
          : isExample(state.of)
            ? html`<p class="quiet">An invented line and measurement, to try the steps on.</p>`
            : html`<a href="#view=line">Change the line in the Line view</a>`
      }
      ${this._next('This is the line')}`;
  }

  _span() {
    const {span} = this;
    return html`<div class="fields">
        ${this._field('lowest_hz')}${this._field('highest_hz')}${this._field('most_points')}
      </div>
      ${this._spanTrouble()}
      ${
        span
          ? html`<dl id="span">
                <div><dt>Start</dt><dd>${frequency(span.low_hz)}</dd></div>
                <div><dt>Stop</dt><dd>${frequency(span.high_hz)}</dd></div>
                <div><dt>Points</dt><dd>${span.points}</dd></div>
              </dl>
              <ul>${span.reasons.map((reason) => html`<li>${reason}</li>`)}</ul>`
          : html`<p class="quiet">${this.spanRefusal ? '' : 'Calculating…'}</p>`
      }
      ${this._next('The analyser is set')}`;
  }

  /** A refusal that no field of the step can show: of the line, or of two fields together. */
  _spanTrouble() {
    const refusal = this.spanRefusal;
    if (!refusal || this._refusalOf(refusedField(refusal))) return nothing;
    const words = refusedField(refusal) === 'highest_hz' ? NO_OCTAVE : refusal.message;
    return html`<p class="error" role="alert">${words}</p>`;
  }

  _calibrate() {
    const {span} = this;
    const over = span ? `, over ${frequency(span.low_hz)} to ${frequency(span.high_hz)}` : '';
    return html`<ol>
        <li>Let the analyser warm up for as long as its maker says.</li>
        <li>Calibrate open, short and load${over}, at the very connector that the line goes on, adapter included.</li>
        <li>Check: with the short still on, all comes back at every frequency; with the load on, next to nothing.</li>
      </ol>
      <p>Why: what calibration leaves over looks like a bad joint next to the analyser.</p>
      ${this._next('Calibrated')}`;
  }

  _sweep() {
    const {file, hunt} = this;
    const held = hunt.before?.file ?? file;
    return html`<p>Screw the line on, leave it alone while it sweeps, and save a one-port Touchstone file (.s1p).</p>
      <jw-sweep-file name="touchstone" label="The sweep" held=${held?.name ?? ''}
        error=${hunt.before ? '' : this._problem()}></jw-sweep-file>
      ${this._verdict()} ${this.result ? this._next('Where do I go?') : nothing}`;
  }

  _place() {
    if (!this.result) return this._missing();
    const {places, work, why} = errand(this.hunt.before?.result ?? this.result);
    return html`<p>${why}</p>
      ${places.length > 0 ? html`<ul class="places">${places.map((place) => html`<li>${place}</li>`)}</ul>` : nothing}
      ${
        work.length > 0
          ? html`<p class="hands">${HANDS_ON}</p>
              <ol>${work.map((one) => html`<li>${one}</li>`)}</ol>`
          : nothing
      }
      ${this._next(places.length > 0 ? 'Done there' : 'Sweep again')}`;
  }

  _again() {
    if (!this.result && !this.hunt.before) return this._missing();
    const {after} = lineOf(this.state.of, this.document);
    const invented = () => {
      this._pressed = true;
      send(this, 'jw-sweep-file', {name: 'again', file: after});
    };
    return html`<p>
        Same end, same span, same calibration: then what differs is what you did. Leave the line alone while it sweeps.
      </p>
      <jw-sweep-file name="again" label="The sweep after it" held=${this.hunt.before ? (this.file?.name ?? '') : ''}
        error=${this.hunt.before ? this._problem() : ''}></jw-sweep-file>
      ${after ? html`<button @click=${invented}>Use the example sweep</button>` : nothing}`;
  }

  _compare() {
    const {before} = this.hunt;
    if (!before) return this._missing();
    const round = () => this._send({at: 'place'});
    const over = () => this._send({at: STEPS[0][0]});
    return html`<p>Both sweeps over distance, and what changed, stand in the answer.</p>
      ${this._verdict()}
      <div class="buttons">
        <button class="next" @click=${round}>Go on from this sweep</button>
        <button @click=${over}>Begin again</button>
      </div>`;
  }

  _missing() {
    return html`<p>First give the sweep.</p>
      <button class="next" @click=${() => this._go('sweep')}>To the sweep</button>`;
  }

  _verdict() {
    return html`<p role="status"><b>${this.result?.verdict ?? ''}</b></p>`;
  }

  /** Why the file at hand can't be used; empty where it can. */
  _problem() {
    const {file, refusal} = this;
    return refusal && file ? refusalWords(refusal, file.name) : '';
  }

  _next(words) {
    return html`<button class="next" @click=${() => this._go(stepAfter(this.hunt.at))}>${words}</button>`;
  }

  _field(name) {
    return control(this.vocabulary, `sweep.${name}`, this.state[name], this._refusalOf(name)?.message);
  }

  /** The refusal that a field of this name can show by itself. */
  _refusalOf(name) {
    const refusal = this.spanRefusal;
    const isOwn = FIELDS.includes(name) && refusedField(refusal) === name;
    return isOwn && !refusal?.allowed.includes('where its range begins') ? refusal : undefined;
  }

  _changed(event) {
    event.stopPropagation();
    if (!event.detail.live) send(this, 'jw-sweep-change', {changes: changesOf(event)});
  }

  _go(at) {
    this._send({...this.hunt, at});
  }

  /** @param {Hunt} hunt */
  _send(hunt) {
    this._pressed = true;
    send(this, 'jw-sweep-hunt', {hunt});
  }
}

customElements.define('jw-sweep-hunt', JwSweepHunt);
