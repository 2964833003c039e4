import {css, html} from 'lit';
import {Field} from '../shared/fields/field.js';
import {today} from '../shared/text/days.js';

/** A day, or none. */
class JwFitoutDate extends Field {
  static styles = [...Field.styles, css`div { display: flex; gap: var(--space-2); } button { flex: none; }`];

  render() {
    return html`<label for=${this.name}>${this.label}</label>
      <div>
        <input id=${this.name} type="date" .value=${this.value} aria-invalid=${this.invalid} aria-describedby="under"
          @change=${(event) => this.change(event.target.value)}>
        <button @click=${() => this.change(today())}>Today</button>
      </div>
      ${this.under('left out, none is printed')}`;
  }
}

customElements.define('jw-fitout-date', JwFitoutDate);
