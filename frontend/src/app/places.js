/** Where each document of the reader's is kept, for a saved page or a station file to be taken in. */
import {KEPT_KIT} from '../kit/kept.js';
import {KEPT_TICKS, NO_TICKS} from '../shared/checklist/kept.js';
import {EMPTY_BOOK} from '../shared/joints/book.js';
import {KEPT_JOINTS} from '../shared/joints/kept.js';
import {KEPT_LINES} from '../shared/lines/kept.js';
import {KEPT_PACKS} from '../shared/packs/shelf.js';
import {KEPT_STATION} from '../shared/station/kept.js';
import {KEPT_SWEEPS} from '../shared/sweeps/kept.js';

/** @type {import('../saved/carried.js').Places} */
export const PLACES = {
  station: {kept: KEPT_STATION},
  lines: {kept: KEPT_LINES, nothing: {lines: [], current: 0}},
  kit: {kept: KEPT_KIT},
  packs: {kept: KEPT_PACKS, nothing: {own: [], server: []}},
  sweeps: {kept: KEPT_SWEEPS, nothing: []},
  joints: {kept: KEPT_JOINTS, nothing: EMPTY_BOOK},
  checklist: {kept: KEPT_TICKS, nothing: NO_TICKS},
};
