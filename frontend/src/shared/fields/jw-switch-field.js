import {css, html} from 'lit';
import {Field} from './field.js';

/** Yes or no. */
class JwSwitchField extends Field {
  static styles = [
    ...Field.styles,
    css`
      label { display: flex; gap: var(--space-3); align-items: center; min-height: var(--target); margin: 1.2rem 0 0; }
      input { width: 22px; height: 22px; margin: 0; }
    `,
  ];

  render() {
    return html`<label>
        <input id=${this.name} type="checkbox" .checked=${this.value} aria-invalid=${this.invalid}
          @change=${(event) => this.change(event.target.checked)}>
        ${this.label}
      </label>
      ${this.under('')}`;
  }
}

customElements.define('jw-switch-field', JwSwitchField);
