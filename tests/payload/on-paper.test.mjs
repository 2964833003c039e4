/** A station as texts of codes: there and back, in any order, too big ones and altered ones refused. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import jsQR from '../../frontend/node_modules/jsqr/dist/jsQR.js';
import {decodeQRBatch} from '../../frontend/node_modules/qr/decode.js';
import {base45, codeTexts, collected, fromBase45, fromTexts} from '../../frontend/src/saved/on-paper.js';
import {codePath} from '../../frontend/src/shared/codes/path.js';

/** Text that packs badly, the same every time. */
function noise(length, seed = 1) {
  let state = seed;
  const letter = () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return String.fromCharCode(33 + (state % 90));
  };
  return Array.from({length}, letter).join('');
}
const carried = (size, seed) => ({
  format: 'jointwise station',
  version: 1,
  name: 'Hut </script> \u202e ü 漢',
  date: '2026-11-29',
  kept: {lines: {text: noise(size, seed)}},
});

test('Base45 is that of RFC 9285', () => {
  const bytes = (text) => new TextEncoder().encode(text);
  assert.equal(base45(bytes('AB')), 'BB8');
  assert.equal(base45(bytes('Hello!!')), '%69 VD92EX0');
  assert.equal(base45(bytes('base-45')), 'UJCLQE7W581');
  assert.equal(new TextDecoder().decode(fromBase45('QED8WEX0')), 'ietf!');
  const all = new Uint8Array(513).map((_, at) => (at * 7) % 256);
  assert.deepEqual(fromBase45(base45(all)), all);
  for (const wrong of ['GGW0', 'A', ':::', 'a00'])
    assert.throws(() => fromBase45(wrong), {name: 'RangeError', message: /no page wrote/});
});

test('a station comes back whole of its codes, in any order and doubled', async () => {
  for (const size of [0, 500, 3000, 6000]) {
    const whole = carried(size, size + 1);
    const texts = await codeTexts(whole);
    const shuffled = [...texts.toReversed(), texts[0], 'https://example.org/', 'JW1:1:9'];
    const found = collected(shuffled);
    assert.deepEqual(found, {total: texts.length, missing: [], isMixed: false, texts});
    assert.deepEqual(await fromTexts(found.texts), whole);
  }
});

test('sweeps stay out', async () => {
  const small = carried(10);
  const texts = await codeTexts({...small, kept: {...small.kept, sweeps: [{text: noise(100_000)}]}});
  assert.equal(texts.length, 1);
  assert.deepEqual(await fromTexts(texts), small);
});

test('missing codes are named, and those of another station left out', async () => {
  const texts = await codeTexts(carried(3000));
  const [other] = await codeTexts(carried(3000, 9));
  assert.ok(texts.length > 3);
  const found = collected([texts[3], other, texts[0]]);
  assert.deepEqual([found.total, found.isMixed, found.texts], [texts.length, true, [texts[0], texts[3]]]);
  assert.deepEqual(found.missing, [2, 3, ...texts.slice(4).map((_, at) => at + 5)]);
  assert.deepEqual(collected(['x']), {total: 0, missing: [], isMixed: false, texts: []});
  assert.equal(collected(['JW1:3:2:00000000:ABC']).total, 0);
});

test('a station that is too big is refused with its sizes', async () => {
  const text = /^This station is too big .* packed it takes \d+\.\d kB, and 12 codes hold 7\.6 kB\..*lines 20\.0 kB/;
  await assert.rejects(codeTexts(carried(20_000)), {name: 'RangeError', message: text});
});

test('altered codes, and what would unpack without end, are refused', async () => {
  const [first, second] = await codeTexts(carried(1000));
  await assert.rejects(fromTexts([first, second.replace(/.$/, (letter) => (letter === '0' ? '1' : '0'))]), {
    name: 'RangeError',
    message: /check of the whole fails|no page wrote/,
  });
  const {createHash} = await import('node:crypto');
  const {deflateRawSync} = await import('node:zlib');
  const forged = (bytes) => {
    const check = createHash('sha256').update(bytes).digest('hex').slice(0, 8).toUpperCase();
    return [`JW1:1:1:${check}:${base45(bytes)}`];
  };
  const bomb = deflateRawSync(Buffer.alloc(5_000_000), {level: 9});
  await assert.rejects(fromTexts(forged(bomb)), {name: 'RangeError', message: /unpack to more than 1 MB/});
  await assert.rejects(fromTexts(forged(Buffer.from('nonsense'))), {name: 'RangeError', message: /no page wrote/});
  const other = deflateRawSync(Buffer.from('{"format": "other"}'));
  await assert.rejects(fromTexts(forged(other)), {name: 'RangeError', message: /^format is "other"/});
});

/** The picture of a code, some pixels a square. */
function picture({size, path}, scale = 3) {
  const side = size * scale;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H\d+z/g)) {
    for (let row = 0; row < scale; row++) {
      const from = ((Number(y) * scale + row) * side + Number(x) * scale) * 4;
      for (let at = from; at < from + Number(length) * scale * 4; at++) if (at % 4 !== 3) data[at] = 0;
    }
  }
  return {width: side, height: side, data};
}

test('every code is of a size that is well read, and two readers read the same', async () => {
  const texts = await codeTexts(carried(6000));
  for (const text of texts) {
    const code = codePath(text);
    assert.ok(code.size <= 97 + 8, `${code.size} squares`);
    const image = picture(code);
    const [[read]] = await decodeQRBatch([image]);
    assert.equal(read, text);
    assert.equal(
      jsQR.default
        ? jsQR.default(image.data, image.width, image.height)?.data
        : jsQR(image.data, image.width, image.height)?.data,
      text,
    );
  }
});
