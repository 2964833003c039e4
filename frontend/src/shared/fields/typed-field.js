import {html, nothing} from 'lit';
import {element, of, state} from '../elements/element.js';
import {inside} from '../elements/inside.js';
import {question, refusal} from '../text/number-typed.js';
import {Field} from './field.js';
import {readingChoices, readingStyles} from './readings.js';

/** @import {Reading} from '../text/number-typed.js' */

/** A field whose text is read as numbers: it asks which are meant, says what can't be read and what was converted. */
export class TypedField extends element(
  {
    /** Those asked about. */
    _readings: state(/** @type {Reading[]} */ (of)),
    _refused: state(/** @type {string} */ (of)),
    _converted: state(/** @type {string} */ (of)),
  },
  Field,
) {
  static styles = [...Field.styles, readingStyles];

  constructor() {
    super();
    this._taken = '';
    this.forget();
  }

  /** What was said of a text is over once the value is another one, as after an undo. */
  willUpdate(changed) {
    super.willUpdate(changed);
    if (!changed.has('value')) return;
    const [before, now] = [changed.get('value'), this.value].map((value) => JSON.stringify(value));
    if (before !== now && now !== this._taken) this.forget();
  }

  get problem() {
    return this._refused || super.problem;
  }

  get unit() {
    return this.vocabulary.unitOf(this.name);
  }

  /**
   * A value as the control shows it.
   *
   * @param {any} _value
   */
  textOf(_value) {
    return '';
  }

  /**
   * @param {string} text
   * @param {Reading[]} readings - what it may mean
   * @param {string} range - what is allowed, in words
   */
  read(text, readings, range) {
    this.forget();
    if (readings.length === 1) this._choose(readings[0]);
    else if (readings.length === 0) this._refused = refusal(this.label, text, range, this.unit);
    else {
      this._readings = readings;
      this._refused = question(this.label, text, readings);
    }
  }

  /** The text follows at once, as the value may be the one it was before. */
  take(value) {
    this._taken = JSON.stringify(value);
    this.input.value = this.textOf(value);
    this.change(value);
  }

  forget() {
    this._readings = [];
    this._refused = '';
    this._converted = '';
  }

  /** @param {string} hint */
  under(hint) {
    return html`${super.under(this._converted ? `${this._converted}.` : hint)}
      ${this._readings.length > 0 ? readingChoices(this.label, this._readings, this._chosen) : nothing}`;
  }

  /** From the number shown to the number sent. */
  sent(number) {
    return this.vocabulary.sent(this.name, number);
  }

  get input() {
    return /** @type {HTMLInputElement} */ (inside(this.renderRoot, 'input[type="text"]'));
  }

  _chosen = (reading) => {
    // a tap is not to open the keyboard of a phone, but who came by keys goes on from the field
    if (this.shadowRoot?.activeElement?.matches(':focus-visible')) this.input.focus();
    this.forget();
    this._choose(reading);
  };

  /** @param {Reading} reading */
  _choose({value, converted}) {
    this._converted = converted;
    this.take(Array.isArray(value) ? this.gathered(value.map((one) => this.sent(one))) : this.sent(value));
  }

  /** Several numbers as they are sent. */
  gathered(numbers) {
    return numbers;
  }
}
