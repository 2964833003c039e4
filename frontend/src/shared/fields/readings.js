/** The readings of what was typed, one tap each. */
import {css, html} from 'lit';

/** @import {Reading} from '../text/number-typed.js' */

export const readingStyles = css`
  .readings { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-top: var(--space-1); }
`;

/**
 * @param {string} label - of the field
 * @param {Reading[]} readings
 * @param {(chosen: Reading) => void} choose
 */
export const readingChoices = (label, readings, choose) =>
  html`<div class="readings" role="group" aria-label="${label} is">
    ${readings.map((one) => html`<button type="button" @click=${() => choose(one)}>${one.words}</button>`)}
  </div>`;
