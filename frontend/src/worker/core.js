/** The core inside a running Python; the same in the browser's worker and under Node. */

/** Unpack the archives, import the core, and return it as a function (operation, body, packs) → {body} or {refusal}. */
export function openCore(python, ...archives) {
  const [extractDir] = python.pyimport('site').getsitepackages();
  for (const archive of archives) python.unpackArchive(archive, 'zip', {extractDir});
  const {answer} = python.pyimport('jointwise.worker');
  return (operation, body, packs = []) => {
    const found = answer(operation, body, python.toPy(packs));
    const plain = found.toJs({dict_converter: Object.fromEntries});
    found.destroy();
    return plain instanceof Uint8Array ? {body: plain} : {refusal: plain};
  };
}
