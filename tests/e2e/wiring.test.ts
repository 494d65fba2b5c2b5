import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './page.ts';

const open = async (page: Page): Promise<void> => {
  await page.keyboard.press('Alt+5');
  await page.locator('.wiring .diagram').waitFor();
};

/** The button of the findings, whose name counts them by severity. */
const findings = (page: Page) => page.getByRole('button', { name: /^Findings: / });

test('the diagram shows every state, and a branch chosen in it is edited below', async ({
  cart,
}) => {
  await open(cart);
  const diagram = cart.locator('.wiring .diagram');
  await expect(diagram).toContainText('Controller supply');
  for (const state of ['At rest', 'Start', 'Stall', 'Charging', 'Short circuit', 'Cruising']) {
    await cart.getByRole('radio', { name: state, exact: true }).first().check({ force: true });
    await expect(diagram).toContainText('Main line');
  }
  await cart.getByRole('button', { name: 'Edit Controller supply' }).press('Enter');
  await expect(cart.getByRole('heading', { name: 'Branch: Controller supply' })).toBeVisible();
});

test('a thin wire behind the main fuse becomes a stop, undo takes it back, the smallest wire mends it', async ({
  cart,
}) => {
  await open(cart);
  await cart.getByRole('button', { name: 'Edit Controller supply' }).press('Enter');
  await cart.locator('[data-field="wiring.branches.2.conductor"]').click();
  await cart.getByRole('option', { name: '1.5 mm²', exact: true }).click();
  await expect(cart.locator('.wiring .diagram')).toContainText('1.5 mm², 0.4 m');
  // One for all options: a wire of 1.5 mm² does not stand the 40 A fuse.
  await expect(findings(cart)).toHaveAccessibleName(/1 stop/);
  await cart.getByRole('button', { name: /^Undo/ }).click();
  await expect(findings(cart)).not.toHaveAccessibleName(/stop/);
  await cart.getByRole('button', { name: /^Redo/ }).click();
  await expect(findings(cart)).toHaveAccessibleName(/1 stop/);
  await cart.getByRole('button', { name: 'Show the table' }).first().click();
  await cart.getByRole('button', { name: 'Take 4 mm² for Controller supply' }).click();
  await expect(findings(cart)).not.toHaveAccessibleName(/stop/);
});

test('a reading of half the voltage at the last connector fails its step and stops the plan', async ({
  cart,
}) => {
  await open(cart);
  const field = cart.getByRole('spinbutton', {
    name: 'Reading: Pack voltage at the last open connector',
  });
  await field.fill('12.7');
  await field.press('Enter');
  const failed = cart.locator('.step-row[data-verdict="failed"]', { hasText: 'Pack voltage' });
  await expect(failed).toHaveCount(1);
  await expect(findings(cart)).toHaveAccessibleName(/1 stop/);
  await field.fill('25.4');
  await field.press('Enter');
  await expect(failed).toHaveCount(0);
  await expect(cart.locator('.step-row[data-verdict="passed"]')).toHaveCount(1);
  await expect(findings(cart)).not.toHaveAccessibleName(/stop/);
});

test('a new wire in the register is told what to measure and gets its function from the reading', async ({
  cart,
}) => {
  await open(cart);
  await cart.getByRole('button', { name: 'Add wire' }).click();
  const row = cart.locator('.wire-row').last();
  await expect(row).toContainText('open');
  const keyOff = row.getByRole('spinbutton', { name: 'Volts, key off' });
  await keyOff.fill('25,3');
  await keyOff.press('Enter');
  await expect(row).toContainText('battery plus, always live');
});

test('the coordination chart has a table twin and says in words what it shows', async ({
  cart,
}) => {
  await open(cart);
  await expect(cart.locator('.fuse-readings')).toContainText('lies left of the wire');
  await cart.locator('.fuse-split').scrollIntoViewIfNeeded();
  await cart.getByRole('button', { name: 'Show the table' }).last().click();
  await expect(cart.locator('.fuse-split table')).toContainText('1.35 ×');
});

