import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { sampleNames, samplePlan } from '#core/plan/samples/index.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import type { Sheet } from '#core/sheet/index.ts';
import { formatMinuteRange } from '#renderer/text/format-range.ts';
import { noPopplerReason, readPdf } from '../support/poppler.ts';
import { command } from '../unit/headless/memory-host.ts';
import { expect, figuresReady, sheetReady, stripRow, test } from './page.ts';

/** Text with spaces of every width as one. */
const plain = (text: string) => text.replaceAll(/\s+/g, ' ').trim();

/** Opens the place and waits until low and high stand in the sheet too. */
async function open(page: Page): Promise<void> {
  await page.keyboard.press('Alt+7');
  await sheetReady(page);
}

const papers = (page: Page) => page.locator('.sheet-desk .paper');

async function save(page: Page, entry: string): Promise<{ name: string; text: string }> {
  await page.getByRole('button', { name: 'Save as…' }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('menuitem', { name: entry }).click();
  const file = await coming;
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), 'utf8') };
}

test('shows every page, prints what is chosen, and says so when nothing is', async ({ cart }) => {
  test.slow();
  // The key for printing leads from any place to what there is to print.
  await cart.keyboard.press('Alt+3');
  await cart.keyboard.press('Control+p');
  await expect(cart.locator('.sheet-place')).toBeVisible();
  await sheetReady(cart);
  await expect(papers(cart)).toHaveCount(11);
  await cart.getByRole('button', { name: 'None', exact: true }).click();
  await expect(cart.getByText('No page is chosen')).toBeVisible();
  await expect(cart.getByRole('button', { name: 'Print…' })).toBeDisabled();
  await cart.locator('label.toggle', { hasText: 'Wire list' }).click();
  await cart.locator('label.toggle', { hasText: 'Charge card' }).click();
  await expect(papers(cart)).toHaveCount(2);
  const reason = noPopplerReason();
  if (reason !== null)
    return test.info().annotations.push({ type: 'skipped', description: reason });
  const { pages, info } = readPdf(await cart.pdf({ preferCSSPageSize: true }));
  const text = plain(pages.join(' '));
  for (const words of ['Wire list', 'Charge card', 'Local codes']) expect(text).toContain(words);
  for (const words of ['Build sheet', 'Findings', 'Options at a glance', 'Save as'])
    expect(text).not.toContain(words);
  expect(info).toMatch(/841\.\d+ x 59\d/);
  expect(plain(pages.at(-1)!)).toContain(`Page ${pages.length} of ${pages.length}`);
});

for (const name of sampleNames) {
  test(`tells for ${name} on screen, on the sheet and on the command line the same`, async ({
    page,
  }) => {
    test.setTimeout(150_000);
    const plan = samplePlan(name);
    await page.goto('/');
    await figuresReady(page);
    await page.keyboard.press('Control+k');
    await page.keyboard.type('sample');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').getByText(plan.name, { exact: true }).click();
    await figuresReady(page);
    await open(page);
    const files = { 'a.wain': writePlan(plan) };
    const run = await command(['run', 'a.wain', '--json'], files);
    const { options } = JSON.parse(run.out) as { options: { id: string; runTimeMin: number }[] };
    for (const [index, option] of options.entries()) {
      await page.locator('.sheet-place .option-pick-entry').nth(index).click();
      await expect(papers(page).first()).toContainText(plan.options[index]!.name, {
        timeout: 60_000,
      });
      await sheetReady(page);
      // A button of the strip says behind its figure what it opens.
      const figure = async (cell: string): Promise<string> =>
        plain(await stripRow(page, index).locator(cell).innerText()).split(
          / ?, (?=Runs:|Spread)/,
        )[0]!;
      const shown = await figure('.strip-hero');
      const hero = papers(page).first().locator('.figure-value').first();
      expect(plain(await hero.innerText())).toBe(shown);
      const outing = plan.outings.find(({ id }) => id === plan.headlineOuting)!;
      const row = papers(page).first().locator('table tbody tr').filter({ hasText: outing.name });
      await expect(row.first()).toContainText(option.runTimeMin.toFixed(1));
      const made = await command(
        [
          'sheet',
          'a.wain',
          '--json',
          '--option',
          option.id,
          '--date',
          '2026-02-03',
          '--cases',
          '0',
        ],
        files,
      );
      const { figures } = JSON.parse(made.out) as Sheet;
      if (plan.machine.drive === null) {
        const spread = stripRow(page, index).locator('.strip-spread[data-stale=false]');
        await expect(spread).toContainText('–', { timeout: 60_000 });
        await sheetReady(page);
        const cells = await row.first().locator('td').allInnerTexts();
        const [low, high] = [Number(cells[2]), Number(cells[4])];
        // The sheet rounds to a tenth, the strip to whole minutes: a figure near the half may go either way.
        const near = [-0.05, 0, 0.049];
        const fitting = near.flatMap((one) =>
          near.map((other) => plain(formatMinuteRange(low + one, high + other, 'en'))),
        );
        expect(fitting).toContain(await figure('.strip-spread'));
      }
      const headless = figures.outings.find(({ id }) => id === outing.id)!;
      expect(headless.runTimeMin).toBe(option.runTimeMin);
      await expect(row.first()).toContainText(headless.minimumBusVoltageV.toFixed(2));
    }
  });
}

