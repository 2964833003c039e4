import {ofBuild} from './build.js';

/**
 * The payload source of a served page: files beside it, which the browser keeps.
 *
 * @param {URL} base
 * @returns {import('./part.js').Payload}
 */
export function fetchedPayload(base) {
  const get = async (name) => {
    const answer = await fetch(new URL(ofBuild(name), base));
    if (!answer.ok) throw new Error(`${name} cannot be fetched: ${answer.status}`);
    return answer;
  };
  return {
    async read() {
      const {parts} = await (await get('payload.json')).json();
      const read = async ({file, sha256}) => ({bytes: new Uint8Array(await (await get(file)).arrayBuffer()), sha256});
      return Object.fromEntries(parts.map((one) => [one.name, read(one)]));
    },
  };
}
