/** Fetching a snapshot's text. */

const PATIENCE_MS = 30_000;

/** A failure told in a sentence; trying again may help. */
export class Trouble extends Error {}

/**
 * The text at an address. Throws a Trouble; a refusal of a Jointwise server is told in its own sentence.
 *
 * @param {string} address
 * @param {import('./words.js').Words} words
 * @param {AbortSignal} signal
 */
export async function answered(address, words, signal) {
  const patience = AbortSignal.any([signal, AbortSignal.timeout(PATIENCE_MS)]);
  let answer, text;
  try {
    answer = await fetch(address, {
      signal: patience,
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
      cache: 'no-cache',
    });
    text = await answer.text();
  } catch {
    throw new Trouble(words.unreachable);
  }
  if (answer.ok) return text;
  throw new Trouble(detailOf(text) ?? words.refused(answer.status));
}

/** The sentence of a server's refusal, if it is one. */
function detailOf(text) {
  try {
    const {detail} = JSON.parse(text);
    return typeof detail === 'string' ? detail.slice(0, 500) : undefined;
  } catch {
    return undefined;
  }
}
