import { spawn } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { projectFolder } from './setup.mjs';

/**
 * Pictures of every place in both themes and both sizes, into dist/screenshots, and the README's picture into
 * build/pictures with `--readme`. `--places a,b` takes only some. Serves the built interface itself.
 */
const flag = (name) => {
  const at = process.argv.indexOf(name);
  return at < 0 ? undefined : process.argv[at + 1];
};
const wanted = flag('--places')?.split(',');
const readme = process.argv.includes('--readme');
const out = join(projectFolder, 'dist', 'screenshots');
mkdirSync(out, { recursive: true });

const server = spawn(
  process.execPath,
  [join(projectFolder, 'build', 'start.mjs'), '--no-open', '--browser'],
  {
    stdio: ['ignore', 'pipe', 'inherit'],
  },
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

const sizes = readme
  ? [[1440, 900]]
  : [
      [1440, 900],
      [900, 600],
    ];
const themes = readme ? ['light'] : ['light', 'dark'];
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
});
try {
  for (const [width, height] of sizes) {
    for (const colorScheme of themes) {
      const page = await browser.newPage({ viewport: { width, height }, colorScheme });
      await page.goto(address);
      const links = page
        .locator('nav')
        .first()
        .getByRole('link')
        .or(page.locator('nav').first().getByRole('button'))
        .or(page.locator('nav').first().getByRole('tab'));
      await links.first().waitFor();
      const names = (await links.allTextContents()).map((name) => name.trim());
      for (const [index, name] of names.entries()) {
        const id = name.toLowerCase().replaceAll(/\W+/g, '-');
        if (readme ? id !== 'run' : wanted !== undefined && !wanted.includes(id)) continue;
        await links.nth(index).click();
        await page.waitForTimeout(900);
        // The picture of the README shows the spread, which is worked out behind the figures.
        if (readme) await page.locator('.behind').waitFor({ state: 'detached', timeout: 180_000 });
        const path = readme
          ? join(projectFolder, 'build', 'pictures', 'run-light.png')
          : join(out, `${id}-${colorScheme}-${width}.png`);
        if (readme) mkdirSync(join(projectFolder, 'build', 'pictures'), { recursive: true });
        await page.screenshot({ path });
        console.log(path);
      }
      await page.close();
    }
  }
} finally {
  await browser.close();
  server.kill();
}
