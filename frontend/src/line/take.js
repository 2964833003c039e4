/** A line from outside, as an edit: shown where it is already here, added where it is not. */
export function taken(document, line) {
  const text = JSON.stringify(line.request);
  const at = document.lines.findIndex(({request}) => JSON.stringify(request) === text);
  return at === -1 ? {kind: 'insert', lines: [line]} : {kind: 'choose', line: at};
}
