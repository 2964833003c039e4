import {css, html} from 'lit';
import {Field} from './field.js';

/** The text of a file, picked or dropped on the field. */
class JwFileField extends Field {
  static styles = [
    ...Field.styles,
    css`
      input {
        width: 100%; min-height: var(--target); padding: var(--space-2); border: 1px dashed var(--edge);
        border-radius: var(--round); background: var(--card); font-size: var(--type-small);
      }
      ::file-selector-button {
        font: inherit; padding: var(--space-1) var(--space-3); color: var(--ink); background: var(--sunk);
        border: 1px solid var(--edge); border-radius: 6px;
      }
    `,
  ];

  render() {
    return html`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="file" accept=".s1p,.s2p,.ts,.txt" aria-invalid=${this.invalid}
        aria-describedby="under" @change=${this._picked}>
      ${this.under(this.value ? this._held() : 'pick a file or drop it here')}`;
  }

  _held() {
    const rows = this.value.split('\n').filter((row) => /^\s*[\d.+-]/.test(row)).length;
    return `${rows} rows of numbers are in the line; another file takes their place`;
  }

  async _picked(event) {
    const [file] = event.target.files;
    if (file) this.change(await file.text());
  }
}

customElements.define('jw-file-field', JwFileField);
