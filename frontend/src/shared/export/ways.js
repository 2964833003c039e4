/** The ways to take along what a view shows, as the menu offers them. */
import {html} from 'lit';

/**
 * @typedef {object} Way
 * @property {string} id - of its button
 * @property {string} words
 * @property {() => void} [run]
 * @property {(file: File) => void} [take] - a file that is brought in, in place of `run`
 * @property {string} [accept] - which files may be brought in
 */

const picked =
  (take) =>
  ({target}) => {
    const [file] = target.files;
    if (file) take(file);
    target.value = '';
  };

/** @param {Way} way */
export const wayButton = ({id, words, run, take, accept}) =>
  take
    ? html`<label class="quiet button file">${words}<input id=${id} type="file" accept=${accept}
        @change=${picked(take)}></label>`
    : html`<button id=${id} class="quiet" @click=${run}>${words}</button>`;
