/** Before anything asks what is kept: what the page carries is. */
import {carry} from '../shared/state/browser-store.js';
import {carriedBy} from './carried.js';

const carried = carriedBy(document);
if (carried) carry(carried.kept);
