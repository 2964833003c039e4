/** The view Matrix. Every family against every band. */
import {html} from 'lit';
import {matrixFields} from './fields.js';
import {JwMatrixView} from './jw-matrix-view.js';
import {matrixWords} from './words.js';

export const matrix = {
  id: JwMatrixView.view,
  label: 'Matrix',
  description: 'How much power each connector takes on each band, and what limits it.',
  fields: matrixFields,
  words: matrixWords,
  element: ({transport, stage, loadCharts, loadEmbed}) =>
    html`<jw-matrix-view class="view" .transport=${transport} .stage=${stage}
      .loadCharts=${loadCharts} .loadEmbed=${loadEmbed}></jw-matrix-view>`,
};
