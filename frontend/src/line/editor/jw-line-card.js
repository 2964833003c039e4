import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {inside} from '../../shared/elements/inside.js';
import {send} from '../../shared/elements/send.js';
import {changesOf, control} from '../../shared/fields/control.js';
import {STEP_RULES, stepOf} from '../../shared/margins/scale.js';
import {groupOf} from '../../shared/lines/kinds.js';
import {base} from '../../shared/styles/base.js';
import {decibels, digits} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';

/**
 * @import {Element} from '../../shared/lines/document.js'
 * @import {Placed} from '../placed.js'
 * @import {ElementReading} from '../reading.js'
 */

const STANDS = ['power_limit_w', 'voltage_limit_v'];
const PART = ['what', 'name', 'loss_db', 'vswr', ...STANDS];
const FIELDS = {
  cable: ['cable', 'length_m', 'name'],
  wires: ['line', 'length_m', 'name'],
  joint: ['family', 'adapter_to', 'condition', 'added_resistance_ohm', 'exposure', 'name'],
  tuner: [
    'network',
    'coil_q',
    'capacitor_q',
    'largest_coil_h',
    'largest_capacitor_f',
    'current_limit_a',
    'voltage_limit_v',
    'name',
  ],
  transformer: ['ratio', 'loss_db', 'choking_ohm', ...STANDS, 'name'],
  section: ['impedance_ohm', 'length_m', 'velocity_factor', 'loss_db', 'voltage_limit_v', 'name'],
  part: PART,
  meter: [...PART, 'directivity_db'],
  measured: ['name', 'touchstone', ...STANDS],
};

/**
 * One element of a line: its numbers in a row, its fields under it when open.
 *
 * @fires jw-line-edit, jw-line-toggle, jw-line-open, jw-line-grab
 */
