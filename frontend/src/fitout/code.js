/** The code on a label: what it says, and its squares as one path. */
import {encode} from 'uqr';
import {levelsWith} from '../shared/state/levels.js';

/** Fifteen per cent may be scratched. */
const CORRECTION = 'M';
/** What the standard asks for around a code, in squares. */
const QUIET_ZONE = 4;

/** The address that opens a joint's derivation at its very power. */
export function codeText(address, {fragment}, levels) {
  const power = Number(new URLSearchParams(fragment).get('power_w'));
  const more = levelsWith(levels, power);
  return `${address}#${fragment}${more === levels ? '' : `&powers_w=${more.join(',')}`}`;
}

/** {size, path}: the side in squares with the quiet zone, and the dark squares as an SVG path, run by run. */
export function codePath(text) {
  const {data, size} = encode(text, {ecc: CORRECTION, border: QUIET_ZONE});
  let path = '';
  data.forEach((row, y) => {
    for (let x = 0; x < size; x++) {
      if (!row[x]) continue;
      const from = x;
      while (row[x + 1]) x++;
      path += `M${from} ${y}h${x - from + 1}v1H${from}z`;
    }
  });
  return {size, path};
}
