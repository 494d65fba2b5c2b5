import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';

/** Milliseconds hold on a quiet machine alone; STRICT_TIMES=1 says that this is one. */
const isQuiet = process.env['STRICT_TIMES'] === '1';

type Marks = { marks: { loadMs?: number; chartMs?: number } };

test('the first chart is there soon after the page, and what it took is told', async ({
  page,
}, info) => {
  const scripts: { name: string; bytes: number; isWorker: boolean }[] = [];
  const reading: Promise<void>[] = [];
  let isDone = false;
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    if (isDone || !pathname.endsWith('.js')) return;
    reading.push(
      response.body().then(
        (body) => {
          const bytes = gzipSync(body).byteLength;
          scripts.push({ name: pathname, bytes, isWorker: pathname.includes('worker') });
        },
        () => undefined,
      ),
    );
  });
  // Goes to the chart as soon as there is a way to it, and notes when its canvas has been drawn on.
  await page.addInitScript(() => {
    const { marks } = Object.assign(globalThis, { marks: {} }) as unknown as Marks;
    addEventListener('load', () => {
      marks.loadMs = performance.now();
    });
    const isDrawn = (): boolean => {
      const canvas = document.querySelector<HTMLCanvasElement>('main canvas');
      const ink = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data;
      return ink?.some((value, index) => index % 4 === 3 && value > 0) === true;
    };
    const look = (): void => {
      const tab = document.querySelector<HTMLElement>('nav [data-place="run"]');
      if (tab?.getAttribute('aria-current') == null) tab?.click();
      if (marks.loadMs !== undefined && isDrawn()) marks.chartMs = performance.now();
      else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await page.goto('/');
  await expect
    .poll(() => page.evaluate(() => (globalThis as unknown as Marks).marks.chartMs ?? null), {
      timeout: 25_000,
    })
    .not.toBeNull();
  isDone = true;
  await Promise.all(reading);
  const { loadMs = 0, chartMs = 0 } = await page.evaluate(
    () => (globalThis as unknown as Marks).marks,
  );
  // On a busy machine the spread and what is fetched ahead begin before a late chart, and it needs none of them: what
  // counts is asked for until the chart is there, or should be.
  const before = await page.evaluate(
    (untilMs) =>
      performance
        .getEntriesByType('resource')
        .filter(({ startTime }) => startTime < untilMs)
        .map(({ name }) => new URL(name).pathname),
    Math.min(chartMs, loadMs + 700),
  );
  const sum = (isWorker: boolean): number =>
    scripts
      .filter((script) => script.isWorker === isWorker && before.includes(script.name))
      .reduce((bytes, script) => bytes + script.bytes, 0) / 1000;
  const told = `first chart ${(chartMs - loadMs).toFixed(0)} ms after load; scripts by then, gzip: page ${sum(false).toFixed(0)} kB, workers ${sum(true).toFixed(0)} kB`;
  info.annotations.push({ type: 'measured', description: told });
  console.log(told);
  expect(scripts.length).toBeGreaterThan(3);
  // Everything the window needs to be there and draw; the worker of the figures loads beside it.
  expect(sum(false)).toBeLessThan(350);
  expect(sum(true)).toBeLessThan(150);
  expect(chartMs - loadMs).toBeLessThan(isQuiet ? 700 : 15_000);
});
