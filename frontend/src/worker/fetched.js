/** The payload source of a served page: files beside it, which the browser keeps. `read()` gives {name: {bytes, sha256}}. */
export function fetchedPayload(base) {
  const get = async (name) => {
    const answer = await fetch(new URL(name, base));
    if (!answer.ok) throw new Error(`${name} is not to be had: ${answer.status}`);
    return answer;
  };
  return {
    async read() {
      const {parts} = await (await get('payload.json')).json();
      const read = async ({name, file, sha256}) => [name, {bytes: new Uint8Array(await (await get(file)).arrayBuffer()), sha256}];
      return Object.fromEntries(await Promise.all(parts.map(read)));
    },
  };
}
