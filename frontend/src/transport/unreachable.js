import {Refusal} from './refusal.js';

/** A request that got no answer from the server at all: the network or the server is away. */
export class Unreachable extends Refusal {
  constructor(detail) {
    super({detail});
    this.name = 'Unreachable';
  }
}
