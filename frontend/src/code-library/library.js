/** The part that reads codes out of pictures; it puts itself where the page finds it. */
import {decodeQRBatch} from 'qr/decode.js';

window.readCodes = decodeQRBatch;
