/** What the fit-out view is told, with ranges: the core's own, and which joint it is about. */
import snapshot from '../../build/snapshot.json';
import {TABLE} from '../shared/lines/table.js';

const {family, adapter_to, name} = TABLE.joint;
const {cable, length_m} = TABLE.cable;

/** Of the request itself; its elements are those of the line, or made of the joint's fields. */
export const REQUEST_FIELDS = snapshot.fitout;

export const FIELDS = {
  ...REQUEST_FIELDS,
  of: {type: 'choice', choices: ['line', 'joint'], default: 'line', nullable: false},
  shown: {type: 'number', min: 1, max: 120, default: 1, nullable: false},
  family,
  adapter_to,
  name,
  cable: {...cable, nullable: true},
  length_m,
};

const FIRST_JOINT = {family: 'n', cable: 'rg_213', length_m: 10, band: '20m', exposure: 'exposed'};

export const FIRST = {
  ...Object.fromEntries(Object.entries(FIELDS).map(([field, {default: value}]) => [field, value])),
  ...FIRST_JOINT,
};

const PREFIX = 'fitout.';

/** The field a control's name "fitout.field" means. */
export const fitoutField = (control) => (control.startsWith(PREFIX) ? FIELDS[control.slice(PREFIX.length)] : undefined);
