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
  await expect(cart.locator('.step-row[data-verdict="failed"]')).toHaveCount(1);
  await expect(findings(cart)).toHaveAccessibleName(/1 stop/);
  await field.fill('25.4');
  await field.press('Enter');
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
