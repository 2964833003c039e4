import {html} from 'lit';
import {element, of, state} from '../elements/element.js';
import {Field} from './field.js';

/** Numbers in a row, such as power levels: separated by spaces or commas, sorted when read. */
class JwListField extends element(
  {
    _unread: state(/** @type {string} */ (of)),
    /** A word for 0. */
    zero: {type: String},
  },
  Field,
) {
  constructor() {
    super();
    this._unread = '';
    this.zero = '';
  }

  get problem() {
    return this._unread ? `“${this._unread}” is not a number.` : super.problem;
  }

  render() {
    const numbers = this.value.map((item) =>
      item === 0 && this.zero ? this.zero : String(this.vocabulary.shown(this.name, item)),
    );
    const zero = this.zero ? `; “${this.zero}” is 0` : '';
    return html`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="text" autocomplete="off" spellcheck="false" .value=${numbers.join('  ')}
        aria-invalid=${this.invalid} aria-describedby="under" @change=${this._typed}>
      ${this.under(`${this.vocabulary.rangeOf(this.name)} each, spaces between${zero}`)}`;
  }

  _typed(event) {
    const words = event.target.value.split(/[\s,;]+/).filter(Boolean);
    const numbers = words.map((word) => (word === this.zero ? 0 : Number(word)));
    const wrong = numbers.findIndex(Number.isNaN);
    this._unread = wrong === -1 ? '' : words[wrong];
    if (wrong !== -1) return;
    const sent = numbers.map((number) => Number((number * this.vocabulary.factorOf(this.name)).toPrecision(12)));
    this.change([...new Set(sent)].sort((a, b) => a - b));
  }
}

customElements.define('jw-list-field', JwListField);
