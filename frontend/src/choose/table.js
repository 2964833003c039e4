/** The demands on a joint with their ranges, from the core by way of the snapshot; a name of the catalogue is a choice. */
import snapshot from '../../build/snapshot.json';
import {bandsOf} from '../shared/state/station.js';
import {given} from '../shared/state/view-link.js';

export const {installations: INSTALLATIONS, cables: CABLES} = snapshot;
export const FIELDS = snapshot.choose;

/** A first visit: the core's own defaults. */
export const FIRST = Object.fromEntries(Object.entries(FIELDS).map(([name, field]) => [name, field.default]));

const PREFIX = 'choose.';

/** The field a control's name "choose.field" means. */
export const chooseField = (name) => (name.startsWith(PREFIX) ? FIELDS[name.slice(PREFIX.length)] : undefined);

export const chooseRequest = (state) => ({...given(state), bands: bandsOf(state)});
