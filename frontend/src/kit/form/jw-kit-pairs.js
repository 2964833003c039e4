import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {Width} from '../../shared/elements/width.js';
import {base} from '../../shared/styles/base.js';
import {pairsOf} from '../edits.js';
import {pairName} from '../names.js';

/**
 * @import {Request} from '../edits.js'
 * @import {Refused} from '../placed.js'
 */

/** A matrix needs so much for its row heads and its last margin, and a finger for every column. */
const HEADS_PX = 150;
const FINGER_PX = 44;

/**
 * Which ports must join which: every two, or those ticked in a matrix; where there is no room for one, in a list.
 *
 * @fires jw-kit-edit
 */
class JwKitPairs extends element({
  request: value(/** @type {Request} */ (of)),
  /** What the ports are called. */
  names: value(/** @type {string[]} */ (of)),
  refused: value(/** @type {Refused | undefined} */ (of)),
}) {
  static styles = [
    base,
    css`
      .every {
        display: flex; gap: var(--space-3); align-items: center; min-height: var(--target); font-weight: 600;
        font-size: var(--type-text);
      }
      input { width: 22px; height: 22px; margin: 0; }
      .box { display: grid; place-items: center; min-width: var(--target); min-height: var(--target); }
      table { border-collapse: collapse; font-size: var(--type-small); }
      td { padding: 0; border: 1px solid var(--line); }
      th { font-weight: 600; padding: 0 var(--space-2) 0 0; text-align: left; }
      thead th { padding: var(--space-1) 0; vertical-align: bottom; }
      thead span {
        display: block; margin: 0 auto; writing-mode: vertical-rl; rotate: 180deg; max-height: 120px; overflow: hidden;
        text-overflow: ellipsis; white-space: nowrap; line-height: 1.2;
      }
      tbody th { max-width: 130px; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
      .empty { border: 0; }
      td:has(:checked) { background: var(--accent-wash); }
      fieldset {
        margin: 0 0 var(--space-2); padding: 0 0 var(--space-1); border: 0; border-bottom: 1px solid var(--line);
        min-width: 0;
      }
      legend { font-size: var(--type-small); font-weight: 600; padding: 0; }
      fieldset div {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(118px, 1fr)); gap: 0 var(--space-2);
      }
      fieldset label {
        display: flex; gap: var(--space-2); align-items: center; min-height: var(--target);
        font-size: var(--type-small);
        overflow-wrap: anywhere;
      }
      .acts { display: flex; gap: var(--space-2); margin-top: var(--space-2); }
    `,
  ];

  constructor() {
    super();
    this._width = new Width(this, 0);
  }

  render() {
    const {names, request, refused} = this;
    const every = !request.pairs;
    const chosen = new Set(pairsOf(request).map(([one, other]) => `${Math.min(one, other)}-${Math.max(one, other)}`));
    const fits = this._width.pixels >= HEADS_PX + FINGER_PX * (names.length - 1);
    return html`<label class="every"><input id="every" type="checkbox" .checked=${every}
      aria-invalid=${refused ? 'true' : 'false'}
        @change=${({target}) => this._pairs(target.checked ? undefined : pairsOf(request))}> Every two ports</label>
      ${refused ? html`<p class="error" role="alert">${refused.message}</p>` : nothing}
      ${every ? nothing : fits ? this._matrix(chosen) : this._list(chosen)}
      ${
        every
          ? nothing
          : html`<div class="acts"><button id="none" ?disabled=${chosen.size === 0}
            @click=${() => this._pairs([])}>Untick all</button></div>`
      }`;
  }

  _matrix(chosen) {
    const {names} = this;
    const columns = names.map((_, at) => at).slice(1);
    return html`<table>
      <caption class="unseen">Which ports must join</caption>
      <thead><tr><td class="empty"></td>${columns.map(
        (at) => html`<th scope="col" title=${names[at]}><span>${names[at]}</span></th>`,
      )}</tr></thead>
      <tbody>${names.slice(0, -1).map(
        (name, one) => html`<tr><th scope="row" title=${name}>${name}</th>
          ${columns.map((other) =>
            other > one
              ? html`<td><label class="box">${this._box(one, other, chosen)}</label></td>`
              : html`<td class="empty"></td>`,
          )}</tr>`,
      )}</tbody>
    </table>`;
  }

  _list(chosen) {
    const {names} = this;
    return names.slice(0, -1).map(
      (name, one) => html`<fieldset><legend>${name} joins</legend><div>
        ${names.map((other, at) => (at > one ? html`<label>${this._box(one, at, chosen)} ${other}</label>` : nothing))}
      </div></fieldset>`,
    );
  }

  _box(one, other, chosen) {
    const key = `${one}-${other}`;
    return html`<input type="checkbox" data-pair=${key} aria-label=${pairName([one, other], this.names)}
      .checked=${chosen.has(key)}
      @change=${({target}) => send(this, 'jw-kit-edit', {kind: 'join', pair: [one, other], joined: target.checked})}>`;
  }

  _pairs(pairs) {
    send(this, 'jw-kit-edit', {kind: 'pairs', pairs});
  }
}

customElements.define('jw-kit-pairs', JwKitPairs);
