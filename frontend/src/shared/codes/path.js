/** A text as a QR code (ISO/IEC 18004). */
import {encodeQR} from 'qr';

/** Fifteen per cent may be scratched. */
const CORRECTION = 'medium';
/** What the standard asks for around a code, in squares. */
const QUIET_ZONE = 4;

/** {size, path}: the side in squares with the quiet zone, and the dark squares as an SVG path, run by run. */
export function codePath(text) {
  const rows = encodeQR(text, 'raw', {ecc: CORRECTION, border: QUIET_ZONE});
  const size = rows.length;
  let path = '';
  rows.forEach((row, y) => {
    for (let x = 0; x < size; x++) {
      if (!row[x]) continue;
      const from = x;
      while (row[x + 1]) x++;
      path += `M${from} ${y}h${x - from + 1}v1H${from}z`;
    }
  });
  return {size, path};
}
