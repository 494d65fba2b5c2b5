import type { Locator, Page } from '@playwright/test';
import { expect, figuresReady, test } from './page.ts';

const open = async (page: Page): Promise<void> => {
  await page.keyboard.press('Alt+1');
  await page.locator('.legs').waitFor();
};

/** The sample with motors, gears and brakes described. */
const openTug = async (page: Page): Promise<void> => {
  await page.keyboard.press('Control+k');
  await page.keyboard.type('sample');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /Campsite tug/ }).click();
  await expect(page).toHaveTitle(/Campsite tug/);
  await figuresReady(page);
  await open(page);
};

const fill = async (field: Locator, value: string): Promise<void> => {
  await field.fill(value);
  await field.press('Enter');
};

const chooseKind = async (page: Page, leg: string, kind: string): Promise<void> => {
  await page.getByRole('button', { name: new RegExp(`Known as, ${leg}`) }).click();
  await page.getByRole('option', { name: kind, exact: true }).click();
};

/** Two minutes at 6 A with a start of 30 A, one row a second, current counted downwards. Invented. */
const log = [
  'time_s,pack_V,current_A',
  ...Array.from({ length: 121 }, (_, row) =>
    [row, (25.2 - row / 200).toFixed(2), row < 3 ? -30 : -6].join(','),
  ),
  '',
].join('\n');

const attachLog = async (page: Page): Promise<void> => {
  const dialog = page.getByRole('dialog', { name: 'Attach a log' });
  const chooser = page.waitForEvent('filechooser');
  await dialog.getByRole('button', { name: 'Choose a log file' }).click();
  await (
    await chooser
  ).setFiles({ name: 'lane.csv', mimeType: 'text/csv', buffer: Buffer.from(log) });
  await dialog.getByRole('button', { name: 'Read log' }).click();
  await dialog.getByRole('button', { name: /^Take .* for this leg/ }).click();
  await expect(dialog).toHaveCount(0);
};

test('a leg known by clamp-meter amps changes the run, and undo brings its load back', async ({
  cart,
}) => {
  await open(cart);
  const before = await cart.locator('.strip-hero').first().innerText();
  await chooseKind(cart, 'Haul crates down the row', 'Clamp-meter amps on a surface');
  await fill(cart.getByRole('spinbutton', { name: /Clamp-meter amps .*, Haul crates/ }), '6');
  await expect.poll(() => cart.locator('.strip-hero').first().innerText()).not.toBe(before);
  await cart.getByRole('button', { name: /^Undo/ }).click();
  await cart.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(() => cart.locator('.strip-hero').first().innerText()).toBe(before);
});

test('a log attached to a leg sets its length and stands beside the motor model, which is scaled to it and back', async ({
  cart,
}) => {
  test.slow();
  await openTug(cart);
  await chooseKind(cart, 'Lane with trailer, level', 'Replayed log');
  await attachLog(cart);
  const details = cart.locator('.leg-details').first();
  await expect(details).toContainText('2 min 1 s logged: 6.6 A on average');
  await expect(details).toContainText('30 A at most');
  await expect(cart.getByRole('spinbutton', { name: 'Duration, Lane with trailer' })).toHaveValue(
    /^2/,
  );
  const ways = cart.getByRole('button', { name: /^Ways of giving the load/ });
  if ((await ways.getAttribute('aria-expanded')) === 'false') await ways.click();
  const table = cart.locator('.ways');
  await expect(table).toContainText('Motor model');
  await expect(table).toContainText('1 of 4 legs');
  await cart.getByRole('button', { name: 'Let Motor model count' }).click();
  await expect(details).toContainText('Target speed');
  await cart.getByRole('button', { name: 'Scale the model to Log' }).click();
  const note = cart.locator('.scaled-note');
  await expect(note).toContainText('Scaled to a reading (Log, outing "Luggage rounds")');
  await note.getByRole('button', { name: 'Take the scaling back' }).click();
  await expect(note).toHaveCount(0);
  await expect(
    cart.getByRole('spinbutton', { name: 'Road resistance against the table' }),
  ).toHaveValue('100');
});

