import START from '../../../build/start-data.json';

/** Hands the reader a file. */
export function save(name, type, text) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], {type}));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}

/** Hands the reader a file of JSON that says which version made it. */
export const saveJson = (name, content) =>
  save(name, 'application/json', JSON.stringify({made_by: `Jointwise ${START.version}`, ...content}, null, 1));
