import type { Page } from '@playwright/test';
import { expect, runTime, stripRow, test } from './page.ts';

/** Run times are worked out several hundred times; a busy machine takes its while. */
const patient = { timeout: 60_000 };

const spreadReady = (page: Page): Promise<void> =>
  expect(page.locator('.strip-spread[data-stale=false]')).toHaveCount(3, patient);

const openRun = async (page: Page): Promise<void> => {
  await page.locator('[data-place=run]').click();
  await expect(page.getByRole('heading', { name: 'How sure is it?' })).toBeVisible();
};

const openSearch = async (page: Page): Promise<void> => {
  await page.locator('[data-place=packs]').click();
  await page.getByRole('button', { name: 'Add option' }).click();
  await page.getByRole('menuitem', { name: /^Find packs/ }).click();
  await expect(page.getByRole('dialog', { name: 'Find packs that fit' })).toBeVisible();
};

test('every option shows low to high and the chance of the goal, with a working', async ({
  cart,
}) => {
  test.slow();
  await spreadReady(cart);
  for (const row of [0, 1, 2]) {
    await expect(stripRow(cart, row).locator('.strip-spread')).toContainText(/–.*(min|h)/);
    await expect(stripRow(cart, row).locator('td').nth(2)).toContainText('%');
  }
  await stripRow(cart, 0).locator('.strip-spread .figure-button').click();
  const working = cart.getByRole('dialog', { name: /^Spread of/ });
  await expect(working).toContainText('10th');
  await expect(working).toContainText('500');
});

test('an edit marks the spread as out of date until it has been drawn anew', async ({ cart }) => {
  test.slow();
  await spreadReady(cart);
  const cell = stripRow(cart, 0).locator('.strip-spread');
  const before = await cell.innerText();
  await cart.locator('[data-place=packs]').click();
  const capacity = cart.locator('[data-field="options.0.pack.block.capacityAh"]');
  await capacity.fill('30');
  await capacity.press('Enter');
  await expect(cell).toHaveAttribute('data-stale', 'true');
  await spreadReady(cart);
  expect(await cell.innerText()).not.toBe(before);
});

test('the place Run tells who outlasts whom, draws the band and holds the histograms as tables', async ({
  cart,
}) => {
  test.slow();
  await openRun(cart);
  await spreadReady(cart);
  await expect(cart.locator('.spread-pairs li')).toHaveCount(3);
  await expect(cart.locator('.spread-pairs li').first()).toContainText(
    /outlasts .* in \d+ of 100 cases/,
  );
  await expect(cart.locator('.histogram')).toHaveCount(3);
  await expect(cart.locator('.chart-band-key')).toBeVisible(patient);
  await cart.getByRole('button', { name: 'Cases by run time' }).click();
  await expect(cart.getByRole('table', { name: /^Run times of/ })).toHaveCount(3);
});

test('the bars of the assumptions stand in a table with their figures, the first to measure is named', async ({
  cart,
}) => {
  test.slow();
  await openRun(cart);
  await expect(cart.locator('.measure-advice')).toContainText('Measure first:', patient);
  const rows = cart.locator('tr').filter({ has: cart.locator('.tornado') });
  expect(await rows.count()).toBeGreaterThan(7);
  await expect(rows.first()).toContainText(/min/);
  // The widest swing stands on top: its share is the largest.
  const shares = await rows.locator('td:nth-last-child(2)').allInnerTexts();
  const numbers = shares.map(Number);
  expect(numbers).toEqual(numbers.toSorted((one, other) => other - one));
});

test('a spread of many cases shows its progress and is broken off at once', async ({ cart }) => {
  test.slow();
  await openRun(cart);
  await spreadReady(cart);
  const kept = await stripRow(cart, 0).locator('.strip-spread').innerText();
  await cart.locator('.spread-cases .choice').click();
  await cart.getByRole('option', { name: '10,000 cases' }).click();
  const bar = cart.getByRole('progressbar', { name: 'Drawing the assumptions anew' });
  await expect(bar).toBeVisible(patient);
  const tookMs = await cart.evaluate(async () => {
    const cancel = document.querySelector<HTMLButtonElement>('.behind-running button');
    if (cancel === null) return Number.POSITIVE_INFINITY;
    const start = performance.now();
    cancel.click();
    while (document.querySelector('.behind-running') !== null) {
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    return performance.now() - start;
  });
  test.info().annotations.push({ type: 'cancel [ms]', description: tookMs.toFixed(0) });
  console.log(`cancelled after ${tookMs.toFixed(0)} ms`);
  expect(tookMs).toBeLessThan(100);
  expect(await stripRow(cart, 0).locator('.strip-spread').innerText()).toBe(kept);
  await expect(cart.locator('.behind')).toContainText('Broken off');
});

test('a pack found becomes an option by one step that undo takes back', async ({ cart }) => {
  test.slow();
  await openSearch(cart);
  await cart.getByRole('button', { name: 'Search', exact: true }).click();
  await expect(cart.locator('.search-found')).toContainText('meet every wish', patient);
  await expect(cart.locator('.pareto canvas')).toHaveAccessibleName(/unbeaten/);
  await expect(cart.getByRole('button', { name: 'Why the rest fell out' })).toBeVisible();
  await cart
    .getByRole('button', { name: /^Take .* as an option$/ })
    .first()
    .click();
  await cart.getByRole('dialog').getByRole('button', { name: 'Close' }).last().click();
  await expect(cart.locator('.strip-table tbody tr')).toHaveCount(4);
  await expect(async () => expect(await runTime(cart, 3)).toMatch(/\d/)).toPass(patient);
  await cart.keyboard.press('Control+z');
  await expect(cart.locator('.strip-table tbody tr')).toHaveCount(3);
});

test('wishes that nothing meets name the wish to loosen', async ({ cart }) => {
  test.slow();
  await openSearch(cart);
  const mass = cart.getByRole('spinbutton', { name: /^Pack weighs at most/ });
  await mass.fill('0.5');
  await mass.press('Enter');
  await cart.getByRole('button', { name: 'Search', exact: true }).click();
  await expect(cart.locator('.search-found')).toContainText('No pack meets all wishes', patient);
  await expect(cart.getByRole('rowheader', { name: 'Too heavy' })).toBeVisible();
});
