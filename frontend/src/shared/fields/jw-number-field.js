import {css, html, nothing} from 'lit';
import {element, of, state} from '../elements/element.js';
import {Field} from './field.js';

/** Positions of a slider, so that every step of the number can be met. */
const POSITIONS = 1000;

/** A number with its unit and range; some have a slider that speaks while it is dragged. */
class JwNumberField extends element({_unread: state(/** @type {boolean} */ (of))}, Field) {
  static styles = [
    ...Field.styles,
    css`
      .row { display: flex; gap: 10px; align-items: center; }
      input[type='range'] { flex: 1 1 70px; min-width: 60px; height: var(--target); margin: 0; }
      .row input[type='number'] { flex: 0 1 5.2rem; min-width: 4rem; padding-right: 2px; }
      .row input[type='number']:only-child { flex: 1 1 auto; }
    `,
  ];

  constructor() {
    super();
    this._unread = false;
  }

  get problem() {
    return this._unread ? `Enter a number from ${this.vocabulary.rangeOf(this.name)}.` : super.problem;
  }

  render() {
    const number = this.value === null ? '' : this.vocabulary.shown(this.name, this.value);
    return html`<label for=${this.name}>${this.label}</label>
      <div class="row">
        ${this.vocabulary.wordsOf(this.name).slider ? this._slider() : nothing}
        <input id=${this.name} type="number" inputmode="decimal" step="any" .value=${String(number)}
          aria-invalid=${this.invalid} aria-describedby="under"
          placeholder=${this.field.nullable ? this.vocabulary.emptyOf(this.name) : ''} @change=${this._typed}>
      </div>
      ${this.under(this.vocabulary.rangeOf(this.name))}`;
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

  _position() {
    const {min, max} = this._range;
    const value = Math.min(Math.max(this.value, min), max);
    const share = this._logarithmic ? Math.log(value / min) / Math.log(max / min) : (value - min) / (max - min);
    return Math.round(share * POSITIONS);
  }

  _slid(event, live) {
    const {min, max} = this._range;
    const {step = 1} = this.vocabulary.wordsOf(this.name);
    const share = Number(event.target.value) / POSITIONS;
    const raw = this._logarithmic ? min * (max / min) ** share : min + (max - min) * share;
    this._unread = false;
    this.change(Number((Math.round(raw / step) * step).toPrecision(6)), live);
  }

  _typed(event) {
    const {value, validity} = event.target;
    const empty = value === '' && !validity.badInput;
    this._unread = value === '' && !(empty && this.field.nullable);
    if (this._unread) return;
    this.change(empty ? null : Number((Number(value) * this.vocabulary.factorOf(this.name)).toPrecision(12)));
  }
}

customElements.define('jw-number-field', JwNumberField);
