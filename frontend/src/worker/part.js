/**
 * Parts of the payload: bytes packed with gzip, each known by its hash.
 *
 * @typedef {{bytes: Uint8Array<ArrayBuffer>, sha256: string}} Part
 * @typedef {{read: () => Promise<Record<string, Promise<Part>>>}} Payload - by the parts' names, every time
 */
import {sha256} from '@noble/hashes/sha2.js';
import {bytesToHex} from '@noble/hashes/utils.js';

/**
 * Bytes packed with gzip, unpacked.
 *
 * @param {Uint8Array<ArrayBuffer>} bytes
 */
export async function inflated(bytes) {
  const stream = new DecompressionStream('gzip');
  // WebKit can't read a Blob in a worker of a page from a file, so the bytes go in by hand
  const writer = stream.writable.getWriter();
  const written = writer.write(bytes).then(() => writer.close());
  const [result] = await Promise.all([new Response(stream.readable).arrayBuffer(), written]);
  return new Uint8Array(result);
}

/**
 * The bytes of a part, unpacked.
 *
 * The hash is computed here because `crypto.subtle` is missing wherever the
 * page comes over plain HTTP from another machine, and from a file in some
 * engines. Raises an Error when the part is not the one the payload was made
 * with, as after half an update.
 *
 * @param {Part} part
 * @param {string} name
 */
export async function unpacked({bytes, sha256: expected}, name) {
  if (bytesToHex(sha256(bytes)) !== expected) throw new Error(`part ${name} is not the one this page was built with`);
  return inflated(bytes);
}