test('a remedy is taken over where the finding stands, named in undo, and brought back by it', async ({
  cart,
}) => {
  await open(cart);
  await cart.getByRole('button', { name: 'Edit Controller supply' }).press('Enter');
  await cart.locator('[data-field="wiring.branches.2.conductor"]').click();
  await cart.getByRole('option', { name: '1.5 mm²', exact: true }).click();
  await expect(findings(cart)).toHaveAccessibleName(/1 stop/);
  const card = cart.locator('.place .finding-stop');
  await expect(card).toContainText('Concerns: every option');
  await card.getByRole('button', { name: /^Plan 4 mm² in Controller supply/ }).click();
  await expect(findings(cart)).not.toHaveAccessibleName(/stop/);
  const undo = cart.getByRole('button', { name: /^Undo: Plan 4 mm² in Controller supply/ });
  await undo.click();
  await expect(findings(cart)).toHaveAccessibleName(/1 stop/);
});

test('the list of findings offers the same remedy, keeps the focus inside, and works by keyboard', async ({
  cart,
}) => {
  await findings(cart).press('Enter');
  const drawer = cart.locator('.drawer');
  const cure = drawer.getByRole('button', { name: /^Set the battery current limit/ });
  await cure.press('Enter');
  await expect(cure).toHaveCount(0);
  await expect(drawer.locator(':focus')).toHaveCount(1);
  await cart.keyboard.press('Escape');
  await expect(
    cart.getByRole('button', { name: /^Undo: Set the battery current limit/ }),
  ).toBeVisible();
});

test('a limit shifted by an expert changes the findings at once and goes back to the usual', async ({
  cart,
}) => {
  await findings(cart).click();
  await cart.getByRole('button', { name: 'Rules and limits' }).click();
  const limit = cart.getByRole('spinbutton', { name: 'Charge left at a sag cutoff, warn above' });
  const row = cart.locator('.limit-row', { has: limit });
  await expect(row).toContainText('Usual: 20');
  const reset = row.getByRole('button', { name: /^Back to the usual/ });
  await expect(reset).toBeDisabled();
  await limit.fill('80');
  await limit.press('Enter');
  await expect(row).toHaveAttribute('data-shifted', 'true');
  await cart.getByRole('tab', { name: 'Rules', exact: true }).click();
  await expect(cart.getByRole('row', { name: /^CUT-2/ })).toContainText('nothing found');
  await cart.getByRole('tab', { name: 'Limits', exact: true }).click();
  await reset.click();
  await expect(row).toHaveAttribute('data-shifted', 'false');
  await cart.getByRole('tab', { name: 'Rules', exact: true }).click();
  await expect(cart.getByRole('row', { name: /^CUT-2/ })).toContainText('Warn');
});

test('diagram and coordination chart are saved as picture and table', async ({ cart }) => {
  await open(cart);
  const save = async (menu: string, entry: string): Promise<string> => {
    await cart.getByRole('button', { name: menu }).click();
    const [download] = await Promise.all([
      cart.waitForEvent('download'),
      cart.getByRole('menuitem', { name: entry }).click(),
    ]);
    return readFile(await download.path(), 'utf8');
  };
  const chart = 'Save: Fuse, wire and motor in time, Main line';
  expect(await save(chart, 'Save as picture (SVG)…')).toContain('Controller limit');
  expect(await save(chart, 'Save table as CSV…')).toMatch(/^at,currentA,fuseEarliestS/);
  const diagram = 'Save: One-line diagram, Cruising';
  expect(await save(diagram, 'Save as picture (SVG)…')).toContain('Controller supply');
  expect(await save(diagram, 'Save table as CSV…')).toContain('cruising currentA');
});

test('the question about the charge port leads to its step, and the answer settles it', async ({
  cart,
}) => {
  await findings(cart).click();
  const question = cart.locator('.drawer .finding-open', { hasText: 'no meter has confirmed' });
  await question.getByRole('button', { name: 'Charge port polarity right' }).click();
  const field = cart.locator('[data-field="wiring.portPolarity"]');
  await expect(field).toBeFocused();
  await field.press('Enter');
  await cart.getByRole('option', { name: 'as it should be' }).click();
  await expect(
    cart.locator('.step-row[data-verdict="passed"]', { hasText: 'Charger plug and port agree' }),
  ).toHaveCount(1);
  await findings(cart).click();
  await expect(question).toHaveCount(0);
});
