import {css, html, nothing} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import {inside} from '../../shared/elements/inside.js';
import {send} from '../../shared/elements/send.js';
import {base} from '../../shared/styles/base.js';
import {pickStyles} from '../../shared/styles/panels.js';
import {offered} from '../new-parts.js';

const STEPS = {ArrowDown: 1, ArrowUp: -1, ArrowRight: 1, ArrowLeft: -1};

/**
 * All that a line may be made of, in one menu.
 *
 * @fires jw-line-add - {element}
 */
class JwLineAdd extends element({
  /** Where it will stand, in words. */
  where: {type: String},
  /** Looked at; undefined before the first answer. */
  frequency: value(/** @type {number | undefined} */ (of)),
  _open: state(/** @type {boolean} */ (of)),
}) {
  static styles = [
    base,
    pickStyles,
    css`
      :host { position: relative; }
      .head { display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center; }
      #menu {
        position: absolute; z-index: 10; left: 0; right: 0; top: calc(100% + 4px); display: grid;
        gap: var(--space-3) var(--space-4);
        grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); align-items: start;
        padding: var(--space-3); background: var(--card); border: 1px solid var(--edge); border-radius: var(--round);
        box-shadow: 0 8px 28px #0004; scroll-margin: 70px 0;
      }
      h3 { font-size: var(--type-small); color: var(--soft); margin: 0 var(--space-2) var(--space-half); }
      [role='group'] { display: grid; }
      #menu button, #menu .pick {
        display: block; width: 100%; min-height: var(--target); padding: var(--space-1) var(--space-2); border: 0;
        background: none;
        border-radius: 6px; text-align: left; font-size: var(--type-text); line-height: 1.2;
      }
      #menu .pick { align-content: center; justify-items: start; }
      #menu :is(button, .pick):hover { background: var(--sunk); }
      small { display: block; color: var(--soft); font-size: var(--type-fine); }
      @media print { :host { display: none; } }
    `,
  ];

  constructor() {
    super();
    this.where = '';
    this._open = false;
    this._elsewhere = (event) => {
      if (!event.composedPath().includes(this)) this._open = false;
    };
  }

  connectedCallback() {
    super.connectedCallback();
    window.addEventListener('pointerdown', this._elsewhere);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    window.removeEventListener('pointerdown', this._elsewhere);
  }

  render() {
    return html`<div class="head">
        <button id="add" aria-expanded=${this._open} aria-controls="menu" @click=${this._toggle}>Add…</button>
        <span class="quiet">${this.where}</span>
      </div>
      ${this._open ? this._menu() : nothing}`;
  }

  _menu() {
    const groups = offered(this.frequency);
    return html`<div id="menu" @keydown=${this._key} @focusout=${this._left}>
      ${groups.map(
        ({group, offers}, at) => html`<div role="group" aria-labelledby="group-${at}">
          <h3 id="group-${at}">${group}</h3>
          ${offers.map(
            ({id, words, more, element: added}) =>
              html`<button data-add=${id} @click=${() => this._add(added)}>${words}${
                more ? html` <small>${more}</small>` : nothing
              }</button>`,
          )}
          ${
            at === groups.length - 1
              ? html`<label class="pick">Measured file <small>Touchstone, two ports</small>
                  <input id="measured" type="file" accept=".s2p,.ts,.txt" @change=${this._measured}></label>`
              : nothing
          }
        </div>`,
      )}
    </div>`;
  }

  get _choices() {
    return /** @type {HTMLElement[]} */ ([...this.renderRoot.querySelectorAll('#menu :is(button, input)')]);
  }

  async _toggle() {
    this._open = !this._open;
    await this.updateComplete;
    if (!this._open) return;
    inside(this.renderRoot, '#menu').scrollIntoView({block: 'nearest'});
    this._choices[0].focus({preventScroll: true});
  }

  _key(event) {
    if (event.key === 'Escape') {
      event.preventDefault();
      event.stopPropagation();
      this._close();
    }
    const step = STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const choices = this._choices;
    const at = choices.indexOf(event.target) + step;
    choices[(at + choices.length) % choices.length].focus();
  }

  /** Tabbing out of the menu closes it; choosing a file does not. */
  _left({relatedTarget}) {
    if (relatedTarget && !this.renderRoot.contains(relatedTarget)) this._open = false;
  }

  _close() {
    this._open = false;
    inside(this.renderRoot, '#add').focus();
  }

  _add(added) {
    this._close();
    send(this, 'jw-line-add', {element: added});
  }

  async _measured(event) {
    const [file] = event.target.files;
    if (!file) return;
    const name = file.name.replace(/\.\w+$/, '').slice(0, 60);
    this._add({kind: 'measured', touchstone: await file.text(), name});
  }
}

customElements.define('jw-line-add', JwLineAdd);
