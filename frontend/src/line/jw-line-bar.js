import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {MOST_LINES} from '../shared/lines/document.js';
import {base} from '../shared/styles/base.js';

/** @import {Line} from '../shared/lines/document.js' */

/**
 * Which line is worked on, and others beside it.
 *
 * @fires jw-line-edit
 */
class JwLineBar extends element({
  lines: value(/** @type {Line[]} */ (of)),
  current: {type: Number},
}) {
  static styles = [
    base,
    css`
      div { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: end; }
      .names { flex: 1 1 280px; flex-wrap: nowrap; }
      .names > label { flex: 1 1 120px; max-width: 280px; }
      label > span { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      @media print { :host { display: none; } }
    `,
  ];

  render() {
    return html`<div>
      <div class="names">
        ${this.lines.length > 1 ? this._lines() : nothing}
        <label><span>Name of this line</span><input id="name" maxlength="60" autocomplete="off"
          .value=${this.lines[this.current].name} @change=${this._renamed}></label>
      </div>
      <div>
        <button id="keep" ?disabled=${this.lines.length >= MOST_LINES}
          @click=${() => this._edit({kind: 'keep'})}>Compare with a copy</button>
        <button id="empty" ?disabled=${this.lines.length >= MOST_LINES}
          @click=${() => this._edit({kind: 'empty'})}>Start empty</button>
      </div>
    </div>`;
  }

  _lines() {
    const choose = (event) => this._edit({kind: 'choose', line: Number(event.target.value)});
    return html`<label><span>Line</span><select id="lines" @change=${choose}>
      ${this.lines.map(({name}, at) => html`<option value=${at} .selected=${at === this.current}>${name}</option>`)}
    </select></label>`;
  }

  _renamed({target}) {
    const name = target.value.trim();
    if (name) this._edit({kind: 'rename', name});
    else target.value = this.lines[this.current].name;
  }

  _edit(edit) {
    send(this, 'jw-line-edit', edit);
  }
}

customElements.define('jw-line-bar', JwLineBar);
