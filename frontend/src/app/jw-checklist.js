import {css, html, nothing} from 'lit';
import {KEPT_TICKS, NO_TICKS, withTick} from '../shared/checklist/kept.js';
import {element, of, state, value} from '../shared/elements/element.js';
import {browserStore} from '../shared/state/browser-store.js';
import {KeptDocument} from '../shared/state/kept-document.js';
import {base} from '../shared/styles/base.js';

/**
 * @import {Checklist, Group} from '../shared/checklist/items.js'
 * @import {Ticks} from '../shared/checklist/kept.js'
 */

/** What to pack and what to do on arrival, to be ticked here or on paper. */
class JwChecklist extends element({
  /** The checklist, once the core has answered. */
  asked: value(/** @type {Promise<{list: Checklist, refused: string[]}>} */ (of)),
  /** Station and day. */
  of: {type: String},
  _answered: state(/** @type {{list: Checklist, refused: string[]} | undefined} */ (of)),
  /** What was ticked before all was cleared. */
  _before: state(/** @type {Ticks | undefined} */ (of)),
}) {
  static styles = [
    base,
    css`
      :host { max-width: 60rem; }
      h3 { margin: var(--space-3) 0 var(--space-1); }
      ul { padding: 0; list-style: none; }
      li { break-inside: avoid; }
      label { display: flex; gap: var(--space-2); align-items: center; min-height: var(--target); }
      input { flex: none; width: 20px; height: 20px; margin: 0; }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: center; margin-bottom: var(--space-2); }
      @media print {
        :host { max-width: none; }
        .row { display: none; }
        .lists { columns: 2; column-gap: 6mm; }
        .group { break-inside: auto; }
        h3 { margin: 2mm 0 0.5mm; font-size: var(--type-text); break-after: avoid; }
        h4 { font-size: var(--type-text); break-after: avoid; }
        label { min-height: 0; gap: 1.5mm; font-size: var(--type-small); line-height: 1.3; align-items: start; }
        input { width: 3mm; height: 3mm; margin-top: 0.3mm; }
      }
    `,
  ];

  constructor() {
    super();
    this.of = '';
    this._ticks = new KeptDocument(KEPT_TICKS, browserStore, {}, NO_TICKS);
    this._ticks.attach(this, () => this.requestUpdate());
  }

  firstUpdated() {
    this.asked.then((answered) => (this._answered = answered));
  }

  render() {
    if (!this._answered) return html`<p class="quiet" role="status">Calculating…</p>`;
    const {list, refused} = this._answered;
    const {ticked} = this._ticks.present;
    return html`<p class="quiet">${this.of}</p>
      <div class="row">
        <button id="clear" ?disabled=${ticked.length === 0} @click=${this._clear}>Clear all ticks</button>
        ${this._before ? html`<button id="undo" @click=${this._undo}>Undo</button>` : nothing}
        <span class="quiet" role="status">${ticked.length} ticked. Ticks stay on this device.</span>
      </div>
      ${this._ticks.problem ? html`<p class="error" role="alert">${this._ticks.problem}</p>` : nothing}
      ${refused.map((sentence) => html`<p class="error">${sentence}</p>`)}
      <div class="lists">
        ${this._part('To pack', list.pack)} ${this._part('On arrival, before power', list.arrival)}
      </div>`;
  }

  /**
   * @param {string} heading
   * @param {Group[]} groups
   */
  _part(heading, groups) {
    if (groups.length === 0) return nothing;
    const ticked = new Set(this._ticks.present.ticked);
    return html`<h3>${heading}</h3>
      ${groups.map(
        (group) => html`<div class="group" role="group" aria-label=${group.heading}><h4>${group.heading}</h4>
          <ul>${group.items.map((item) => html`<li>${this._box(item, ticked.has(item.id))}</li>`)}</ul></div>`,
      )}`;
  }

  _box({id, words}, isTicked) {
    const changed = ({target}) => this._put(withTick(this._ticks.present, id, target.checked));
    return html`<label><input type="checkbox" .checked=${isTicked} @change=${changed}>${words}</label>`;
  }

  _clear() {
    const before = this._ticks.present;
    this._put(NO_TICKS);
    this._before = before;
  }

  _undo() {
    this._put(this._ticks.turned(NO_TICKS, /** @type {Ticks} */ (this._before)));
  }

  /** @param {Ticks} ticks */
  _put(ticks) {
    this._before = undefined;
    this._ticks.put(ticks);
    this.requestUpdate();
  }
}

customElements.define('jw-checklist', JwChecklist);
