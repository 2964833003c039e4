/** The view Packs. The packs of the page. */
import {html} from 'lit';
import {JwPacksView} from './jw-packs-view.js';
import {groupsOf, wordsOf} from './shapes.js';
import {SHAPES} from './start.js';

export const packs = {
  id: JwPacksView.view,
  label: 'Packs',
  description: 'Connectors, cables and limits of your own.',
  fields: () => groupsOf(SHAPES),
  words: () => wordsOf(SHAPES),
  element: ({transport, stage, shelf, version}) =>
    html`<jw-packs-view class="view" .transport=${transport} .stage=${stage} .shelf=${shelf}
      .version=${version}></jw-packs-view>`,
};
