/** The view Fit-out. How to fit, seal and look after every joint, with labels. */
import {html} from 'lit';
import {fitoutFields} from './fields.js';
import {JwFitoutView} from './jw-fitout-view.js';
import {fitoutWords} from './words.js';

export const fitout = {
  id: JwFitoutView.view,
  label: 'Fit-out',
  description: 'How to fit, seal and look after each joint of your line, with labels to print.',
  fields: fitoutFields,
  words: fitoutWords,
  upright: true,
  element: ({transport, stage}) =>
    html`<jw-fitout-view class="view" .transport=${transport} .stage=${stage}></jw-fitout-view>`,
};
