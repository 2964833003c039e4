/** What kept sweeps of a line told of one of its joints. */

/**
 * @import {Joint} from '../joints/identity.js'
 * @import {KeptSweep} from './history.js'
 */

/**
 * @typedef {{date: string, excess: number | null, verdict: string}} SweptJoint - what a sweep told of a joint
 */

/**
 * By day; a joint with a name is found by it, another by its place in the line.
 *
 * @param {KeptSweep[]} sweeps
 * @param {string} line - its name
 * @param {Joint} joint
 * @returns {SweptJoint[]}
 */
export const sweptJoint = (sweeps, line, {element, name}) =>
  sweeps
    .filter((sweep) => sweep.line === line)
    .flatMap(({date, joints, verdict}) => {
      const found = joints.find((one) => (name ? one.name === name : one.element === element));
      return found ? [{date, excess: found.excess, verdict}] : [];
    });
