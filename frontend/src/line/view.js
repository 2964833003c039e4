/** The view Line. A whole line from the transmitter to the antenna. */
import {html} from 'lit';
import {lineFields} from '../shared/lines/fields.js';
import {JwLineView} from './jw-line-view.js';
import {lineWords} from './words.js';

export const line = {
  id: JwLineView.view,
  label: 'Line',
  description: 'What reaches the antenna through your line, where the loss goes, and which part is weakest.',
  fields: lineFields,
  words: lineWords,
  element: ({transport, stage, loadCharts}) =>
    html`<jw-line-view class="view" .transport=${transport} .stage=${stage} .loadCharts=${loadCharts}></jw-line-view>`,
};
