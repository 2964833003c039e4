import {launch} from './launch.js';
import {died, part, start, unable} from './messages.js';
import {unpacked} from './part.js';

/**
 * One worker from its start to its end.
 *
 * `hear` is given every message of the worker, and `unable` or `died` when it
 * can't be started or breaks down; nothing more after `end()`.
 */
export class Life {
  #hear;
  /** @type {Worker | undefined} */
  #worker;
  #over = false;

  /**
   * @param {object} settings
   * @param {import('./part.js').Payload} settings.payload
   * @param {(script: string) => Worker} [settings.createWorker]
   * @param {(message: any) => void} settings.hear
   */
  constructor({payload, createWorker = launch, hear}) {
    this.#hear = hear;
    this.#begin(payload, createWorker).catch((error) => this.#tell(unable(String(error))));
  }

  send(message) {
    this.#worker?.postMessage(message);
  }

  end() {
    this.#over = true;
    this.#worker?.terminate();
  }

  async #begin(payload, createWorker) {
    const {worker: script, ...parts} = await payload.read();
    const launched = this.#launch(script, createWorker, Object.keys(parts));
    // each as soon as it is here; copied, not handed over: the next worker needs the parts too
    const give = async ([name, arriving]) => {
      const [contents] = await Promise.all([arriving, launched]);
      if (!this.#over) this.send(part(name, contents));
    };
    await Promise.all([launched, ...Object.entries(parts).map(give)]);
  }

  async #launch(script, createWorker, names) {
    const text = new TextDecoder().decode(await unpacked(await script, 'worker'));
    if (this.#over) return;
    const broken = (event) => this.#tell(died(event.message ?? 'the worker could not be started'));
    const worker = createWorker(text);
    worker.onmessage = ({data}) => this.#tell(data);
    worker.onerror = broken;
    worker.onmessageerror = broken;
    this.#worker = worker;
    this.send(start(names));
  }

  #tell(message) {
    if (!this.#over) this.#hear(message);
  }
}
