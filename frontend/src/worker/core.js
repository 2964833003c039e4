/** The core inside a running Python; the same in the browser's worker and under Node. */
import {entries} from './archive.js';

/** Put an archive's files under a folder of Python's; its own unpacking takes ten times as long. */
function place(python, archive, folder) {
  for (const [name, bytes] of entries(archive)) {
    const path = `${folder}/${name}`;
    python.FS.mkdirTree(path.slice(0, path.lastIndexOf('/')));
    python.FS.writeFile(path, bytes, {canOwn: true});
  }
}

/** Place the archives, import the core, and return it as a function (operation, body, packs) → {body} or {refusal}. */
export function openCore(python, ...archives) {
  const [folder] = python.pyimport('site').getsitepackages();
  for (const archive of archives) place(python, archive, folder);
  const {answer} = python.pyimport('jointwise.worker');
  return (operation, body, packs = []) => {
    const found = answer(operation, body, python.toPy(packs));
    const plain = found.toJs({dict_converter: Object.fromEntries});
    found.destroy();
    return plain instanceof Uint8Array ? {body: plain} : {refusal: plain};
  };
}
