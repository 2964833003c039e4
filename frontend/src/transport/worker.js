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

const UNABLE = 'The calculation core cannot be started in this browser; only the built-in tables can be shown.';
const BROKEN = 'The calculation core broke down over this request; change it, or try again.';
const silent = (seconds) => `The core gave no answer within ${seconds} seconds; try again.`;

/**
 * A transport; its worker starts with `start()` or the first request.
 *
 * @param {{read: function(): Promise<object>}} payload - embeddedPayload or fetchedPayload
 * @param {Object<string, number>} longestS - how long an answer may take, in s, by operation
 * @param {function(string): Worker} [createWorker] - makes a worker from its script
 * @param {function(string): void} [onProgress] - is told each stage of a start, and '' when it came to nothing
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
  #waiting = [];
  /** The request the worker has, if any. */
  #given;
  #life;
  #ready = false;
  #clock;

  constructor(begin, longestS, onProgress) {
    this.#begin = begin;
    this.#longestS = longestS;
    this.#onProgress = onProgress;
  }

  ask(operation, request, {signal, packs}) {
    return new Promise((resolve, reject) => {
      signal?.throwIfAborted();
      const body = new TextEncoder().encode(JSON.stringify(request));
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
    const job = (this.#given = this.#waiting.shift());
    job.tries++;
    this.#life.send(ask(job.number, job.operation, job.body, job.packs));
    this.#expect(TAKEN_MS, () => this.#hear.died());
  }

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
    const job = this.#given;
    const longestS = this.#longestS[job.operation];
    this.#expect(job.unwanted ? GIVEN_UP_MS : longestS * 1000, () => {
      this.#end();
      job.reject(new Refusal({detail: silent(longestS)}));
      this.#proceed();
    });
  }

  #settle(number, how) {
    const job = this.#given;
    if (job?.number !== number) return;
    this.#expectNothing();
    this.#given = undefined;
    how(job);
    this.#proceed();
  }

  #giveUp(job, reason) {
    job.reject(reason);
    job.unwanted = true;
    if (job === this.#given) this.#expectAnswer();
    else this.#waiting = this.#waiting.filter((one) => one !== job);
  }

  #end() {
    this.#expectNothing();
    this.#life.end();
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
