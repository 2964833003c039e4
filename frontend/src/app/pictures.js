/** The QR codes in picture files. */

/**
 * @typedef {typeof import('qr/decode.js').decodeQRBatch} ReadCodes - as the part that reads codes has it
 */

/** Larger pictures are read no better, and take longer. */
const LONGEST_SIDE = 3600;
/** Small ones are read better enlarged, so that each square of a code is some pixels wide. */
const SHORTEST_SIDE = 1800;
/** How hard the library tries a picture, and how long at the most. */
const EFFORT = 40;
const LONGEST_MS = 4000;

/**
 * The picture's pixels at a size that is read well, on white where it lets light through.
 *
 * @param {File} file
 * @param {number} share - of that size
 */
async function pixelsOf(file, share) {
  const picture = await createImageBitmap(file);
  const longest = Math.max(picture.width, picture.height);
  const wanted = Math.min(Math.max(longest, SHORTEST_SIDE), LONGEST_SIDE) * share;
  const [width, height] = [picture.width, picture.height].map((side) =>
    Math.max(1, Math.round((side * wanted) / longest)),
  );
  const canvas = Object.assign(document.createElement('canvas'), {width, height});
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d', {willReadFrequently: true}));
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(picture, 0, 0, width, height);
  picture.close();
  return pen.getImageData(0, 0, width, height);
}

/** Sizes at which a picture is looked at: what is blurred at one is often read at another. */
const SHARES = [1, 0.6];

/**
 * The texts of all codes in the pictures, and the names of files that are no pictures.
 *
 * @param {File[]} files
 * @param {ReadCodes} readCodes
 * @returns {Promise<{texts: string[], unread: string[]}>}
 */
export async function codesIn(files, readCodes) {
  const texts = new Set();
  const unread = [];
  for (const file of files) {
    for (const share of SHARES) {
      const pixels = await pixelsOf(file, share).catch(() => null);
      if (!pixels) {
        unread.push(file.name);
        break;
      }
      const [results] = await readCodes([pixels], {effort: EFFORT, timeLimit: LONGEST_MS});
      for (const result of results) if (typeof result === 'string') texts.add(result);
    }
  }
  return {texts: [...texts], unread};
}
