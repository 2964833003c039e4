/** The spread of a line: a quick draw first, then a thorough one; any edit gives it up. */
import {Enquiry} from '../shared/state/enquiry.js';

/**
 * @import {ReactiveControllerHost} from 'lit'
 * @import {Options} from '../shared/answers.js'
 * @import {SpreadResult} from './result.js'
 */

export const DRAWS = [1_000, 10_000];

export class Spread {
  /** Draws the core is at work on; 0 when it rests. */
  drawing = 0;
  #host;
  #enquiry;
  #run = 0;

  /**
   * @param {ReactiveControllerHost} host
   * @param {(request: any, options: Options) => Promise<SpreadResult>} ask
   */
  constructor(host, ask) {
    this.#host = host;
    this.#enquiry = new Enquiry(host, ask);
  }

  get result() {
    return this.#enquiry.result;
  }

  get error() {
    return this.#enquiry.error;
  }

  /** The request the result answers, without the number of draws. */
  answered;

  async begin(request) {
    this.cancel();
    const run = this.#run;
    for (const draws of DRAWS) {
      this.drawing = draws;
      await this.#enquiry.ask({...request, draws});
      if (run !== this.#run) return;
      if (this.#enquiry.status !== 'complete') break;
      this.answered = request;
    }
    this.drawing = 0;
    this.#host.requestUpdate();
  }

  cancel() {
    if (this.drawing === 0) return;
    this.#run++;
    this.drawing = 0;
    this.#enquiry.cancel();
    this.#host.requestUpdate();
  }
}
