import {died, start, unable} from './messages.js';
import {launch} from './launch.js';
import {unpacked} from './part.js';

/**
 * One worker from its start to its end.
 *
 * `hear` is given every message of the worker, and `unable` or `died` when it
 * can't be started or breaks down; nothing more after `end()`.
 */
export class Life {
  #hear;
  #worker;
  #over = false;

  constructor({payload, createWorker = launch, hear}) {
    this.#hear = hear;
    this.#begin(payload, createWorker).catch((error) => this.#tell(unable(String(error))));
  }

  send(message) {
    this.#worker.postMessage(message);
  }

  end() {
    this.#over = true;
    this.#worker?.terminate();
  }

  async #begin(payload, createWorker) {
    const {worker: script, ...parts} = await payload.read();
    const text = new TextDecoder().decode(await unpacked(script, 'worker'));
    if (this.#over) return;
    this.#worker = createWorker(text);
    this.#worker.onmessage = ({data}) => this.#tell(data);
    this.#worker.onerror = this.#worker.onmessageerror = (event) => this.#tell(died(event.message ?? 'the worker could not be started'));
    // copied, not handed over: the next worker needs the parts too
    this.#worker.postMessage(start(parts));
  }

  #tell(message) {
    if (!this.#over) this.#hear(message);
  }
}
