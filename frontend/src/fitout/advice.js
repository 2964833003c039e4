/** Sentences of the trade with their origin in small print. */
import {html, nothing} from 'lit';
import {fromWords} from './from.js';

export function origin(kinds, sources, numbers) {
  const words = fromWords(kinds, sources, numbers);
  return words ? html`<small class="from">${words}</small>` : nothing;
}

export const sentence = ({text, kind, source}, numbers) => html`${text} ${origin([kind], [source], numbers)}`;

export const sentences = (all, numbers) => html`<ul>${all.map((one) => html`<li>${sentence(one, numbers)}</li>`)}</ul>`;

/** Steps under the cable they are done on, numbered through. */
export function stepList(steps, numbers) {
  const groups = [];
  steps.forEach((step, at) => {
    if (groups.at(-1)?.at !== step.at) groups.push({at: step.at, first: at + 1, steps: []});
    groups.at(-1).steps.push(step);
  });
  return groups.map(
    ({at, first, steps: some}) => html`<h4>${at ? `On ${at}` : 'The pair'}</h4>
      <ol start=${first}>${some.map((step) => html`<li>${sentence(step, numbers)}</li>`)}</ol>`,
  );
}

/** The texts that the numbers lead to. */
export function sourceList(numbers, titles) {
  return html`<p class="sources">What carries no mark is common practice. ${[...numbers].map(
    ([id, number]) => html`<span>[${number}] ${titles.get(id) ?? id}. </span>`,
  )}</p>`;
}
