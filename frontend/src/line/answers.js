/** What the core says of the lines: the current one, its spread, and the others for comparison. */
import {Enquiry} from '../shared/state/enquiry.js';
import {Spread} from './spread.js';

/**
 * @import {ReactiveControllerHost} from 'lit'
 * @import {Refused, Transport} from '../shared/answers.js'
 * @import {LineRequest} from '../shared/lines/document.js'
 * @import {LineResult} from './result.js'
 */

/** What the spread depends on: the line without its receiver. */
function drawnFrom({receiver: _, explain: __, ...line}) {
  return line;
}

/** @typedef {{result?: LineResult, problem?: string}} Told - what the core said of a line; empty while it is awaited */

export class Answers {
  /** @type {Enquiry<LineResult>} */
  line;
  spread;
  #others;
  #asked;
  #spreadOf;
  /** @type {Map<string, Told>} - by the request's text */
  #known = new Map();

  /**
   * @param {ReactiveControllerHost} host
   * @param {Transport['ask']} ask - asks the core
   */
  constructor(host, ask) {
    this.line = new Enquiry(host, (request, options) => ask('line', request, options));
    this.spread = new Spread(host, (request, options) => ask('spread', request, options));
    this.#others = new Enquiry(host, (request, options) => this.#tell(request, ask('line', request, options)));
  }

  /** Ask about the current line where it is new, and draw its spread once it is answered. */
  follow(request, again = false) {
    const text = JSON.stringify(request);
    const spreadOf = JSON.stringify(drawnFrom(request));
    if (spreadOf !== this.#spreadOf) this.spread.cancel();
    if (again || text !== this.#asked || this.#isGivenUp(text)) {
      this.#asked = text;
      this.line.askNext(request);
    } else if (this.current(request) && spreadOf !== this.#spreadOf) {
      this.#spreadOf = spreadOf;
      this.spread.begin(drawnFrom(request));
    }
  }

  /** All is to be asked again; what was answered stays until then. */
  outdate() {
    this.#asked = undefined;
    this.#known.clear();
  }

  /** Whether the view was left before the answer came. */
  #isGivenUp(text) {
    const {answered, status} = this.line;
    return status === 'initial' || (status === 'complete' && JSON.stringify(answered) !== text);
  }

  drawAgain(request) {
    this.spread.begin(drawnFrom(request));
  }

  /** Whether the result shown is of this very request. */
  current(request) {
    return this.line.status === 'complete' && JSON.stringify(this.line.answered) === JSON.stringify(request);
  }

  /** The spread of what is shown, not of an older line. */
  get spreadShown() {
    const {answered, result} = this.spread;
    if (!answered || !this.line.answered) return undefined;
    return JSON.stringify(answered) === JSON.stringify(drawnFrom(this.line.answered)) ? result : undefined;
  }

  /**
   * What is known of these lines; those still unknown are asked for, one at a time.
   *
   * @param {LineRequest[]} requests
   * @returns {Told[]}
   */
  compare(requests) {
    const texts = requests.map((request) => JSON.stringify(request));
    const {answered, result} = this.line;
    if (answered) this.#known.set(JSON.stringify(withoutExplain(answered)), {result});
    const {status} = this.#others;
    requests.forEach(({elements}, at) => {
      if (elements.length === 0) this.#known.set(texts[at], {problem: 'No element yet.'});
    });
    const next = texts.findIndex((text) => !this.#known.has(text));
    if (next !== -1 && status !== 'pending') this.#others.ask(requests[next]);
    return texts.map((text) => this.#known.get(text) ?? {});
  }

  /** A refusal is known as well, so that it is not asked for again. */
  async #tell(request, answer) {
    try {
      const result = await answer;
      this.#known.set(JSON.stringify(request), {result});
      return result;
    } catch (error) {
      this.#known.set(JSON.stringify(request), {problem: /** @type {Refused} */ (error).message});
      throw error;
    }
  }
}

const withoutExplain = ({explain: _, ...request}) => request;
