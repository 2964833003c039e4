/** The view Choose. Which family to fit at a joint. */
import {html} from 'lit';
import {chooseFields} from './fields.js';
import {JwChooseView} from './jw-choose-view.js';
import {chooseWords} from './words.js';

export const choose = {
  id: JwChooseView.view,
  label: 'Choose',
  description: 'Which connector to fit at a joint, and why the others won’t do.',
  fields: chooseFields,
  words: chooseWords,
  element: ({transport, stage}) =>
    html`<jw-choose-view class="view" .transport=${transport} .stage=${stage}></jw-choose-view>`,
};
