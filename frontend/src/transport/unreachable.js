import {Refusal} from './refusal.js';

/** A request that no core received: the server is away, or none can be started in this browser. */
export class Unreachable extends Refusal {
  /** @param {string} detail */
  constructor(detail) {
    super({detail});
    this.name = 'Unreachable';
  }
}

/** Whether an error is one; by its name, as the saved file's core and its page are bundles of their own. */
export const isUnreachable = (error) => error?.name === 'Unreachable';
