import {html} from 'lit';
import {element} from '../elements/element.js';
import {readingsOfList, unmistakable} from '../text/number-typed.js';
import {TypedField} from './typed-field.js';

/** Numbers in a row, such as power levels: separated by spaces or commas, sorted when read. */
class JwListField extends element(
  {
    /** A word for 0. */
    zero: {type: String},
  },
  TypedField,
) {
  constructor() {
    super();
    this.zero = '';
  }

  render() {
    return html`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="text" autocomplete="off" spellcheck="false" .value=${this.textOf(this.value)}
        aria-invalid=${this.invalid} aria-describedby="under" @change=${this._typed}>
      ${this.under(this._allowed)}`;
  }

  get _allowed() {
    const zero = this.zero ? `; “${this.zero}” is 0` : '';
    return `${this.vocabulary.rangeOf(this.name)} each, spaces between${zero}`;
  }

  textOf(numbers) {
    const inWords = (one) => (one === 0 && this.zero ? this.zero : unmistakable(this.vocabulary.shown(this.name, one)));
    return numbers.map(inWords).join('  ');
  }

  gathered(numbers) {
    return [...new Set(numbers)].sort((a, b) => a - b);
  }

  _typed({target: {value: text}}) {
    const inFigures = text.split(/\b/).map((word) => (word === this.zero ? '0' : word));
    this.read(text, readingsOfList(inFigures.join(''), this.unit), this._allowed);
  }
}

customElements.define('jw-list-field', JwListField);
