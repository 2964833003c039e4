import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {STEP_RULES, stepOf} from '../shared/margins/scale.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {decibels} from '../shared/text/format.js';
import {WORST, sides} from './sides.js';

/**
 * @import {Line} from '../shared/lines/document.js'
 * @import {Told} from './answers.js'
 */

/**
 * The kept lines side by side.
 *
 * @fires jw-line-edit
 */
class JwLineCompare extends element({
  lines: value(/** @type {Line[]} */ (of)),
  current: {type: Number},
  known: value(/** @type {Told[]} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    unsafeCSS(STEP_RULES),
    css`
      .scroll { position: relative; overflow-x: auto; }
      .plain :is(td, th) { vertical-align: middle; }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      tr[aria-current] th { border-left: 4px solid var(--accent); padding-left: var(--space-2); }
      td { white-space: nowrap; }
      td small { display: block; color: var(--soft); }
      @media print { button { display: none; } }
    `,
  ];

  render() {
    return html`<section class="panel"><h2>Lines kept</h2>
      <div class="scroll" tabindex="0" role="group" aria-label="Kept lines"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Line</th><th scope="col" class="number">Smallest margin</th><th scope="col">Band</th>
          <th scope="col" class="number">At the antenna</th><th scope="col" class="number">Loss</th>
          <th scope="col" class="number">SWR</th><th scope="col">Weakest part</th>
          <th><span class="unseen">Choose</span></th>
        </tr>
      </thead>
      <tbody>
        ${this.lines.map((line, at) => this._row(line, at))}
      </tbody>
    </table></div></section>`;
  }

  _row({name}, at) {
    const chosen = at === this.current;
    return html`<tr data-line=${at} aria-current=${chosen ? 'true' : nothing}>
      <th scope="row">${name}</th>
      ${this._numbers(this.known[at] ?? {})}
      <td>
        <button ?disabled=${chosen} aria-label=${chosen ? nothing : `Show ${name}`}
          @click=${() => send(this, 'jw-line-edit', {kind: 'choose', line: at})}>${chosen ? 'shown' : 'Show'}</button>
        <button aria-label="Drop ${name}" ?disabled=${this.lines.length === 1}
          @click=${() => send(this, 'jw-line-edit', {kind: 'drop', line: at})}>Drop</button>
      </td>
    </tr>`;
  }

  /** @param {Told} told */
  _numbers({result, problem}) {
    if (!result) return html`<td colspan="6" class="quiet">${problem ?? 'Calculating…'}</td>`;
    const margin = result.margin_db;
    const pairs = sides(result);
    const number = (id) => {
      const pair = pairs.find((one) => one.id === id);
      return html`<td class="number">
        ${pair ? html`${pair.likely} <small>${WORST.toLowerCase()} ${pair.worst}</small>` : '–'}
      </td>`;
    };
    return html`<td class="number">
        ${margin === null ? 'none' : html`<span class="chip" data-step=${stepOf(margin)}>${decibels(margin)} dB</span>`}
      </td>
      <td>${result.column.name}</td>
      ${number('delivered')}${number('loss')}${number('swr')}
      <td>${result.weakest === null ? '–' : result.parts[result.weakest].name}</td>`;
  }
}

customElements.define('jw-line-compare', JwLineCompare);
