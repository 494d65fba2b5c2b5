import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { axeOn } from './axe.ts';
import { expect, test } from './page.ts';

const open = async (cart: Page): Promise<void> => {
  await cart.getByRole('link', { name: /^Charging/ }).click();
  await expect(cart.getByRole('heading', { name: 'The routine' })).toBeVisible();
};
const firstUse = (cart: Page) => cart.locator('.strip-use').first();

test('shows which chargers fit, and why the one of another option does not', async ({ cart }) => {
  await open(cart);
  const table = cart.getByRole('region', { name: 'Which charger fits?' }).first();
  await expect(table).toContainText('Fits');
  await expect(
    cart.getByText(/May the charger of another option stay\? Does not fit/),
  ).toBeVisible();
  await cart.locator('.option-pick-entry').nth(1).click();
  await expect(cart.getByRole('row', { name: /^LFP charger 24 V 5 A/ })).toContainText('in use');
});

test('takes another charger as one step that undo brings back', async ({ cart }) => {
  await open(cart);
  await cart.getByRole('button', { name: 'Use: Lead charger 24 V 5 A' }).click();
  await expect(cart.getByRole('row', { name: /^Lead charger 24 V 5 A/ })).toContainText('in use');
  await cart.getByRole('button', { name: /^Undo/ }).click();
  await expect(cart.getByRole('row', { name: /^Lead charger 24 V 3 A/ })).toContainText('in use');
});

test('moves an outing by keys and by dragging, each as one step', async ({ cart }) => {
  await open(cart);
  await expect(firstUse(cart)).toHaveAccessibleName('Picking shift, Monday 8:00, 50 min');
  await firstUse(cart).focus();
  await cart.keyboard.press('ArrowRight');
  await expect(firstUse(cart)).toHaveAccessibleName('Picking shift, Monday 8:15, 50 min');
  await cart.keyboard.press('ArrowUp');
  await expect(firstUse(cart)).toHaveAccessibleName('Picking shift, Monday 8:15, 1 h 05 min');
  const box = (await firstUse(cart).boundingBox())!;
  await cart.mouse.move(box.x + 10, box.y + 8);
  await cart.mouse.down();
  await cart.mouse.move(box.x + 210, box.y + 8, { steps: 4 });
  await cart.mouse.up();
  await expect(firstUse(cart)).not.toHaveAccessibleName(/8:15/);
  await cart.getByRole('button', { name: /^Undo/ }).click();
  await expect(firstUse(cart)).toHaveAccessibleName('Picking shift, Monday 8:15, 1 h 05 min');
});

test('charging at weekends only brings a note that outings are starved', async ({ cart }) => {
  await open(cart);
  const findings = cart.getByRole('button', { name: /^Findings:/ });
  const before = await findings.getAttribute('aria-label');
  await cart.getByRole('button', { name: 'Choose: Weekends only' }).click();
  await expect(findings).not.toHaveAttribute('aria-label', before!);
  await findings.click();
  await expect(cart.getByRole('dialog', { name: 'Findings' })).toContainText('CHG-8');
});

test('saves the routine as a calendar that repeats', async ({ cart }) => {
  await open(cart);
  const download = cart.waitForEvent('download');
  await cart.getByRole('button', { name: 'Save as calendar…' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/\.ics$/);
  const text = await readFile(await file.path(), 'utf8');
  expect(text).toMatch(/^BEGIN:VCALENDAR\r\n/);
  expect(text).toContain('RRULE:FREQ=WEEKLY');
  expect(text).toContain('BEGIN:VALARM');
});

test('keeps a time that cannot be read and says how to write it', async ({ cart }) => {
  await open(cart);
  const field = cart.getByRole('textbox', { name: 'Begins, Picking shift' }).first();
  await field.fill('late');
  await field.press('Enter');
  await expect(field).toHaveValue('late');
  await expect(cart.getByText('Write a time such as 8:30 or 20:15.')).toBeVisible();
  await field.fill('9.15');
  await field.press('Enter');
  await expect(field).toHaveValue('9:15');
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`has no accessibility violation in the ${colorScheme} theme`, async ({ cart }) => {
    await cart.emulateMedia({ colorScheme });
    await open(cart);
    const { violations } = await axeOn(cart)
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      .analyze();
    expect(violations).toEqual([]);
  });
}
