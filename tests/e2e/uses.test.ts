import type { Page } from '@playwright/test';
import { expect, figuresReady, runTime, stripRow, test } from './page.ts';

const door = (page: Page, question: string) =>
  page.getByRole('navigation', { name: 'Where to begin' }).getByRole('button', { name: question });

test('answers two 12 V blocks against one 24 V pack within the first screen', async ({ cart }) => {
  await door(cart, 'Which pack?').click();
  await expect(
    cart.getByRole('spinbutton', { name: /Blocks in series, Two 12 V 18/ }),
  ).toBeFocused();
  // The strip names both, their minutes, their end and their price; the table says which is best and by how much.
  await expect(stripRow(cart, 0)).toContainText('Two 12 V 18');
  await expect(stripRow(cart, 1)).toContainText('One 24 V 20');
  const table = cart.getByRole('table', { name: 'Compare' });
  const runs = table.getByRole('row', { name: /^Runs/ });
  await expect(runs).toContainText('best');
  await expect(runs).toContainText('+');
  // From another base the differences turn round.
  await cart.getByRole('button', { name: /Base/ }).click();
  await cart.getByRole('option', { name: /One 24 V 20/ }).click();
  await expect(runs).toContainText('−');
  // The whole plan at 24 V from one pack instead: change it and see what stays.
  const before = await runTime(cart, 0);
  const series = cart.getByRole('spinbutton', { name: /Strings in parallel, Two 12 V 18/ });
  await series.fill('2');
  await series.press('Enter');
  await expect.poll(() => runTime(cart, 0)).not.toBe(before);
});

test('says in minutes what the accessories cost, and gives them back when switched off', async ({
  cart,
}) => {
  await door(cart, 'Do my accessories cost run time?').click();
  await expect(cart.getByRole('main', { name: 'Machine' })).toBeVisible();
  await expect(cart.locator('[data-field^="machine.accessories"]:focus')).toHaveCount(1);
  const before = await runTime(cart, 0);
  for (const name of ['Work light, front', 'Work light, rear', 'Radio']) {
    await cart.getByRole('switch', { name: `On: ${name}` }).press('Space');
  }
  await expect.poll(() => runTime(cart, 0)).not.toBe(before);
  await cart.locator('[data-place=run]').click();
  const answer = cart.locator('section', { hasText: 'What do the accessories cost?' });
  await expect(answer).toContainText('All off');
  // Switched back on by undo, one named step each.
  for (let step = 0; step < 3; step += 1) {
    await cart.getByRole('button', { name: /^Undo/ }).click();
  }
  await expect.poll(() => runTime(cart, 0)).toBe(before);
});

test('finds the charging routine of the week and saves it as a calendar', async ({
  cart,
}, info) => {
  await door(cart, 'When must I charge?').click();
  await expect(cart.getByRole('main', { name: 'Charging' })).toBeVisible();
  await expect(cart.getByRole('heading', { name: 'Which charger fits?' })).toBeVisible();
  const routine = cart.locator('section', {
    has: cart.getByRole('heading', { name: 'The routine' }),
  });
  await expect(routine).toContainText('Proposed', { timeout: 20_000 });
  const downloading = cart.waitForEvent('download');
  await routine.getByRole('button', { name: /calendar/i }).click();
  const file = info.outputPath('week.ics');
  await (await downloading).saveAs(file);
});

test('keeps options in order, doubles, renames and notes them, up to twelve', async ({ cart }) => {
  test.slow();
  const menu = async (name: RegExp, item: string): Promise<void> => {
    await cart.getByRole('button', { name }).first().click();
    await cart.getByRole('menuitem', { name: item }).click();
  };
  await menu(/Actions for Two 12 V 18/, 'Move right');
  await expect(stripRow(cart, 1)).toContainText('Two 12 V 18');
  for (let count = 3; count < 12; count += 1) await menu(/^Actions for One 24 V 20/, 'Duplicate');
  await expect(cart.locator('.strip-table tbody tr')).toHaveCount(12);
  await cart
    .getByRole('button', { name: /^Actions for One 24 V 20/ })
    .first()
    .click();
  await expect(cart.getByRole('menuitem', { name: 'Duplicate' })).toHaveAttribute(
    'aria-disabled',
    'true',
  );
  await cart.keyboard.press('Escape');
  const name = cart.locator('[data-field="options.2.name"]');
  await name.fill('Spare pack');
  await name.press('Enter');
  await expect(stripRow(cart, 2)).toContainText('Spare pack');
  const note = cart.locator('[data-field="options.2.note"]');
  await note.fill('Quoted on Monday');
  await note.blur();
  await figuresReady(cart);
  await expect(cart.getByRole('table', { name: 'Compare' }).locator('thead th')).toHaveCount(13);
});

