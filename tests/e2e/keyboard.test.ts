import { expect, runTime, test } from './page.ts';

test('does the main job without a pointer', async ({ cart }) => {
  const before = await runTime(cart, 0);
  // Into the packs by shortcut, to the field by the way a finding or a palette would lead: by Tab.
  await cart.keyboard.press('Alt+2');
  const field = cart.getByRole('spinbutton', { name: /Rated capacity, Two 12 V 18/ });
  for (let step = 0; step < 80; step += 1) {
    await cart.keyboard.press('Tab');
    if (await field.evaluate((element) => element === document.activeElement)) break;
  }
  await expect(field).toBeFocused();
  await cart.keyboard.press('ArrowUp');
  await cart.keyboard.press('ArrowUp');
  await expect(field).toHaveValue('20');
  await expect.poll(() => runTime(cart, 0)).not.toBe(before);
  // Quick strokes are one step and slow ones two; how quick they arrive is the machine's affair.
  await expect(async () => {
    await cart.keyboard.press('Control+z');
    await expect(field).toHaveValue('18', { timeout: 500 });
  }).toPass();
  await cart.keyboard.press('Alt+3');
  await expect(cart.getByRole('main', { name: 'Run' })).toBeVisible();
  const chart = cart.getByRole('group', { name: /^Discharge/ });
  await chart.focus();
  await cart.keyboard.press('Home');
  const readout = cart.locator('.readout');
  const atStart = await readout.innerText();
  for (let step = 0; step < 20; step += 1) await cart.keyboard.press('ArrowRight');
  expect(await readout.innerText()).not.toBe(atStart);
});

test('finds commands and options by typing', async ({ cart }) => {
  await cart.keyboard.press('Control+k');
  await cart.keyboard.type('machi');
  await cart.keyboard.press('Enter');
  await expect(cart.getByRole('main', { name: 'Machine' })).toBeVisible();
  await cart.keyboard.press('Control+k');
  await cart.keyboard.type('dupl opt');
  await cart.keyboard.press('Enter');
  await expect(cart.locator('.strip-table tbody tr')).toHaveCount(4);
});

test('closes a dialog with Escape and gives the focus back', async ({ cart }) => {
  const opener = cart.getByRole('button', { name: /Choose a block, Two 12 V 18/ });
  await opener.focus();
  await cart.keyboard.press('Enter');
  await expect(cart.getByRole('dialog', { name: 'Choose a block' })).toBeVisible();
  await cart.keyboard.press('Escape');
  await expect(opener).toBeFocused();
});

test('lists the shortcuts', async ({ cart }) => {
  await cart.keyboard.press('Control+/');
  await expect(cart.getByRole('dialog', { name: 'Keyboard shortcuts' })).toContainText('Ctrl+S');
});
