/** The view Sweep. Which joint has gone bad: a measured sweep against its line. */
import {html} from 'lit';
import {sweepFields} from './fields.js';
import {JwSweepView} from './jw-sweep-view.js';
import {sweepWords} from './words.js';

export const sweep = {
  id: JwSweepView.view,
  label: 'Sweep',
  description: 'Which joint has gone bad, from a sweep of your antenna analyser.',
  fields: sweepFields,
  words: sweepWords,
  upright: true,
  element: ({transport, stage, loadCharts}) =>
    html`<jw-sweep-view class="view" .transport=${transport} .stage=${stage}
      .loadCharts=${loadCharts}></jw-sweep-view>`,
};
