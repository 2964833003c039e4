import {css, html, nothing, unsafeCSS} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import '../../shared/elements/jw-steps.js';
import {STEP_RULES} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {digits} from '../../shared/text/format.js';
import {foldStyles} from './fold.js';

/** @import {Catalogue, Match} from '../../shared/answers.js' */

const STATES = {
  holds: 'as asked for',
  depends: 'in doubt: it depends on which source one believes',
  misses: 'less than asked for',
};

const LOOKS = {holds: 'holds', misses: 'refused'};

/** The return loss of the joint alone against the one asked for, with its steps. */
class JwMatch extends element({
  match: value(/** @type {Match} */ (of)),
  catalogue: value(/** @type {Catalogue | undefined} */ (of)),
}) {
  static styles = [
    base,
    unsafeCSS(STEP_RULES),
    foldStyles,
    css`.number[data-step='refused'] { background: var(--refused); color: var(--refused-ink); }`,
  ];

  render() {
    const {match} = this;
    return html`<details ?open=${match.state === 'misses'}>
      <summary>
        <strong>Return loss</strong>
        <span class="number" data-step=${LOOKS[match.state] ?? nothing}>${digits(match.return_loss_db, 3)} dB</span>
        <span class="quiet">to ${digits(match.return_loss_high_db, 3)} dB; asked for:
          ${digits(match.asked_db, 3)} dB</span>
        <strong class="state">${STATES[match.state]}</strong>
        <p>${match.sentence}</p>
      </summary>
      <jw-steps .steps=${match.steps} .catalogue=${this.catalogue}></jw-steps>
    </details>`;
  }
}

customElements.define('jw-match', JwMatch);
