/** @import {Refused} from '../answers.js' */

/**
 * One question to the core and what became of it.
 *
 * A reactive controller with `status` initial, pending, complete or error.
 * Requests are numbered and a late answer to an old one is dropped. The last
 * good result stays while a newer one is awaited or was refused.
 *
 * @template [Result=any]
 */
export class Enquiry {
  status = 'initial';
  /** @type {Result | undefined} - the last good one */
  result;
  /** @type {any} - the request it answers */
  answered;
  /** @type {Refused | undefined} - why the newest request failed */
  error;
  #host;
  #ask;
  #number = 0;
  /** @type {AbortController | undefined} */
  #stop;
  #waiting;

  /**
   * @param {import('lit').ReactiveControllerHost} host
   * @param {(request: any, options: {signal: AbortSignal}) => Promise<Result>} ask
   */
  constructor(host, ask) {
    this.#host = host;
    this.#ask = ask;
    host.addController(this);
  }

  hostDisconnected() {
    this.cancel();
  }

  /** Ask now; an older request is given up. */
  async ask(request) {
    this.cancel();
    const number = ++this.#number;
    this.#stop = new AbortController();
    this.status = 'pending';
    this.#host.requestUpdate();
    try {
      const result = await this.#ask(request, {signal: this.#stop.signal});
      if (number !== this.#number) return;
      Object.assign(this, {status: 'complete', result, answered: request, error: undefined});
    } catch (error) {
      if (number !== this.#number) return;
      Object.assign(this, {status: 'error', error});
    }
    this.#stop = undefined;
    this.#host.requestUpdate();
    this.#askWaiting();
  }

  /** Ask when the request in flight is answered; of several waiting, the latest is asked. */
  askNext(request) {
    if (this.#stop === undefined) return this.ask(request);
    this.#waiting = request;
  }

  /** Give up what is in flight or waiting. */
  cancel() {
    this.#number++;
    this.#waiting = undefined;
    this.#stop?.abort();
    this.#stop = undefined;
    if (this.status === 'pending') this.status = this.result === undefined ? 'initial' : 'complete';
  }

  /** What was answered is to be asked again; it stays until then. */
  outdate() {
    this.cancel();
    this.status = 'initial';
  }

  /** As before the first question. */
  forget() {
    this.cancel();
    Object.assign(this, {status: 'initial', result: undefined, answered: undefined, error: undefined});
    this.#host.requestUpdate();
  }

  #askWaiting() {
    const request = this.#waiting;
    this.#waiting = undefined;
    if (request !== undefined) this.ask(request);
  }
}
