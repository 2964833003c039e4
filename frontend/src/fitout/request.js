/** What the core is asked: the sheets of a line, or of a single joint. */
import {filled} from '../shared/state/given.js';

/** Of a line's request what the sheets do not ask for. */
const LINE_ONLY = ['load', 'receiver', 'transmitter', 'explain'];

/** A cable where one is named, and the joint at its end. */
export function elementsOf({family, adapter_to, name, cable, length_m}) {
  const joint = filled({kind: 'joint', family, adapter_to, name});
  return cable === null ? [joint] : [{kind: 'cable', cable, length_m}, joint];
}

export function lineRequest(state, request) {
  const own = Object.fromEntries(Object.entries(request).filter(([name]) => !LINE_ONLY.includes(name)));
  return {...own, ...filled({station: state.station, date: state.date})};
}

/** @param {string[]} names - the fields of the request */
export function jointRequest(state, names) {
  return {elements: elementsOf(state), ...filled(Object.fromEntries(names.map((name) => [name, state[name]])))};
}

/**
 * The field of the form that a refusal's path means: of an element its own field.
 *
 * @param {{field?: string} | undefined} refusal
 */
export const fieldOf = (refusal) => refusal?.field?.replace(/^elements\[\d+\]\./, '').split(/[[.]/)[0] ?? '';
