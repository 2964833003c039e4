/** Hands the reader a file. */
export function save(name, type, text) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], {type}));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}
