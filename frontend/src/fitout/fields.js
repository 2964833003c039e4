/** What the fit-out view is told, with ranges: the core's own, and which joint it is about. */
import {lineFields, withoutLine} from '../shared/lines/fields.js';

/** @typedef {Record<string, any>} State - a value for each field */

const FIRST_JOINT = {family: 'n', cable: 'rg_213', length_m: 10, band: '20m', exposure: 'exposed'};

export function fitoutFields(start, lists) {
  const {joint, cable} = lineFields(start, lists);
  const fields = {
    ...withoutLine(start.requests.fitout),
    of: {type: 'choice', choices: ['line', 'joint'], default: 'line', nullable: false},
    shown: {type: 'number', min: 1, max: 120, default: 1, nullable: false},
    family: joint.family,
    adapter_to: joint.adapter_to,
    name: joint.name,
    cable: {...cable.cable, nullable: true},
    length_m: cable.length_m,
  };
  for (const [name, value] of Object.entries(FIRST_JOINT)) fields[name] = {...fields[name], default: value};
  return {fitout: fields};
}
