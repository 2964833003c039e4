/** The view Matrix. Every family against every band. */
import {html} from 'lit';
import {matrixFields} from './fields.js';
import {JwMatrixView} from './jw-matrix-view.js';
import {matrixWords} from './words.js';

export const matrix = {
  id: JwMatrixView.view,
  label: 'Matrix',
  fields: matrixFields,
  words: matrixWords,
  element: ({transport, stage, file, loadCharts, loadEmbed}) =>
    html`<jw-matrix-view class="view" .transport=${transport} .stage=${stage} .file=${file}
      .loadCharts=${loadCharts} .loadEmbed=${loadEmbed}></jw-matrix-view>`,
};
