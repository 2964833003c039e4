/** Rows as comma-separated values (RFC 4180). */

const quoted = (text) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** Text that a spreadsheet would take for a formula, also behind blanks, tabs or line ends, is marked as text. */
const inert = (value) => (typeof value === 'string' && /^\s*[=+\-@]/.test(value) ? `'${value}` : String(value ?? ''));

/** @typedef {[name: string, read: (row: any) => any]} Column - how a value is read from a row */

/**
 * @param {Column[]} columns
 * @param {object[]} rows
 */
export function valuesOf(columns, rows) {
  const lines = [
    columns.map(([name]) => name),
    ...rows.map((row) => columns.map(([, read]) => quoted(inert(read(row))))),
  ];
  return lines.map((line) => `${line.join(',')}\r\n`).join('');
}
