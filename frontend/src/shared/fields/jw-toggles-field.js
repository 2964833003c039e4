import {css, html, nothing} from 'lit';
import {element, of, value} from '../elements/element.js';
import {Field} from './field.js';

/**
 * @typedef {{id: string, name: string, hidden?: boolean}} Choice - a hidden one keeps its state
 * @typedef {{words: string, value: ?string[]}} ReadyChoice - a ready choice; null stands for no choice made
 */

/** Some of a list, as buttons that stay down, and buttons for whole sets. */
class JwTogglesField extends element(
  {
    /** In the order they are sent. */
    choices: value(/** @type {Choice[]} */ (of)),
    sets: value(/** @type {ReadyChoice[]} */ (of)),
    /** What follows the label. */
    of: {type: String},
    hint: {type: String},
  },
  Field,
) {
  static styles = [
    ...Field.styles,
    css`
      fieldset { margin: 0; padding: 0; border: 0; min-width: 0; }
      div { display: flex; flex-wrap: wrap; gap: var(--space-1); }
      .set { border-style: dashed; }
    `,
  ];

  constructor() {
    super();
    this.of = '';
    this.hint = '';
  }

  render() {
    return html`<fieldset id=${this.name} aria-describedby="under">
      <legend>${this.label}${this.of}</legend>
      <div>
        ${this.choices
          .filter(({hidden}) => !hidden)
          .map(
            ({id, name}) =>
              html`<button class="choice" value=${id} aria-pressed=${this._chosen.includes(id)}
                @click=${this._toggle}>${name}</button>`,
          )}
        ${this.sets.map(
          (set) => html`<button class="choice set" aria-pressed=${set.value === null ? this.value === null : nothing}
            @click=${() => this.change(set.value)}>${set.words}</button>`,
        )}
      </div>
      ${this.under(this.hint)}
    </fieldset>`;
  }

  get _chosen() {
    return this.value ?? [];
  }

  /** What is chosen keeps the order of the choices; the last one can be put away where that is a set, or undoes it. */
  _toggle(event) {
    const id = event.currentTarget.value;
    const chosen = new Set(this._chosen);
    if (!chosen.delete(id)) chosen.add(id);
    if (chosen.size > 0) this.change(this.choices.map((one) => one.id).filter((one) => chosen.has(one)));
    else if (this.sets.some((set) => set.value === null)) this.change(null);
    else if (this.sets.some((set) => set.value?.length === 0)) this.change([]);
  }
}

customElements.define('jw-toggles-field', JwTogglesField);
