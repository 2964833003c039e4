/** The worker's side of the talk: starts the core, then answers one request after the other. */
import {READY, answer, refused, stage, taken, unable} from './messages.js';

/**
 * @import {Part} from './part.js'
 *
 * @typedef {{postMessage: (message: any, transfer?: any) => void, onmessage: ?((event: any) => void)}} Port
 * @typedef {(operation: string, body: Uint8Array, packs?: object[]) => {body?: any, refusal?: any}} Core
 */

/**
 * Listen on `port`, which posts and receives messages.
 *
 * `open(parts, reached)` brings the core from {name: promise of {bytes, sha256}}
 * and tells each stage it begins. What the core throws
 * is not caught: the core is broken then, and the page starts another worker.
 *
 * @param {Port} port
 * @param {(parts: Record<string, Promise<Part>>, reached: (stage: string) => void) => Promise<Core>} open
 */
export function serve(port, open) {
  let core;
  const waiting = {};
  const handlers = {
    async start({names}) {
      const parts = Object.fromEntries(
        names.map((name) => [name, new Promise((resolve) => (waiting[name] = resolve))]),
      );
      try {
        core = await open(parts, (name) => port.postMessage(stage(name)));
      } catch (error) {
        port.postMessage(unable(String(error)));
        return;
      }
      port.postMessage(stage(READY));
    },
    part({name, contents}) {
      waiting[name](contents);
    },
    ask({number, operation, body, packs}) {
      port.postMessage(taken(number));
      const {body: result, refusal} = core(operation, body, packs);
      if (refusal) port.postMessage(refused(number, refusal));
      else port.postMessage(answer(number, result), [result.buffer]);
    },
  };
  port.onmessage = ({data}) => handlers[data.kind](data);
}
