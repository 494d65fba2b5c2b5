import { readFile } from 'node:fs/promises';
import { expect, figuresReady, runTime, stripRow, test } from './page.ts';

test('opens the orchard cart with three options and says what ends each run', async ({ cart }) => {
  await expect(cart).toHaveTitle(/Orchard cart/);
  await expect(cart.locator('.strip-table tbody tr')).toHaveCount(3);
  for (const index of [0, 1, 2]) {
    await expect(stripRow(cart, index)).toContainText('cutoff');
    expect(await runTime(cart, index)).toMatch(/min/);
  }
  await expect(stripRow(cart, 0)).toContainText('fits');
});

test('changes the figures when the AGM capacity becomes 26 A·h, and undo brings them back', async ({
  cart,
}) => {
  const before = await runTime(cart, 0);
  const field = cart.getByRole('spinbutton', { name: /Rated capacity, Two 12 V 18/ });
  await field.fill('26');
  await field.press('Enter');
  await expect.poll(() => runTime(cart, 0)).not.toBe(before);
  await expect(cart).toHaveTitle(/^•/);
  await cart.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(() => runTime(cart, 0)).toBe(before);
  await expect(cart).not.toHaveTitle(/^•/);
});

test('gives minutes back when the radio is switched off', async ({ cart }) => {
  const cost = stripRow(cart, 0).locator('td').nth(5);
  const before = await cost.innerText();
  await cart.getByRole('link', { name: 'Machine' }).click();
  await cart
    .getByText('On: Radio')
    .or(cart.getByRole('switch', { name: 'On: Radio' }))
    .first()
    .focus();
  await cart.getByRole('switch', { name: 'On: Radio' }).press('Space');
  await expect.poll(() => cost.innerText()).not.toBe(before);
});

test('stops with CHG-1 when the lead charger is swapped for a 7S lithium one', async ({ cart }) => {
  await expect(stripRow(cart, 0).locator('.finding-mark-stop')).toHaveCount(0);
  await cart.getByRole('button', { name: /Choose a charger, Two 12 V 18/ }).click();
  const dialog = cart.getByRole('dialog', { name: 'Choose a charger' });
  await dialog.getByRole('textbox', { name: 'Find a part' }).fill('NMC 7S');
  await dialog.locator('.part').first().click();
  await expect(stripRow(cart, 0).locator('.finding-mark-stop')).toHaveCount(1);
  await expect(stripRow(cart, 0)).toContainText('does not fit');
  await stripRow(cart, 0)
    .getByRole('button', { name: /^Findings of/ })
    .click();
  const finding = cart.locator('.finding-stop', { hasText: 'CHG-1' }).first();
  await expect(finding).toBeVisible();
  await expect(finding).toContainText('What to do');
  await finding.locator('.link').first().click();
  await expect(cart.locator('[data-field^="options.0.charger"]:focus-within')).toHaveCount(1);
});

test('saves a plan that opens again with the same figures', async ({ cart }, info) => {
  const field = cart.getByRole('spinbutton', { name: /Rated capacity, Two 12 V 18/ });
  await field.fill('26');
  await field.press('Enter');
  await figuresReady(cart);
  const shown = await runTime(cart, 0);
  const downloading = cart.waitForEvent('download');
  await cart.keyboard.press('Control+s');
  const file = info.outputPath('cart.wain');
  await (await downloading).saveAs(file);
  await expect(cart).not.toHaveTitle(/^•/);
  const saved = JSON.parse(await readFile(file, 'utf8')) as {
    options: { pack: { block: { capacityAh: number } } }[];
  };
  expect(saved.options[0]?.pack.block.capacityAh).toBe(26);
  await cart.reload();
  await figuresReady(cart);
  expect(await runTime(cart, 0)).not.toBe(shown);
  const choosing = cart.waitForEvent('filechooser');
  await cart.keyboard.press('Control+o');
  await (await choosing).setFiles(file);
  await expect.poll(() => runTime(cart, 0)).toBe(shown);
});
