/** The view Packs. The packs of the page. */
import {html} from 'lit';
import {JwPacksView} from './jw-packs-view.js';

export const packs = {
  id: JwPacksView.view,
  label: 'Packs',
  element: ({transport, stage, shelf, version}) =>
    html`<jw-packs-view class="view" .transport=${transport} .stage=${stage} .shelf=${shelf}
      .version=${version}></jw-packs-view>`,
};
