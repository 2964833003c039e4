/**
 * Asks the core over HTTP.
 *
 * Every transport has the same `ask`, which fails with a Refusal, an Unreachable when no answer came at all, or with
 * the signal's own reason when the caller gave up.
 *
 * @import {Transport} from '../shared/answers.js'
 */
import {Refusal} from './refusal.js';
import {Unreachable} from './unreachable.js';

const PATIENCE_MS = 60_000;

/**
 * @param {URL} base - where the operations are
 * @returns {Transport}
 */
export function httpTransport(base) {
  return {
    async ask(operation, request, {signal} = {}) {
      const patience = AbortSignal.timeout(PATIENCE_MS);
      let answer, body;
      try {
        answer = await fetch(new URL(operation, base), {
          method: 'POST',
          headers: {'Content-Type': 'application/json', Accept: 'application/json, application/problem+json'},
          body: JSON.stringify(request),
          signal: signal ? AbortSignal.any([signal, patience]) : patience,
        });
        body = await answer.json();
      } catch {
        signal?.throwIfAborted();
        const detail = patience.aborted
          ? `No answer came within ${PATIENCE_MS / 1000} seconds; try again.`
          : 'The server cannot be reached; check that it is running, then try again.';
        throw new Unreachable(detail);
      }
      if (!answer.ok) throw new Refusal(body);
      return body;
    },
  };
}
