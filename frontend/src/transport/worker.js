/**
 * Asks the core in a worker of this browser, with the same `ask` as over HTTP.
 *
 * Requests go one at a time, so that those still waiting here can be given up
 * at no cost. A worker that dies, or does not even say that it has a request,
 * is replaced, and the next one gets the request again.
 */
import {Life} from '../worker/life.js';
import {READY, ask} from '../worker/messages.js';
import {Refusal} from './refusal.js';
import {Unreachable} from './unreachable.js';

/**
 * @import {AskedPack, Transport} from '../shared/answers.js'
 * @import {Payload} from '../worker/part.js'
 *
 * @typedef {object} Job - a request and who waits for its answer
 * @property {number} number
 * @property {string} operation
 * @property {Uint8Array} body
 * @property {AskedPack[] | undefined} packs
 * @property {number} tries
 * @property {boolean} unwanted
 * @property {(result: any) => void} resolve
 * @property {(error: any) => void} reject
 */

/** How long a start may go on without a new stage; a slow tablet takes its time. */
const STAGE_MS = 120_000;
/** How long a living worker may take to say that it has a request. */
const TAKEN_MS = 20_000;
/** How long a request nobody wants any more may hold up the next; about what a new start costs. */
const GIVEN_UP_MS = 3_000;
/** How much of a wait may pass unseen while the page sleeps. */
const STEP_MS = 1_000;
/** How many workers a request may see die. */
const TRIES = 2;

const UNABLE = 'The calculation cannot start in this browser; only the built-in tables can be shown.';
const BROKEN = 'The calculation failed on this request; change it, or try again.';
const silent = (seconds) => `No answer came within ${seconds} seconds; try again.`;

/**
 * A transport; its worker starts with `start()` or the first request.
 *
 * @param {object} settings
 * @param {Payload} settings.payload - embeddedPayload or fetchedPayload
 * @param {Record<string, number>} settings.longestS - how long an answer may take, in s, by operation
 * @param {(script: string) => Worker} [settings.createWorker] - makes a worker from its script
 * @param {(stage: string) => void} [settings.onProgress] - is told each stage of a start, '' when it failed
 * @returns {Transport & {start: () => void}}
 */
export function workerTransport({payload, longestS, createWorker, onProgress = () => {}}) {
  const queue = new Queue((hear) => new Life({payload, createWorker, hear}), longestS, onProgress);
  return {
    /** Begin a worker before there is anything to ask. */
    start: () => queue.start(),
    ask: (operation, request, options = {}) => queue.ask(operation, request, options),
  };
}

/** The requests of one page and the worker that answers them. */
class Queue {
  #begin;
  #longestS;
  #onProgress;
  #number = 0;
  /** @type {Job[]} */
  #waiting = [];
  /** @type {Job | undefined} - the request the worker has, if any */
  #given;
  /** @type {Life | undefined} */
  #life;
  #ready = false;
  #clock;

  /**
   * @param {(hear: (message: {kind: string}) => void) => Life} begin
   * @param {Record<string, number>} longestS
   * @param {(stage: string) => void} onProgress
   */
  constructor(begin, longestS, onProgress) {
    this.#begin = begin;
    this.#longestS = longestS;
    this.#onProgress = onProgress;
  }

  /**
   * @param {string} operation
   * @param {any} request
   * @param {import('../shared/answers.js').Options} options
   */
  ask(operation, request, {signal, packs}) {
    return new Promise((resolve, reject) => {
      signal?.throwIfAborted();
      const body = new TextEncoder().encode(JSON.stringify(request));
      /** @type {Job} */
      const job = {number: ++this.#number, operation, body, packs, tries: 0, unwanted: false, resolve, reject};
      signal?.addEventListener('abort', () => this.#giveUp(job, signal.reason), {once: true});
      this.#waiting.push(job);
      this.#proceed();
    });
  }

  start() {
    if (this.#life !== undefined) return;
    this.#life = this.#begin((message) => this.#hear[message.kind](message));
    this.#expect(STAGE_MS, () => this.#hear.died());
  }

  /** Begin a worker if one is needed; give it the next request if it has none. */
  #proceed() {
    if (this.#waiting.length === 0) return;
    this.start();
    if (!this.#ready || this.#given) return;
    const job = /** @type {Job} */ (this.#waiting.shift());
    this.#given = job;
    job.tries++;
    this.#life?.send(ask(job.number, job.operation, job.body, job.packs));
    this.#expect(TAKEN_MS, () => this.#hear.died());
  }

  /** @type {Record<string, (message?: any) => void>} */
  #hear = {
    stage: ({name}) => {
      this.#onProgress(name);
      this.#ready = name === READY;
      if (this.#ready) this.#expectNothing();
      else this.#expect(STAGE_MS, () => this.#hear.died());
      this.#proceed();
    },
    unable: ({reason}) => {
      console.info(reason);
      this.#onProgress('');
      this.#end();
      for (const job of this.#waiting.splice(0)) job.reject(new Unreachable(UNABLE));
    },
    taken: () => this.#expectAnswer(),
    answer: ({number, body}) => this.#settle(number, (job) => job.resolve(JSON.parse(new TextDecoder().decode(body)))),
    refused: ({number, refusal}) => this.#settle(number, (job) => job.reject(new Refusal(refusal))),
    died: ({reason} = {}) => {
      if (!this.#ready) return this.#hear.unable({reason: reason ?? 'the worker fell silent while starting'});
      const job = this.#given;
      this.#end();
      if (job && !job.unwanted) {
        if (job.tries < TRIES) this.#waiting.unshift(job);
        else job.reject(new Refusal({detail: BROKEN}));
      }
      this.#proceed();
    },
  };

  #expectAnswer() {
    const job = /** @type {Job} */ (this.#given);
    const longestS = this.#longestS[job.operation];
    this.#expect(job.unwanted ? GIVEN_UP_MS : longestS * 1000, () => {
      this.#end();
      job.reject(new Refusal({detail: silent(longestS)}));
      this.#proceed();
    });
  }

  /**
   * @param {number} number
   * @param {(job: Job) => void} how
   */
  #settle(number, how) {
    const job = this.#given;
    if (job?.number !== number) return;
    this.#expectNothing();
    this.#given = undefined;
    how(job);
    this.#proceed();
  }

  /**
   * @param {Job} job
   * @param {any} reason
   */
  #giveUp(job, reason) {
    job.reject(reason);
    job.unwanted = true;
    if (job === this.#given) this.#expectAnswer();
    else this.#waiting = this.#waiting.filter((one) => one !== job);
  }

  #end() {
    this.#expectNothing();
    this.#life?.end();
    this.#life = undefined;
    this.#given = undefined;
    this.#ready = false;
  }

  /** Counts in steps: a page that was put to sleep wakes at most one step later than it fell asleep. */
  #expect(ms, otherwise) {
    clearTimeout(this.#clock);
    const step = Math.min(ms, STEP_MS);
    this.#clock = setTimeout(ms > step ? () => this.#expect(ms - step, otherwise) : otherwise, step);
  }

  #expectNothing() {
    clearTimeout(this.#clock);
  }
}
