import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

/*
 * Draws the icons of all systems from icon.svg. Run by hand after a change of the drawing:
 *   CHROMIUM=/usr/bin/chromium node build/icons/make-icons.mjs
 */
const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const drawing = readFileSync(here('icon.svg'), 'utf8');
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM,
  chromiumSandbox: process.getuid?.() !== 0,
});

const draw = async (size) => {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const source = `data:image/svg+xml;base64,${Buffer.from(drawing).toString('base64')}`;
  await page.setContent(
    `<body style="margin:0"><img src="${source}" width="${size}" height="${size}" style="display:block">`,
  );
  const picture = await page.screenshot({ omitBackground: true });
  await page.close();
  return picture;
};

/** Windows' container: a table of sizes and the pictures themselves. */
const ico = (pictures) => {
  const head = Buffer.alloc(6 + 16 * pictures.length);
  head.writeUInt16LE(1, 2);
  head.writeUInt16LE(pictures.length, 4);
  let offset = head.length;
  for (const [index, { size, bytes }] of pictures.entries()) {
    const at = 6 + 16 * index;
    head.writeUInt8(size % 256, at);
    head.writeUInt8(size % 256, at + 1);
    head.writeUInt16LE(1, at + 4);
    head.writeUInt16LE(32, at + 6);
    head.writeUInt32LE(bytes.length, at + 8);
    head.writeUInt32LE(offset, at + 12);
    offset += bytes.length;
  }
  return Buffer.concat([head, ...pictures.map(({ bytes }) => bytes)]);
};

const macKinds = { 128: 'ic07', 256: 'ic08', 512: 'ic09', 1024: 'ic10' };

/** The Mac's container: kind, length and picture, one after the other. */
const icns = (pictures) => {
  const parts = pictures.map(({ size, bytes }) => {
    const head = Buffer.alloc(8);
    head.write(macKinds[size], 'ascii');
    head.writeUInt32BE(bytes.length + 8, 4);
    return Buffer.concat([head, bytes]);
  });
  const body = Buffer.concat(parts);
  const head = Buffer.alloc(8);
  head.write('icns', 'ascii');
  head.writeUInt32BE(body.length + 8, 4);
  return Buffer.concat([head, body]);
};

const pictures = new Map();
for (const size of [16, 32, 48, 64, 128, 256, 512, 1024]) pictures.set(size, await draw(size));
await browser.close();
const some = (sizes) => sizes.map((size) => ({ size, bytes: pictures.get(size) }));

mkdirSync(here('linux'), { recursive: true });
for (const size of [16, 32, 48, 64, 128, 256, 512]) {
  writeFileSync(here(`linux/${size}x${size}.png`), pictures.get(size));
}
writeFileSync(here('icon.ico'), ico(some([16, 32, 48, 64, 256])));
writeFileSync(here('icon.icns'), icns(some([128, 256, 512, 1024])));
