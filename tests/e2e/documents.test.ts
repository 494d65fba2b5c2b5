import { writeFile } from 'node:fs/promises';
import { expect, figuresReady, test } from './page.ts';

const bad = [
  { name: 'empty.wain', text: '', says: 'empty' },
  { name: 'cut.wain', text: '{"format": "cellwain-plan", "ver', says: 'breaks off' },
  { name: 'other.wain', text: '{"hello": 1}', says: 'not a plan' },
  { name: 'new.wain', text: '{"format": "cellwain-plan", "version": 999}', says: '999' },
];

for (const { name, text, says } of bad) {
  test(`refuses ${name} with its reason and keeps the open plan`, async ({ cart }, info) => {
    const file = info.outputPath(name);
    await writeFile(file, text);
    const choosing = cart.waitForEvent('filechooser');
    await cart.keyboard.press('Control+o');
    await (await choosing).setFiles(file);
    const dialog = cart.getByRole('dialog', { name: 'The plan was not opened' });
    await expect(dialog).toContainText(says);
    await expect(dialog).toContainText('unchanged');
    await dialog.getByRole('button', { name: 'Close' }).last().click();
    await expect(cart).toHaveTitle(/Orchard cart/);
  });
}

test('asks before a plan with changes goes, and stays when told to', async ({ cart }) => {
  const field = cart.getByRole('spinbutton', { name: /Rated capacity, Two 12 V 18/ });
  await field.fill('26');
  await field.press('Enter');
  await cart.keyboard.press('Alt+n');
  const question = cart.getByRole('alertdialog');
  await expect(question).toContainText('Save the changes');
  await question.getByRole('button', { name: 'Back to the plan' }).click();
  await expect(question).toHaveCount(0);
  await expect(field).toHaveValue('26');
});

test('makes a plan that runs from the answers of the assistant', async ({ cart }) => {
  await cart.keyboard.press('Alt+n');
  const dialog = cart.getByRole('dialog', { name: 'New plan' });
  await dialog.getByRole('textbox', { name: /called/ }).fill('Hay wagon');
  await dialog.getByRole('spinbutton', { name: /Minutes wanted/ }).fill('45');
  await dialog.getByRole('button', { name: 'Make the plan' }).click();
  await expect(cart).toHaveTitle(/Hay wagon/);
  await expect(cart.locator('.strip-table tbody tr')).toHaveCount(2);
  await figuresReady(cart);
  await expect(cart.locator('.strip-hero').first()).toContainText('min');
});

test('opens another sample', async ({ cart }) => {
  await cart.keyboard.press('Control+k');
  await cart.keyboard.type('sample');
  await cart.keyboard.press('Enter');
  await cart.getByRole('button', { name: /Market scooter/ }).click();
  await expect(cart).toHaveTitle(/Market scooter/);
  await figuresReady(cart);
});

test('takes an option out at once and brings it back from the toast', async ({ cart }) => {
  await cart.getByRole('button', { name: /Actions for Two strings/ }).click();
  await cart.getByRole('menuitem', { name: 'Remove' }).click();
  await expect(cart.locator('.strip-table tbody tr')).toHaveCount(2);
  await cart.locator('.toast').getByRole('button', { name: 'Undo' }).click();
  await expect(cart.locator('.strip-table tbody tr')).toHaveCount(3);
});
