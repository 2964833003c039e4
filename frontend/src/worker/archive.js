/**
 * Reads the payload's archives: zip files whose entries are stored, not packed.
 *
 * The offsets are those of PKWARE's APPNOTE 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16.
 */
const END_BYTES = 22;
const LOCAL_BYTES = 30;
const ENTRY_BYTES = 46;

/** Each [name, bytes] of an archive; the bytes are a view of it. */
export function* entries(archive) {
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength);
  const text = new TextDecoder();
  const end = archive.length - END_BYTES;
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left--) {
    const [nameBytes, extraBytes, commentBytes] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true));
    const [size, local] = [24, 42].map((offset) => view.getUint32(at + offset, true));
    const from = local + LOCAL_BYTES + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    yield [
      text.decode(archive.subarray(at + ENTRY_BYTES, at + ENTRY_BYTES + nameBytes)),
      archive.subarray(from, from + size),
    ];
    at += ENTRY_BYTES + nameBytes + extraBytes + commentBytes;
  }
}
