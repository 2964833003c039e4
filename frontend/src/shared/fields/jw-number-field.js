import {css, html, nothing} from 'lit';
import {readingsOf} from '../text/number-typed.js';
import {TypedField} from './typed-field.js';

/** Positions of a slider, so that every step of the number can be met. */
const POSITIONS = 1000;

const STEPS = {ArrowUp: 1, ArrowDown: -1};

const isEmpty = (value) => value === null || value === '';

/** A number with its unit and range; some have a slider that speaks while it is dragged. */
class JwNumberField extends TypedField {
  static styles = [
    ...TypedField.styles,
    css`
      .row { display: flex; gap: var(--space-3); align-items: center; }
      input[type='range'] { flex: 1 1 70px; min-width: 60px; height: var(--target); margin: 0; }
      .row input[type='text'] { flex: 0 1 5.2rem; min-width: 4rem; padding-right: var(--space-half); }
      .row input[type='text']:only-child { flex: 1 1 auto; }
    `,
  ];

  render() {
    const {min, max} = this._range;
    const edge = (value) => this.vocabulary.shown(this.name, value);
    const isKnown = !isEmpty(this.value) && !this.problem;
    // the number pad of some phones has no minus
    return html`<label for=${this.name}>${this.label}</label>
      <div class="row">
        ${this.vocabulary.wordsOf(this.name).slider ? this._slider() : nothing}
        <input id=${this.name} type="text" inputmode=${min < 0 ? 'text' : 'decimal'} autocomplete="off"
          spellcheck="false" role="spinbutton" aria-valuemin=${edge(min)} aria-valuemax=${edge(max)}
          aria-valuenow=${isKnown ? edge(this.value) : nothing} .value=${this.textOf(this.value)}
          aria-invalid=${this.invalid} aria-describedby="under"
          placeholder=${this.field.nullable ? this.vocabulary.emptyOf(this.name) : ''} @change=${this._typed}
          @keydown=${this._stepped}>
      </div>
      ${this.under(this.vocabulary.rangeOf(this.name))}`;
  }

  textOf(value) {
    return isEmpty(value) ? '' : String(this.vocabulary.shown(this.name, value));
  }

  _slider() {
    return html`<input type="range" min="0" max=${POSITIONS} step="1" .value=${String(this._position())}
      aria-label="${this.label}, slider" aria-valuetext=${String(this.vocabulary.shown(this.name, this.value))}
      @input=${(event) => this._slid(event, true)} @change=${(event) => this._slid(event, false)}>`;
  }

  get _logarithmic() {
    return this.vocabulary.wordsOf(this.name).slider === 'logarithmic';
  }

  get _range() {
    return /** @type {import('../vocabulary/start-data.js').Range} */ (this.field);
  }

  get _step() {
    return this.vocabulary.stepOf(this.name);
  }

  _position() {
    const {min, max} = this._range;
    const value = Math.min(Math.max(this.value, min), max);
    const share = this._logarithmic ? Math.log(value / min) / Math.log(max / min) : (value - min) / (max - min);
    return Math.round(share * POSITIONS);
  }

  _slid(event, live) {
    const {min, max} = this._range;
    const share = Number(event.target.value) / POSITIONS;
    const raw = this._logarithmic ? min * (max / min) ** share : min + (max - min) * share;
    this.forget();
    this.change(this.sent(Math.round(this.vocabulary.shown(this.name, raw) / this._step) * this._step), live);
  }

  _typed({target: {value: text}}) {
    // what the field itself wrote is no question
    if (text === this.textOf(this.value)) this.forget();
    else if (text.trim() === '' && this.field.nullable) {
      this.forget();
      this.take(null);
    } else this.read(text, readingsOf(text, this.unit), this.vocabulary.rangeOf(this.name));
  }

  /** What stands in the field, as sent; undefined where it can't be read in one way. */
  get _standing() {
    const text = this.input.value;
    if (text.trim() === '') return 0;
    if (text === this.textOf(this.value)) return this.value;
    const readings = readingsOf(text, this.unit);
    return readings.length === 1 ? this.sent(readings[0].value) : undefined;
  }

  _stepped(event) {
    const {key, altKey, ctrlKey, metaKey, shiftKey} = event;
    if (!(key in STEPS) || altKey || ctrlKey || metaKey || shiftKey) return;
    event.preventDefault();
    const from = this._standing;
    if (from === undefined) return;
    const {min, max} = this._range;
    const next = this.sent(this.vocabulary.shown(this.name, from) + STEPS[key] * this._step);
    this.forget();
    this.take(Math.min(Math.max(next, min), max));
  }
}

customElements.define('jw-number-field', JwNumberField);
