import {css, html, nothing} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {base} from '../../shared/styles/base.js';
import {decibels, digits} from '../../shared/text/format.js';

/** @import {LineResult} from '../result.js' */

const FIRST = 8;

/**
 * What would help: parts exchanged for others, the most gained first.
 *
 * @fires jw-line-take - {change}
 */
class JwLineChanges extends element({
  result: value(/** @type {LineResult} */ (of)),
  /** Whether the result is of the line as it stands. */
  current: {type: Boolean},
}) {
  static styles = [
    base,
    css`
      .scroll { overflow-x: auto; }
      .plain td { vertical-align: middle; }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      button { font-size: 0.82rem; padding: 0 9px; }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--accent); font-size: 0.9rem;
      }
      .better { font-weight: 700; }
      .worse { color: var(--alarm); }
      small { color: var(--soft); }
      @media (max-width: 480px) { .plain { font-size: 0.8rem; } .plain :is(th, td) { padding-right: 5px; } }
      @media print { button, details { display: none; } }
    `,
  ];

  render() {
    const {changes} = this.result;
    if (changes.length === 0) return html`<p class="quiet">No other part of the catalogue passes the gates here.</p>`;
    const rest = changes.slice(FIRST);
    return html`<p class="quiet">
        Each row exchanges one part for another that passes the gates; its neighbours stay, so a joint may need the part
        it mates with too.
      </p>
      ${this._table(changes.slice(0, FIRST))}
      ${
        rest.length > 0
          ? html`<details class="more"><summary>${rest.length} more</summary>${this._table(rest)}</details>`
          : nothing
      }`;
  }

  _table(changes) {
    return html`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Instead of</th><th scope="col">Fit</th><th scope="col" class="number">At the antenna</th>
          <th scope="col" class="number">Smallest margin</th><th><span class="unseen">Take over</span></th>
        </tr>
      </thead>
      <tbody>
        ${changes.map((change) => this._row(change))}
      </tbody>
    </table></div>`;
  }

  _row(change) {
    const part = this.result.parts[change.part];
    return html`<tr data-part=${change.part} data-to=${change.to}>
      <td>${part.name} <small>${part.element + 1}</small></td>
      <td>${change.name}</td>
      <td class="number">${gain(change.gained_db)}</td>
      <td class="number">${gain(change.margin_gained_db)}</td>
      <td class="number">
        <button ?disabled=${!this.current} aria-label="Fit ${change.name} instead of ${part.name}"
          @click=${() => send(this, 'jw-line-take', {change})}>Fit</button>
      </td>
    </tr>`;
  }
}

/** Below a hundredth of a decibel nothing is gained. */
function gain(db) {
  if (db === null) return '–';
  if (Math.abs(db) < 0.01) return '0';
  const words = Math.abs(db) < 0.1 ? `${db < 0 ? '−' : '+'}${digits(Math.abs(db), 1)}` : decibels(db);
  return html`<span class=${db > 0 ? 'better' : 'worse'}>${words} dB</span>`;
}

customElements.define('jw-line-changes', JwLineChanges);
