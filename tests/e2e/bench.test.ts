import type { Page } from '@playwright/test';
import { expect, figuresReady, runTime, test } from './page.ts';

/**
 * A steady discharge of a 24 V lead pack that holds a tenth more than its label says, with a row of remark, a row without
 * volts and the current counted backwards. Invented.
 */
function log(amps: number, name: string): string[] {
  const hours = 20 / amps;
  return Array.from({ length: 241 }, (_, row) => {
    const share = row / 240;
    const volts = 25.4 - share * 2.2 - Math.max(0, share - 0.95) * 40 - amps * 0.06;
    return `${name},${(share * hours * 3600).toFixed(1)},${volts.toFixed(3)},${(-amps).toFixed(2)}`;
  });
}
const csv = [
  'run,time_s,pack_V,current_A',
  ...log(5, 'fast'),
  '# invented',
  'fast,9999,,5',
  ...log(1, 'slow'),
  '',
].join('\n');

const open = async (page: Page): Promise<void> => {
  await page.keyboard.press('Alt+6');
  await page.locator('.bench').waitFor();
};

const addLog = async (page: Page, text: string): Promise<void> => {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Add log' }).click();
  await (
    await chooser
  ).setFiles({ name: 'cart.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
};

test('a log is read with guessed columns, fitted, predicted, and taken into the plan in one step that undo takes back', async ({
  cart,
}) => {
  await open(cart);
  await addLog(cart, csv);
  await expect(cart.getByRole('button', { name: 'pack_V Volts of the pack' })).toBeVisible();
  await cart.getByRole('button', { name: 'Read log' }).click();
  await expect(cart.locator('.log-card')).toContainText(
    '482 of 484 rows used, 1 remarks, 1 without volts',
  );
  await expect(cart.locator('.log-card')).toContainText('sign turned');
  await cart.getByRole('button', { name: 'Fit chosen runs' }).click();
  await expect(
    cart.getByRole('heading', { name: 'Each run predicted from the others' }),
  ).toBeVisible();
  await expect(cart.locator('.fit-figures')).toContainText('Model against log');
  const before = await runTime(cart, 0);
  await cart.getByRole('button', { name: 'Take into the plan' }).click();
  await expect(cart.locator('.bench-in-plan')).toContainText('fitted from cart.csv (fast, slow)');
  await expect(cart.getByRole('heading', { name: 'Health of the blocks' })).toBeVisible();
  await expect.poll(() => runTime(cart, 0)).not.toBe(before);
  await cart.getByRole('button', { name: /^Undo: Take into the plan/ }).click();
  await expect(cart.locator('.bench-in-plan')).toHaveCount(0);
  await expect.poll(() => runTime(cart, 0)).toBe(before);
});

test('a file that is no log says what is missing and can be removed', async ({ cart }) => {
  await open(cart);
  await addLog(cart, 'cell,soc,ocv_V\na,0.1,3.2\na,0.2,3.3\n');
  await expect(cart.locator('.log-card')).toContainText('No column of time');
  await cart.getByRole('button', { name: 'Remove cart.csv' }).click();
  await expect(cart.locator('.log-card')).toHaveCount(0);
});

test('a reading of the run time is judged against the plan', async ({ cart }) => {
  await open(cart);
  await cart.getByRole('button', { name: 'Add reading', exact: true }).click();
  await cart.getByRole('menuitem', { name: 'Time to cutoff' }).click();
  const field = cart.getByRole('spinbutton', { name: 'Minutes until it stopped' });
  await field.fill('20');
  await field.press('Enter');
  await expect(cart.getByRole('row', { name: /Run time/ })).toContainText('worse');
  await expect(cart.locator('.bench-gap')).toContainText(
    'No reading so far explains the difference',
  );
});

test('the prediction test shows as curves, as a table and as CSV, and the label comes back whole', async ({
  cart,
}) => {
  await open(cart);
  await addLog(cart, csv);
  await cart.getByRole('button', { name: 'Read log' }).click();
  await cart.getByRole('spinbutton', { name: 'Charge at the start' }).fill('100');
  await cart.getByRole('button', { name: 'Fit chosen runs' }).click();
  const charts = cart.locator('.fit-charts');
  await expect(charts.getByRole('radio', { name: 'Predicted from the others' })).toBeVisible();
  await charts.getByText('Predicted from the others', { exact: true }).click();
  await expect(charts.locator('canvas').first()).toBeVisible();
  await charts.getByRole('button', { name: 'Show as table' }).click();
  await expect(charts.getByRole('table').first()).toContainText('fast, logged');
  await charts.getByRole('button', { name: 'Copy and save' }).click();
  const saving = cart.waitForEvent('download');
  await cart.getByRole('menuitem', { name: /Save.*CSV/ }).click();
  expect((await saving).suggestedFilename()).toContain('prediction');
  await expect(cart.locator('.fit-result')).toContainText('begun at 100 % charge: as entered');
  const before = await runTime(cart, 0);
  await cart.getByRole('button', { name: 'Take into the plan' }).click();
  await expect.poll(() => runTime(cart, 0)).not.toBe(before);
  await cart.getByRole('button', { name: 'Go back to the label' }).click();
  await expect(cart.locator('.bench-in-plan')).toHaveCount(0);
  await expect.poll(() => runTime(cart, 0)).toBe(before);
});

test('speeds with their current give the road resistance, taken in and back in one step', async ({
  cart,
}) => {
  await cart.keyboard.press('Control+k');
  await cart.keyboard.type('sample');
  await cart.keyboard.press('Enter');
  await cart.getByRole('button', { name: /Campsite tug/ }).click();
  await expect(cart).toHaveTitle(/Campsite tug/);
  await figuresReady(cart);
  await open(cart);
  for (const [seconds, amps] of [
    ['36', '22'],
    ['24', '26'],
  ] as const) {
    await cart.getByRole('button', { name: 'Add reading', exact: true }).click();
    await cart.getByRole('menuitem', { name: /^Speed/ }).click();
    const reading = cart.locator('.reading').first();
    for (const [name, value] of [
      ['Time', seconds],
      ['Pack current meanwhile', amps],
    ] as const) {
      const field = reading.getByRole('spinbutton', { name: new RegExp(`^${name}`) });
      await field.fill(value);
      await field.press('Enter');
    }
  }
  await expect(
    cart.getByRole('row', { name: /Rolling resistance against the table/ }),
  ).toBeVisible();
  await cart.getByRole('button', { name: 'Take the road into the plan' }).click();
  await expect(cart.locator('.bench-in-plan')).toContainText('fitted from 2 readings');
  await cart.getByRole('button', { name: /^Undo: Take the road/ }).click();
  await expect(cart.locator('.bench-in-plan')).toHaveCount(0);
});
