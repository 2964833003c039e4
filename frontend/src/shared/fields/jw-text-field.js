import {html} from 'lit';
import {Field} from './field.js';

/** A few words of the reader's own. */
class JwTextField extends Field {
  render() {
    return html`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="text" autocomplete="off" maxlength=${this.field.longest} .value=${this.value}
        aria-invalid=${this.invalid} aria-describedby="under"
        @change=${(event) => this.change(event.target.value.trim())}>
      ${this.under('')}`;
  }
}

customElements.define('jw-text-field', JwTextField);
