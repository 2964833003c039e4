import START from '../../../build/start-data.json';

/** Hands the reader a file. */
export const save = (name, type, text) => saveBlob(name, new Blob([text], {type}));

/**
 * @param {string} name
 * @param {Blob} blob
 */
export function saveBlob(name, blob) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}

/** Hands the reader a file of JSON that says which version made it. */
export const saveJson = (name, content) =>
  save(name, 'application/json', JSON.stringify({made_by: `Jointwise ${START.version}`, ...content}, null, 1));