test('saves a web page that opens by itself, asks for nothing and holds no script', async ({
  cart,
  context,
}) => {
  test.slow();
  await open(cart);
  const { name, text } = await save(cart, 'Web page');
  expect(name).toMatch(/^Orchard cart.*\.html$/);
  expect(text.length).toBeLessThan(1_000_000);
  const requests: string[] = [];
  const complaints: string[] = [];
  const other = await context.newPage();
  other.on('request', (request) => requests.push(request.url()));
  other.on('console', (message) => complaints.push(message.text()));
  await other.route('http://alone.test/', (route) =>
    route.fulfill({ contentType: 'text/html; charset=utf-8', body: text }),
  );
  await other.goto('http://alone.test/');
  await expect(other.locator('section.paper')).toHaveCount(11);
  expect(await other.locator('script, link, img, iframe, object, a').count()).toBe(0);
  expect(requests).toEqual(['http://alone.test/']);
  expect(complaints).toEqual([]);
  // What was saved is what was shown.
  const parts = (page: Page, root: string) => page.locator(`${root} .paper`).allInnerTexts();
  expect((await parts(other, 'article')).map(plain)).toEqual(
    (await parts(cart, '.sheet-desk')).map(plain),
  );
  await other.close();
});

test('saves table, calendar and text, and copies the question block', async ({ cart, context }) => {
  test.slow();
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(cart);
  const table = await save(cart, 'Shopping list');
  expect(table.name).toMatch(/\.csv$/);
  expect(table.text).toMatch(/^Item,What it must be,Quantity/);
  const calendar = await save(cart, 'Charging calendar');
  expect(calendar.text).toMatch(/^BEGIN:VCALENDAR[\s\S]*END:VCALENDAR\s*$/);
  const text = await save(cart, 'Text…');
  expect(text.text).toContain('Build sheet');
  await cart.getByRole('button', { name: 'Copy question block' }).click();
  await expect(cart.getByText('Question block copied')).toBeVisible();
  const copied = await cart.evaluate(() => navigator.clipboard.readText());
  for (const words of [
    'Pack: Two 12 V 18 A·h AGM',
    'Controller',
    'runs 1 h 04 min',
    'My question:',
  ])
    expect(copied).toContain(words);
});

test('follows paper, language and an edit of the plan', async ({ cart }) => {
  test.slow();
  await open(cart);
  const first = papers(cart).first();
  const mark = await first.locator('.title-block dd').nth(1).innerText();
  await cart.getByRole('button', { name: 'Language of the sheet' }).click();
  await cart.getByRole('option', { name: 'Deutsch' }).click();
  await expect(first).toContainText('Baublatt');
  await expect(first).toContainText('Örtliche Vorschriften');
  await cart.getByRole('button', { name: 'Paper' }).click();
  await cart.getByRole('option', { name: 'US Letter' }).click();
  const box = await first.evaluate((paper) => [paper.clientWidth, paper.clientHeight]);
  // 215.9 mm at 96 pixels an inch.
  expect(box[0]).toBe(816);
  await cart.keyboard.press('Alt+2');
  const capacity = cart.locator('[data-field="options.0.pack.block.capacityAh"]').first();
  await capacity.fill('20');
  await capacity.press('Enter');
  await figuresReady(cart);
  await cart.keyboard.press('Alt+7');
  await expect(first).toContainText('20');
  await expect(first.locator('.title-block dd').nth(1)).not.toHaveText(mark);
});
