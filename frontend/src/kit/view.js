/** The view Kit. What to carry so that every pair of ports can be joined. */
import {html} from 'lit';
import {kitFields} from './fields.js';
import {JwKitView} from './jw-kit-view.js';
import {kitWords} from './words.js';

export const kit = {
  id: JwKitView.view,
  label: 'Kit',
  description: 'Which adapters to carry so that everything you have can be joined.',
  fields: kitFields,
  words: kitWords,
  upright: true,
  element: ({transport, stage}) =>
    html`<jw-kit-view class="view" .transport=${transport} .stage=${stage}></jw-kit-view>`,
};