test('a drive is described, takes a motor of the library and shows at once what it is', async ({
  cart,
}) => {
  await open(cart);
  await cart.getByRole('button', { name: 'Describe the drive' }).click();
  await cart.getByRole('button', { name: 'Choose a motor' }).click();
  const dialog = cart.getByRole('dialog', { name: 'Choose a motor' });
  await dialog.getByRole('button', { name: /24 V, 370 W/ }).click();
  const fit = cart.locator('.drive-fit').filter({ hasText: 'Fitted' });
  await expect(fit).toContainText('100 mΩ winding');
  await expect(fit).toContainText('240 A stalled');
  await fill(cart.getByRole('spinbutton', { name: 'Winding resistance' }), '0.15');
  await expect(fit).toContainText('160 A stalled');
  await fill(cart.getByRole('spinbutton', { name: 'Rated speed' }), '3000');
  await expect(cart.locator('main')).toContainText('one of them is off');
});

test('a driven outing of a usual kind comes with one choice and runs', async ({ cart }) => {
  await openTug(cart);
  await cart.getByRole('button', { name: 'Add a driven outing' }).click();
  await cart.getByRole('menuitem', { name: 'Stop and go' }).click();
  await expect(cart.getByRole('tab', { name: 'Stop and go' })).toHaveAttribute(
    'aria-selected',
    'true',
  );
  await figuresReady(cart);
  await cart.keyboard.press('Alt+3');
  const drive = cart.getByRole('group', { name: 'The drive on this outing' });
  await expect(drive).toContainText('Energy for each km');
  await expect(cart.getByRole('group', { name: 'From pack to wheel' })).toContainText('Rolling');
  await expect(cart.getByRole('radio', { name: 'Speed' })).toHaveCount(1);
});

test('the stopping helper goes from a wish to a resistor in the plan, with its temperature and its working', async ({
  cart,
}) => {
  await openTug(cart);
  await fill(cart.getByRole('spinbutton', { name: 'Wished deceleration' }), '2');
  const helper = cart.locator('.stop-helper');
  await expect(helper).toContainText('Resistor, repeated stops');
  await helper.getByRole('button', { name: /Standard value/ }).click();
  await expect(cart.getByRole('dialog', { name: 'Standard value (E12)' })).toContainText(
    'Rb = k v/I − R',
  );
  await cart.keyboard.press('Escape');
  const field = cart.locator('input[data-field="machine.drive.brakes.resistor.resistanceOhm"]');
  const before = await field.inputValue();
  await helper.getByRole('button', { name: 'Use this resistor' }).click();
  await expect(field).not.toHaveValue(before);
  await cart.getByRole('button', { name: /^Undo/ }).click();
  await expect(field).toHaveValue(before);
});

test('the view of the voltages asks instead of claiming where a figure is missing', async ({
  cart,
}) => {
  await openTug(cart);
  const table = cart.getByRole('group', { name: 'What the voltage does' });
  await expect(table.getByRole('row', { name: /Top speed/ })).toContainText(/\d/);
  const load = table.getByRole('row', { name: /Motor load there/ });
  await expect(load).not.toContainText('?');
  await fill(cart.getByRole('spinbutton', { name: 'Rated power' }).first(), '');
  await expect(load).toContainText('?');
  await expect(cart.locator('.drive-questions')).toContainText(
    'What power is the motor rated for?',
  );
});

test('an option gets a controller of its own, whose limit shows in the view of the voltages', async ({
  cart,
}) => {
  await openTug(cart);
  await cart.keyboard.press('Alt+2');
  await cart.getByRole('button', { name: 'Controller', exact: true }).click();
  await cart.getByRole('button', { name: /Which controller, 24 V lead/ }).click();
  await cart.getByRole('option', { name: 'Its own' }).click();
  await fill(cart.getByRole('spinbutton', { name: /Motor current limit, 24 V lead/ }), '20');
  await fill(cart.getByRole('spinbutton', { name: /Ramp up, 24 V lead/ }), '2');
  await open(cart);
  const start = cart
    .getByRole('group', { name: 'What the voltage does' })
    .getByRole('row', { name: /Start, each motor/ });
  await expect(start).toContainText(/20\s*set by the motor limit/);
});
