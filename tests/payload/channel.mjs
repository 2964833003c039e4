/**
 * The worker's code in this process: a channel stands for the line between page and worker, and nothing else is
 * changed.
 */
import {createHash} from 'node:crypto';
import {gzipSync} from 'node:zlib';
import {serve} from '../../frontend/src/worker/serve.js';

const text = new TextEncoder();

/**
 * A part of the payload that holds this text.
 *
 * @param {string | Uint8Array} contents
 */
export function part(contents) {
  const bytes = new Uint8Array(gzipSync(contents));
  return {bytes, sha256: createHash('sha256').update(bytes).digest('hex')};
}

/** A payload whose worker script is a mere word, as `createWorker` below needs none. */
export const payload = {
  read: async () => ({worker: Promise.resolve(part('script')), python: Promise.resolve(part('python'))}),
};

/**
 * `createWorker` for workers whose core is `core(operation, request)`, until test `t` ends, and what became of them.
 *
 * `open` takes part in the start, `heard` is told the kind of each message that has reached the page.
 * The core returns a value to answer, or throws 'death' to break down, 'silence' to hang.
 *
 * @param {import('node:test').TestContext} t
 * @param {(operation: string, request: any, worker: any) => any} core
 * @param {object} [more]
 * @param {(parts: object, reached: (stage: string) => void, worker: any) => Promise<void>} [more.open]
 * @param {(kind: string) => void} [more.heard]
 */
export function workers(t, core, {open = async () => {}, heard = () => {}} = {}) {
  /** @type {any[]} */
  const born = [];
  t.after(() => born.forEach((worker) => worker.terminate()));
  const createWorker = () => {
    const {port1: page, port2: inside} = new MessageChannel();
    /** @type {any} */
    const worker = {
      asked: [],
      ended: false,
      /** Muted, it hears no request any more, like a worker the system has put to sleep for good. */
      mute: false,
      postMessage: (message) => (worker.mute && message.kind === 'ask') || page.postMessage(message),
      terminate() {
        worker.ended = true;
        page.close();
      },
    };
    page.onmessage = (event) => {
      worker.onmessage(event);
      heard(event.data.kind);
    };
    serve(inside, async (parts, reached) => {
      await open(parts, reached, worker);
      return (operation, body) => {
        const request = JSON.parse(new TextDecoder().decode(body));
        worker.asked.push(request);
        return {body: text.encode(JSON.stringify(core(operation, request, worker)))};
      };
    });
    const onmessage = /** @type {(event: MessageEvent) => void} */ (inside.onmessage);
    inside.onmessage = (event) => {
      try {
        onmessage(event);
      } catch (fault) {
        if (fault === 'death') worker.onerror({message: 'death'});
        else if (fault !== 'silence') throw fault;
      }
    };
    born.push(worker);
    return worker;
  };
  return {born, createWorker};
}
