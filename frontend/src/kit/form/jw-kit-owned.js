import {css, html} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {inside} from '../../shared/elements/inside.js';
import {send} from '../../shared/elements/send.js';
import {changesOf, control} from '../../shared/fields/control.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {NEW_ADAPTER} from '../example.js';

/**
 * @import {Adapter, Bounds} from '../edits.js'
 * @import {Refused} from '../placed.js'
 */

const FIELDS = ['one_family', 'one_gender', 'other_family', 'other_gender', 'count'];

/**
 * The adapters that are in the bag already.
 *
 * @fires jw-kit-edit
 */
class JwKitOwned extends element(
  {
    owned: value(/** @type {Adapter[]} */ (of)),
    refused: value(/** @type {Refused | undefined} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      ul { list-style: none; margin: 0; padding: 0; }
      li { padding: var(--space-2) 0; border-bottom: 1px solid var(--line); }
      .fields { display: grid; grid-template-columns: 1fr 1fr; gap: 0 var(--space-3); align-items: end; }
      .fields > button { justify-self: start; margin-bottom: 1.5rem; }
      #acquire { margin-top: var(--space-2); }
    `,
  ];

  render() {
    const {owned, refused} = this;
    const {most} = /** @type {Bounds} */ (this.vocabulary.fields.kit.owned);
    return html`<ul>${owned.map((adapter, at) => this._row(adapter, at, refused?.at === at ? refused : undefined))}</ul>
      <button id="acquire" ?disabled=${owned.length >= most}
        @click=${() => send(this, 'jw-kit-edit', {kind: 'acquire', adapter: NEW_ADAPTER})}>Add an adapter you
        own</button>`;
  }

  _row(adapter, at, refused) {
    const field = (name) =>
      control(
        this.vocabulary,
        `owned.${name}`,
        this.vocabulary.valueOf(adapter, `owned.${name}`),
        refused?.field === name ? refused.message : '',
      );
    return html`<li><div class="fields" role="group" aria-label="Adapter ${at + 1}"
      @jw-change=${(event) => this._changed(event, at)}>
      ${FIELDS.map(field)}
      <button aria-label="Remove adapter ${at + 1}" @click=${() => this._discard(at)}>Remove</button>
    </div></li>`;
  }

  _changed(event, at) {
    event.stopPropagation();
    if (!event.detail.live) send(this, 'jw-kit-edit', {kind: 'own', at, changes: changesOf(event)});
  }

  async _discard(at) {
    send(this, 'jw-kit-edit', {kind: 'discard', at});
    await Promise.resolve();
    await this.updateComplete;
    const left = /** @type {NodeListOf<HTMLElement>} */ (this.renderRoot.querySelectorAll('li button'));
    (left[Math.min(at, left.length - 1)] ?? inside(this.renderRoot, '#acquire')).focus();
  }
}

customElements.define('jw-kit-owned', JwKitOwned);