export class JwLineCard extends element(
  {
    element: value(/** @type {Element} */ (of)),
    /** Its place. */
    at: {type: Number},
    /** How many there are. */
    count: {type: Number},
    name: {type: String},
    /** Undefined while it is awaited. */
    reading: value(/** @type {ElementReading | undefined} */ (of)),
    open: {type: Boolean},
    /** Marks the field it names. */
    refused: value(/** @type {Placed | undefined} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    css`
      article { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      :host([weakest]) article { border: 2px solid var(--ink); }
      .row { display: flex; }
      #handle {
        padding: 0; border: 0; background: none; color: var(--soft); cursor: grab; touch-action: none;
        font-size: var(--type-lead);
      }
      #toggle {
        flex: 1; min-width: 0; display: grid; grid-template-columns: 1.6em minmax(0, 1fr) auto 3.6em;
        gap: 0 var(--space-2);
        align-items: center;
        min-height: 52px; padding: var(--space-1) var(--space-3) var(--space-1) 0;
      }
      .at { color: var(--soft); text-align: right; font-size: var(--type-small); }
      .name { display: block; font-weight: 600; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
      .sub { display: block; color: var(--soft); font-size: var(--type-fine); line-height: 1.2; }
      .loss { font-size: var(--type-small); color: var(--soft); white-space: nowrap; }
      .chip { padding: var(--space-half) var(--space-1); }
      .chip.none {
        background: var(--refused); color: var(--refused-ink); font-weight: 500; font-size: var(--type-small);
      }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
        padding: var(--space-2) var(--space-3) var(--space-half); background: var(--sunk);
      }
      .acts {
        display: flex; flex-wrap: wrap; gap: var(--space-2); padding: var(--space-1) var(--space-3) var(--space-3);
        background: var(--sunk);
        border-radius: 0 0 var(--round) var(--round);
      }
      .marks { padding: var(--space-2) var(--space-3); font-size: var(--type-small); }
      .whole { padding: 0 var(--space-3) var(--space-2); }
      @media print {
        #handle, .fields, .acts { display: none; }
        #toggle { min-height: 0; padding: var(--space-half) var(--space-1); }
      }
    `,
  ];

  updated() {
    this.toggleAttribute('weakest', this.reading?.weakest ?? false);
  }

  render() {
    return html`<article aria-label="Element ${this.at + 1}, ${this.name}">
      <div class="row">
        <button id="handle" class="head" aria-label="Move ${this.name}: drag, or Alt with the up and down arrows"
          @pointerdown=${this._grab}>⠿</button>
        <button id="toggle" class="head" aria-expanded=${this.open} aria-controls="fields"
          @click=${() => send(this, 'jw-line-toggle', {at: this.at})}>
          <span class="at">${this.at + 1}</span>
          <span><span class="name">${this.name}</span><span class="sub">${this._sub()}</span></span>
          <span class="loss">${this.reading ? lossWords(this.reading.loss) : ''}</span>
          ${this._chip()}
        </button>
      </div>
      <div id="fields">${this.open ? this._form() : nothing}</div>
    </article>`;
  }

  /** The control that has the focus, by its id, so that it can have it again elsewhere. */
  get focused() {
    return this.shadowRoot?.activeElement?.id ?? '';
  }

  /** @param {string} id - of a control; the whole row has the focus where there is none */
  focusOn(id) {
    (this.shadowRoot?.getElementById(id) ?? inside(this.renderRoot, '#toggle')).focus();
  }

  _sub() {
    const {reading} = this;
    if (this.refused) return html`<span class="error">needs a correction</span>`;
    if (!reading) return '…';
    if (reading.refusal) return 'refused here';
    const {kind, ratio} = this.element;
    const first = reading.limited ? `limited by ${reading.limited}` : 'no margin';
    return [
      kind === 'transformer' ? `${digits(ratio ?? 1)}:1` : '',
      first,
      reading.weakest ? 'weakest' : '',
      reading.undecided ? 'uncertain' : '',
      reading.brief,
      reading.marks.length > 0 ? 'see note' : '',
    ]
      .filter(Boolean)
      .join(' · ');
  }

  _chip() {
    const {reading} = this;
    if (!reading) return html`<span class="chip none">…</span>`;
    if (reading.refusal) return html`<span class="chip none">refused</span>`;
    if (reading.margin === null) return html`<span class="chip none">–</span>`;
    return html`<span class="chip" data-step=${stepOf(reading.margin)}>${decibels(reading.margin)}</span>`;
  }

  _form() {
    const {reading, refused} = this;
    const group = groupOf(this.element);
    const names = FIELDS[group] ?? FIELDS.part;
    const error = (field) => (refused && field === refused.field ? refused.message : '');
    const field = (own) => {
      const name = `${group}.${own}`;
      return control(this.vocabulary, name, this.vocabulary.valueOf(this.element, name), error(own));
    };
    const elsewhere = refused && !names.includes(refused.field);
    const notes = reading ? [reading.refusal, ...reading.says, ...reading.marks].filter(Boolean) : [];
    return html`${notes.map((note) => html`<p class="marks">${note}</p>`)}
      <div class="fields" @jw-change=${this._changed}>${names.map(field)}</div>
      ${elsewhere ? html`<p class="error whole" role="alert">${refused.message}</p>` : nothing}
      <div class="acts">
        <button id="up" ?disabled=${this.at === 0} @click=${() => this._edit('move', {to: this.at - 1})}>Up</button>
        <button id="down" ?disabled=${this.at === this.count - 1}
          @click=${() => this._edit('move', {to: this.at + 1})}>Down</button>
        <button id="duplicate" @click=${() => this._edit('duplicate')}>Duplicate</button>
        <button id="remove" ?disabled=${this.count === 1} @click=${() => this._edit('remove')}>Remove</button>
        <button id="why" ?disabled=${!reading}
          @click=${() => send(this, 'jw-line-open', {open: String(this.at)})}>Derivation</button>
      </div>`;
  }

  _changed(event) {
    event.stopPropagation();
    if (!event.detail.live) this._edit('set', {changes: changesOf(event)});
  }

  _grab(event) {
    send(this, 'jw-line-grab', {at: this.at, pointer: event});
  }

  _edit(kind, more = {}) {
    send(this, 'jw-line-edit', {kind, at: this.at, ...more});
  }
}

customElements.define('jw-line-card', JwLineCard);
