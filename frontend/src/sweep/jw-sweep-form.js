import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {changesOf, control} from '../shared/fields/control.js';
import {refusedField} from '../shared/fields/refused.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {Speaking} from '../shared/vocabulary/speaking.js';
import './jw-sweep-file.js';
import {NO_LINE, choices, isExample} from './lines.js';
import {refusalWords} from './reading.js';

/**
 * @import {Refused} from '../shared/answers.js'
 * @import {LineDocument} from '../shared/lines/document.js'
 * @import {SweepState, SweepFile} from './request.js'
 */

/**
 * What was measured, on which line, and with what at its end.
 *
 * @fires jw-sweep-change - {changes}; jw-sweep-file - {name, file}; jw-sweep-forget - no earlier one
 */
class JwSweepForm extends element(
  {
    state: value(/** @type {SweepState} */ (of)),
    /** The lines kept in this browser. */
    document: value(/** @type {LineDocument} */ (of)),
    /** The sweep at hand, and an earlier one. */
    file: value(/** @type {SweepFile | undefined} */ (of)),
    earlier: value(/** @type {SweepFile | undefined} */ (of)),
    /** Marks the field it names. */
    refusal: value(/** @type {Refused | undefined} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    formStyles,
    css`
      :host {
        display: grid; gap: var(--space-2); padding: var(--space-3); background: var(--card);
        border: 1px solid var(--line);
        border-radius: var(--round); align-content: start;
      }
      h2 { font-size: var(--type-lead); }
      .of label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      p a { display: inline-grid; min-height: var(--target); align-items: center; }
      p { font-size: var(--type-text); }
    `,
  ];

  render() {
    const {state, file, earlier} = this;
    const ofLine = this._refusalOf('elements') ?? this._refusalOf('load');
    return html`<h2>The sweep</h2>
      <jw-sweep-file name="touchstone" label="Sweep from your analyser" held=${file?.name ?? ''}
        error=${this._fileProblem('touchstone', file)}></jw-sweep-file>
      <div class="of">
        <label for="of">Line it was taken on</label>
        <select id="of" @change=${(event) => send(this, 'jw-sweep-change', {changes: {of: event.target.value}})}>
          ${choices(this.document).map(
            ([id, words]) => html`<option value=${id} .selected=${id === state.of}>${words}</option>`,
          )}
        </select>
      </div>
      ${underTheLine(state.of)}
      ${ofLine ? html`<p class="error" role="alert">${ofLine.message}</p>` : nothing}
      <div class="fields" @jw-change=${this._changed}>
        ${
          state.of === NO_LINE
            ? this._field('velocity_factor')
            : html`${this._field('end')}${this._field('length_tolerance')}`
        }
      </div>
      <details ?open=${Boolean(earlier) || refusedField(this.refusal) === 'earlier'}>
        <summary>Earlier sweep and window <small>${earlier?.name ?? 'none'}</small></summary>
        <jw-sweep-file name="earlier" label="An earlier sweep to compare with" held=${earlier?.name ?? ''}
          error=${this._fileProblem('earlier', earlier)}></jw-sweep-file>
        ${earlier ? html`<button @click=${() => send(this, 'jw-sweep-forget')}>No earlier sweep</button>` : nothing}
        <div class="fields" @jw-change=${this._changed}>${this._field('window_shape')}</div>
      </details>`;
  }

  /** The refusal that names this field. */
  _refusalOf(name) {
    return refusedField(this.refusal) === name ? this.refusal : undefined;
  }

  /** Why a file can't be used; empty where it can. */
  _fileProblem(name, file) {
    const refusal = this._refusalOf(name);
    return refusal && file ? refusalWords(refusal, file.name) : '';
  }

  _field(name) {
    return control(this.vocabulary, `sweep.${name}`, this.state[name], this._refusalOf(name)?.message);
  }

  _changed(event) {
    event.stopPropagation();
    if (!event.detail.live) send(this, 'jw-sweep-change', {changes: changesOf(event)});
  }
}

const underTheLine = (id) => {
  if (isExample(id)) return html`<p class="quiet">An invented line and measurement, to show what comes out.</p>`;
  if (id === NO_LINE) return html`<p class="quiet">With the line described, the page can name the joint.</p>`;
  return html`<p><a href="#view=line">Change the line in the Line view</a></p>`;
};

customElements.define('jw-sweep-form', JwSweepForm);
