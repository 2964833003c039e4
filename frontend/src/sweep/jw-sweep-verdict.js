import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {digits, frequency} from '../shared/text/format.js';
import {findingOf} from './reading.js';

/** @import {SweepResult} from './result.js' */

/** What the sweep tells, first of all: what is wrong where and how sure that is, what to do, what it rests on. */
class JwSweepVerdict extends element({
  result: value(/** @type {SweepResult} */ (of)),
  /** The line and the file. */
  of: {type: String},
  /** Why it is not of the form as it stands; empty while it is. */
  outdated: {type: String},
}) {
  static styles = [
    base,
    panelStyles,
    css`
      .finding { display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: baseline; }
      .mark { flex: none; padding: var(--space-half) var(--space-3); }
      #verdict {
        flex: 1 1 280px; font-size: var(--type-lead); font-weight: 650; line-height: 1.35; overflow-wrap: anywhere;
      }
      h2 { margin: var(--space-3) 0 var(--space-half); font-size: var(--type-text); }
      ul { padding-left: 1.2em; font-size: var(--type-text); }
      .outdated {
        padding: var(--space-2) var(--space-3); margin-top: var(--space-2); background: var(--alarm-wash);
        border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      .quiet { margin-top: var(--space-2); }
    `,
  ];

  render() {
    const {result} = this;
    const {mark, words} = findingOf(result);
    return html`<section class="panel">
      <div class="finding" role="status">
        <span class="sign mark ${mark === '!' ? 'bad' : ''}">${mark} ${words}</span>
        <p id="verdict">${result.verdict}</p>
      </div>
      ${listed('advice', 'What to do', result.advice)}
      ${listed('assumed', 'What this assumes', result.line?.assumed ?? [])}
      <p class="quiet">
        ${this.of}; ${result.points} points from ${frequency(result.low_hz)} to ${frequency(result.high_hz)},
        reference ${digits(result.reference_ohm)} Ω. ${result.notes.join(' ')}
      </p>
      ${this.outdated ? html`<p class="outdated" role="alert">${this.outdated}</p>` : nothing}
    </section>`;
  }
}

const listed = (id, heading, sentences) =>
  sentences.length === 0
    ? nothing
    : html`<h2>${heading}</h2><ul id=${id}>${sentences.map((one) => html`<li>${one}</li>`)}</ul>`;

customElements.define('jw-sweep-verdict', JwSweepVerdict);
