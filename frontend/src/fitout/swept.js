/** What kept sweeps of a line told of one of its joints. */

/**
 * @import {Joint} from '../shared/joints/identity.js'
 * @import {KeptSweep} from '../shared/sweeps/history.js'
 */

/**
 * By day; a joint with a name is found by it, another by its place in the line.
 *
 * @param {KeptSweep[]} sweeps
 * @param {string} line - its name
 * @param {Joint} joint
 */
export const sweptJoint = (sweeps, line, {element, name}) =>
  sweeps
    .filter((sweep) => sweep.line === line)
    .flatMap(({date, joints, verdict}) => {
      const found = joints.find((one) => (name ? one.name === name : one.element === element));
      return found ? [{date, excess: found.excess, verdict}] : [];
    });
