import {html} from 'lit';
import {optionsOf} from '../state/words.js';
import {Field} from './field.js';

/** One of a few, as a select. */
class JwChoiceField extends Field {
  static properties = {hint: {type: String}};

  constructor() {
    super();
    this.hint = '';
  }

  render() {
    return html`<label for=${this.name}>${this.label}</label>
      <select id=${this.name} aria-invalid=${this.invalid} aria-describedby="under" @change=${this._chosen}>
        ${optionsOf(this.name).map(
          ([id, words]) => html`<option value=${id} .selected=${id === String(this.value)}>${words}</option>`,
        )}
      </select>
      ${this.under(this.hint)}`;
  }

  _chosen(event) {
    const {value} = event.target;
    this.change(this.field.type === 'number' ? Number(value) : value);
  }
}

customElements.define('jw-choice-field', JwChoiceField);
