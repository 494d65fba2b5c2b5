import { test as base, type Page } from '@playwright/test';

/** Everything the page complains about; a test fails on it. */
const quiet = /Permissions-Policy header/;

/** A page with the orchard cart open and its figures computed; errors in its console fail the test. */
export const test = base.extend<{ cart: Page }>({
  cart: async ({ page }, use) => {
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error' && !quiet.test(message.text()))
        complaints.push(message.text());
    });
    // Without the file pickers a save is a download and an open an ordinary file field.
    await page.addInitScript(() => {
      Object.assign(window, { showSaveFilePicker: undefined, showOpenFilePicker: undefined });
    });
    await page.goto('/');
    await figuresReady(page);
    await use(page);
    base.expect(complaints).toEqual([]);
  },
});

export const figuresReady = (page: Page): Promise<void> =>
  base.expect(page.locator('.status-figures')).toContainText('Figures up to date');

/** Waits until low and high stand in the sheet too. */
export const sheetReady = (page: Page): Promise<void> =>
  base.expect(page.locator('.sheet-status')).toContainText('up to date', { timeout: 60_000 });

/** Cells of the strip's row of an option, by its position. */
export const stripRow = (page: Page, index: number) =>
  page.locator('.strip-table tbody tr').nth(index);

/** Run time of an option as the strip shows it. */
export const runTime = (page: Page, index: number): Promise<string> =>
  stripRow(page, index).locator('.strip-hero').innerText();

export const { expect } = base;
