import {ContextConsumer} from '@lit/context';
import {html} from 'lit';
import {element} from '../elements/element.js';
import {stationContext} from '../station/at-station.js';
import {Field} from './field.js';

/** One of a few, as a select; the empty one means that it is left out. Of cables those in use are offered first. */
class JwChoiceField extends element({hint: {type: String}}, Field) {
  #station = new ContextConsumer(this, {context: stationContext});

  constructor() {
    super();
    this.hint = '';
  }

  render() {
    return html`<label for=${this.name}>${this.label}</label>
      <select id=${this.name} aria-invalid=${this.invalid} aria-describedby="under" @change=${this._chosen}>
        ${this._options.map(
          ([id, words]) => html`<option value=${id} .selected=${id === String(this.value ?? '')}>${words}</option>`,
        )}
      </select>
      ${this.under(this.hint)}`;
  }

  /** A value that no option has, as out of a link, stands among them: else another would seem chosen. */
  get _options() {
    const options = this._inOrder(this.vocabulary.optionsOf(this.name));
    const value = String(this.value ?? '');
    return options.some(([id]) => id === value)
      ? options
      : [...options, [value, value || this.vocabulary.emptyOf(this.name)]];
  }

  _inOrder(options) {
    const inUse = this.name.split('.').at(-1) === 'cable' ? (this.#station.value?.present.cables ?? []) : [];
    const rankOf = ([id]) => (id === '' ? 0 : inUse.includes(id) ? 1 : 2);
    return inUse.length > 0 ? options.toSorted((one, other) => rankOf(one) - rankOf(other)) : options;
  }

  _chosen(event) {
    const {value} = event.target;
    if (value === '') this.change(null);
    else this.change(this.field.type === 'number' ? Number(value) : value);
  }
}

customElements.define('jw-choice-field', JwChoiceField);