test('tries a figure by its slider, puts it back, and keeps it as one step', async ({ cart }) => {
  const field = cart.getByRole('spinbutton', { name: /Rated capacity, Two 12 V 18/ });
  const before = await runTime(cart, 0);
  await field.focus();
  await cart.keyboard.press('Alt+Enter');
  const trial = cart.getByRole('dialog', { name: /What if\?/ });
  const slider = trial.getByRole('slider');
  await expect(slider).toBeFocused();
  for (let step = 0; step < 6; step += 1) await cart.keyboard.press('ArrowRight');
  await expect(trial).toContainText('was 18 A·h');
  await expect.poll(() => runTime(cart, 0)).not.toBe(before);
  await expect(trial.getByRole('row', { name: /Two 12 V 18/ })).toContainText('+');
  await trial.getByRole('button', { name: 'Put back' }).click();
  await expect(field).toHaveValue('18');
  await expect.poll(() => runTime(cart, 0)).toBe(before);
  await expect(cart).not.toHaveTitle(/^•/);
  await field.hover();
  await cart.getByRole('button', { name: /Try other values of Rated capacity/ }).click();
  for (let step = 0; step < 6; step += 1) await cart.keyboard.press('ArrowRight');
  await trial.getByRole('button', { name: 'Keep' }).click();
  await expect(field).toHaveValue('21');
  await cart.getByRole('button', { name: /^Undo/ }).click();
  await expect(field).toHaveValue('18');
  await expect(cart).not.toHaveTitle(/^•/);
});

test('takes a rating table and a pasted discharge curve', async ({ cart }) => {
  const before = await runTime(cart, 0);
  await cart.getByRole('button', { name: /^Capacity at other rates: Two 12 V 18/ }).click();
  const dialog = cart.getByRole('dialog', { name: /Capacity at other rates/ });
  await dialog.getByText('Rating table').click();
  const hour = dialog.getByRole('spinbutton', { name: /Capacity at that time, point 4/ });
  await hour.fill('8');
  await hour.press('Enter');
  await expect.poll(() => runTime(cart, 0)).not.toBe(before);
  const wrong = dialog.getByRole('spinbutton', { name: /Capacity at that time, point 3/ });
  await wrong.fill('7');
  await wrong.press('Enter');
  await expect(dialog.getByRole('alert')).toContainText('slower discharge');
  await dialog.getByText('Discharge curves').click();
  const points = dialog.getByRole('textbox', { name: 'Minutes and volts' });
  await points.fill('0 12,9\n300 12,4\nlots');
  await points.blur();
  await expect(dialog.locator('.field-error')).toContainText('Line 3');
  await points.fill('0 12,9\n300\t12,4\n600;11,9\n1100 10,8');
  await points.blur();
  await expect(dialog).toContainText('4 points over');
  await dialog.getByRole('button', { name: 'Done' }).click();
  await expect(cart.getByText('by 1 discharge curve')).toBeVisible();
  await figuresReady(cart);
});

test('describes a weak cell group, and keeps and changes own parts', async ({ cart }) => {
  const before = await runTime(cart, 1);
  await cart.getByRole('button', { name: /^Blocks that differ: One 24 V 20/ }).click();
  const differ = cart.getByRole('dialog', { name: /Blocks that differ/ });
  await differ.getByRole('button', { name: 'A group differs' }).click();
  const capacity = differ.getByRole('spinbutton', { name: /Capacity against the others, group 1/ });
  await capacity.fill('70');
  await capacity.press('Enter');
  await expect.poll(() => runTime(cart, 1)).not.toBe(before);
  await cart.keyboard.press('Escape');
  await cart.getByRole('button', { name: /^Actions for One 24 V 20/ }).click();
  await cart.getByRole('menuitem', { name: 'Keep block as own part' }).click();
  await cart.getByRole('button', { name: 'Own parts', exact: true }).click();
  const own = cart.getByRole('dialog', { name: 'Own parts' });
  const name = own.getByRole('textbox', { name: 'Name' });
  await name.fill('Shop pack 24 V');
  await name.press('Enter');
  await own.getByRole('button', { name: 'Done' }).click();
  await cart.getByRole('button', { name: /Choose a block, Two 12 V 18/ }).click();
  await expect(cart.getByRole('dialog', { name: 'Choose a block' })).toContainText(
    'Shop pack 24 V',
  );
});

test('opens a working from every place where a figure stands', async ({ cart }) => {
  const open = async (button: RegExp, says: RegExp): Promise<void> => {
    await cart.getByRole('button', { name: button }).first().click();
    const working = cart.getByRole('dialog');
    await expect(working).toContainText(says);
    await expect(working).toContainText('Source');
    await cart.keyboard.press('Escape');
    await expect(working).toHaveCount(0);
  };
  await open(/Runs: show the working/, /OCV/);
  await open(/Lowest bus voltage, .*: show the working/, /cable/i);
  await cart.locator('[data-place=run]').click();
  await open(/Motor circuit, .*: show the working/, /∫/);
  await open(/Peukert: show the working/, /Peukert|C|H/);
  await cart.locator('[data-place=charging]').click();
  await open(/From the mains.*: show the working/, /η/);
  await open(/Charger done after.*: show the working/, /held/);
});
