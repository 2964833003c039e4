/**
 * Asks over HTTP as long as that works, and the core in this browser when it doesn't.
 *
 * A refusal is an answer, and so the server's; only an Unreachable sends the
 * request to the worker. From then on the worker is asked, and now and then
 * the server beside it, until it answers again. Where no worker can be started
 * either, the server's silence is what the reader is told.
 */
import {isUnreachable} from './unreachable.js';

/** How long the server is left alone after it could not be reached. */
const LEFT_ALONE_MS = 15_000;

/**
 * @import {Transport} from '../shared/answers.js'
 *
 * @param {object} ways
 * @param {Transport} ways.http
 * @param {Transport} ways.worker
 * @param {() => Promise<boolean>} ways.answers - whether the server can be reached
 * @returns {Transport}
 */
export function eitherTransport({http, worker, answers}) {
  /** What became of the last request to a server that is away; undefined while it answers. */
  let silence;
  let tried;

  async function lookAgain() {
    if (Date.now() - tried < LEFT_ALONE_MS) return;
    tried = Date.now();
    if (await answers()) silence = undefined;
  }

  /** @param {Parameters<Transport['ask']>} asked */
  async function instead(...asked) {
    const heard = silence;
    try {
      return await worker.ask(...asked);
    } catch (error) {
      if (!isUnreachable(error)) throw error;
      silence = undefined;
      throw heard;
    }
  }

  return {
    async ask(...asked) {
      if (silence) {
        lookAgain();
        return instead(...asked);
      }
      try {
        return await http.ask(...asked);
      } catch (error) {
        if (!isUnreachable(error)) throw error;
        silence = error;
        tried = Date.now();
        return instead(...asked);
      }
    },
  };
}

/**
 * Whether the server says that it is well.
 *
 * @param {URL} base
 */
export function serverAnswers(base) {
  return async () => {
    try {
      return (await fetch(new URL('health', base), {cache: 'no-store'})).ok;
    } catch {
      return false;
    }
  };
}
