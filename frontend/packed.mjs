/** The one way the build packs bytes for a reader's browser to unpack. */
import {gzip} from 'libdeflate';

const SMALLEST = 12;

/** The bytes packed with gzip, without a date; about four per cent smaller than zlib's best. */
export const packed = (bytes) => gzip(bytes, SMALLEST);
