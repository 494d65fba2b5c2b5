import { spawn } from 'node:child_process';
import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';
import { behind, figures, placeNames, scenes } from './scenes.mjs';
import { projectFolder } from './setup.mjs';

/**
 * Pictures of the built interface, into dist/screenshots. It ends with an error when a picture was not made.
 *
 *   --places a,b      only these places or states (see scenes.mjs); `states` takes all dialogs and states
 *   --sizes 1440x900  only these windows (default: 1440x900,900x600)
 *   --themes light    only these themes (default: light,dark)
 *   --language de     the window's language (default: en); states are reached by English words
 *   --whole           the place to its end, not only what is in sight
 *   --readme          the picture of the README, into build/pictures
 */
const { values } = parseArgs({
  options: {
    places: { type: 'string' },
    sizes: { type: 'string', default: '1440x900,900x600' },
    themes: { type: 'string', default: 'light,dark' },
    language: { type: 'string', default: 'en' },
    whole: { type: 'boolean', default: false },
    readme: { type: 'boolean', default: false },
  },
});

const states = Object.keys(scenes).filter((name) => !placeNames.includes(name));
const wanted = values.readme
  ? ['run']
  : (values.places?.split(',') ?? placeNames).flatMap((name) =>
      name === 'states' ? states : [name],
    );
const unknown = wanted.filter((name) => !(name in scenes));
if (unknown.length > 0) {
  console.error(
    `no such place or state: ${unknown.join(', ')}\nthere are: ${Object.keys(scenes).join(', ')}`,
  );
  process.exit(2);
}
const sizes = (values.readme ? '1440x900' : values.sizes)
  .split(',')
  .map((size) => size.split('x').map(Number));
const themes = (values.readme ? 'light' : values.themes).split(',');
const out = values.readme
  ? join(projectFolder, 'build', 'pictures')
  : join(projectFolder, 'dist', 'screenshots');
mkdirSync(out, { recursive: true });

const server = spawn(
  process.execPath,
  [join(projectFolder, 'build', 'start.mjs'), '--no-open', '--browser'],
  { stdio: ['ignore', 'pipe', 'inherit'] },
);
const address = await new Promise((resolve, reject) => {
  let text = '';
  server.stdout.on('data', (chunk) => {
    text += chunk;
    const found = /http:\/\/[\w.:]+\S*/.exec(text);
    if (found) resolve(found[0]);
  });
  server.on('exit', () => reject(new Error(`the server stopped: ${text}`)));
});

/** A page of its own with the first sample open, so that no state leaks from one picture into the next. */
const freshPage = async (browser, [width, height], colorScheme) => {
  const context = await browser.newContext({ viewport: { width, height }, colorScheme });
  await context.addInitScript((language) => {
    const state = { language, theme: 'system', units: 'metric', doorsClosed: false };
    localStorage.setItem('cellwain-settings', JSON.stringify({ state, version: 0 }));
  }, values.language);
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  await page.goto(address);
  await figures(page);
  return page;
};

/** Whatever moves or is still being fetched has come to rest. */
const settled = (page) =>
  page.evaluate(async () => {
    await document.fonts.ready;
    await Promise.allSettled(document.getAnimations().map(({ finished }) => finished));
    await new Promise((done) => {
      requestAnimationFrame(() => requestAnimationFrame(done));
    });
  });

/** Makes the window as high as what its main part holds. */
const unroll = async (page, [width]) => {
  const height = await page.evaluate(() => {
    const main = document.querySelector('main');
    return window.innerHeight + Math.max(0, main.scrollHeight - main.clientHeight);
  });
  await page.setViewportSize({ width, height });
};

const picture = async (page, name, size, theme) => {
  await scenes[name](page);
  if (values.readme) await behind(page);
  if (values.whole) await unroll(page, size);
  await settled(page);
  const language = values.language === 'en' ? '' : `-${values.language}`;
  const file = values.readme ? `${name}-light.png` : `${name}-${theme}-${size[0]}${language}.png`;
  const path = join(out, file);
  await page.screenshot({ path });
  if (statSync(path).size < 4096) throw new Error('the picture is empty');
  return path;
};

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
});
const failures = [];
try {
  for (const size of sizes) {
    for (const theme of themes) {
      for (const name of wanted) {
        const page = await freshPage(browser, size, theme);
        try {
          console.log(await picture(page, name, size, theme));
        } catch (error) {
          failures.push(`${name}, ${theme}, ${size.join('x')}: ${error.message.split('\n')[0]}`);
        }
        await page.context().close();
      }
    }
  }
} finally {
  await browser.close();
  server.kill();
}
for (const failure of failures) console.error(`no picture of ${failure}`);
process.exitCode = failures.length > 0 ? 1 : 0;
