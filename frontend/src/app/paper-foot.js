/** At the foot of every sheet of paper: whose it is, of which day, and which sheet of how many. */

/** @type {CSSStyleSheet | undefined} */
let foot;

/** A text as a style sheet may hold it between quotation marks. */
const quoted = (text) => `"${text.replace(/["\\]/g, '\\$&').replace(/\s+/g, ' ')}"`;

/**
 * The rule for it.
 *
 * @param {string} station - its name; empty, none
 * @param {Date} date
 */
export function footRule(station, date) {
  const day = new Intl.DateTimeFormat('en-GB', {dateStyle: 'long'}).format(date);
  const whose = [station, day, 'Jointwise'].filter(Boolean).join(' · ');
  const letters = 'font: 7pt sans-serif; color: #555; vertical-align: top; padding-top: 1mm;';
  return `@page {
    @bottom-left { content: ${quoted(whose)}; ${letters} }
    @bottom-right { content: "Sheet " counter(page) " of " counter(pages); ${letters} }
  }`;
}

/**
 * Have the foot on all paper from now on.
 *
 * @param {string} station
 */
export function layFoot(station) {
  foot ??= new CSSStyleSheet();
  foot.replaceSync(footRule(station, new Date()));
  if (!document.adoptedStyleSheets.includes(foot)) document.adoptedStyleSheets.push(foot);
}
