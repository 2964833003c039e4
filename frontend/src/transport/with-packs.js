/**
 * Asks with the packs of the page.
 *
 * The server knows its own packs only: as long as the reader's own count, the
 * core in this browser is asked, with the server's packs as well; so it is for
 * a thorough search, which a server that many share refuses. A pack that the
 * core does not take any more, as after an update, is turned off and the
 * request asked again without it.
 */
import {asked} from '../shared/packs/shelf.js';

/**
 * @import {Refused, Transport} from '../shared/answers.js'
 * @import {Shelf} from '../shared/packs/shelf.js'
 *
 * @param {object} ways
 * @param {Transport} ways.plain - asks where no own pack counts
 * @param {Transport} ways.worker - asks the core in this browser
 * @param {Shelf} ways.shelf
 * @returns {Transport}
 */
export function withPacks({plain, worker, shelf}) {
  return {
    /** As any transport; `packs` stand in the place of those in force, to try them out. */
    async ask(operation, request, {packs, ...options} = {}) {
      if (packs) return worker.ask(operation, request, {...options, packs});
      const way = shelf.hasOwn || request.search === 'thorough' ? worker : plain;
      try {
        return await way.ask(operation, request, {...options, packs: asked(shelf.inForce)});
      } catch (error) {
        const {field, message} = /** @type {Refused} */ (error);
        const bad = shelf.own.find(({name, on}) => on && field?.startsWith(`${name}: `));
        if (!bad) throw error;
        shelf.turn(bad, false, message);
        return this.ask(operation, request, options);
      }
    },
  };
}

/**
 * The packs that the server at `base` has in force; none where it can't be asked.
 *
 * @param {URL} base
 * @returns {Promise<string[]>}
 */
export async function packsOfServer(base) {
  const answer = await fetch(new URL('packs.json', base), {cache: 'no-store'});
  if (!answer.ok) throw new Error(`packs.json: ${answer.status}`);
  return (await answer.json()).map(({text}) => text);
}
