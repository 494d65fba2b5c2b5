import { expect, figuresReady, runTime, test } from './page.ts';

test('keeps a wrong text, says how to mend it, and leaves the figures alone', async ({ cart }) => {
  const before = await runTime(cart, 0);
  const field = cart.getByRole('spinbutton', { name: /Rated capacity, Two 12 V 18/ });
  await field.fill('-3');
  await field.blur();
  await expect(field).toHaveValue('-3');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(cart.locator('.field-error')).toContainText('above 0 to 2,000 A·h');
  expect(await runTime(cart, 0)).toBe(before);
  await field.fill('abc');
  await field.blur();
  await expect(cart.locator('.field-error')).toContainText('Type a number');
  await field.press('Escape');
  await field.fill('18');
  await field.press('Enter');
  await expect(cart.locator('.field-error')).toHaveCount(0);
});

test('asks which reading is meant when a comma can be read two ways', async ({ cart }) => {
  const field = cart.getByRole('spinbutton', { name: /Rated capacity, Two 12 V 18/ });
  await field.fill('1,250');
  await field.blur();
  const question = cart.locator('.field-error');
  await expect(question).toContainText('two ways');
  await question.getByRole('button', { name: '1.25 A·h' }).click();
  await expect(field).toHaveValue('1.25');
});

test('takes a decimal comma and another unit', async ({ cart }) => {
  const mass = cart.getByRole('spinbutton', { name: /Mass, Two 12 V 18/ });
  await mass.fill('5,5');
  await mass.press('Enter');
  await expect(mass).toHaveValue('5.5');
  await mass.fill('10 lb');
  await mass.press('Enter');
  await expect(mass).toHaveValue('4.5359237');
});

test('shows what is assumed where a figure is not known', async ({ cart }) => {
  const field = cart.getByRole('spinbutton', { name: /Inner resistance, Two 12 V 18/ });
  await field.fill('');
  await field.press('Enter');
  await expect(field).toHaveAttribute('placeholder', /^[\d.]+ mΩ assumed$/);
  await figuresReady(cart);
});

test('never alters a stored value by showing it in other units', async ({ cart }) => {
  const mass = cart.getByRole('spinbutton', { name: /Mass, Two 12 V 18/ });
  const metric = await mass.inputValue();
  await cart.getByRole('button', { name: 'Settings', exact: true }).click();
  await cart.getByRole('button', { name: /Units/ }).click();
  await cart.getByRole('option', { name: 'US customary' }).click();
  await cart.keyboard.press('Escape');
  await expect(mass).not.toHaveValue(metric);
  await expect(cart).not.toHaveTitle(/^•/);
  await cart.getByRole('button', { name: 'Settings', exact: true }).click();
  await cart.getByRole('button', { name: /Units/ }).click();
  await cart.getByRole('option', { name: 'Metric' }).click();
  await cart.keyboard.press('Escape');
  await expect(mass).toHaveValue(metric);
});

test('stands still and names the field when the plan contradicts itself', async ({ cart }) => {
  await cart.getByRole('link', { name: 'Machine' }).click();
  const restart = cart.getByRole('spinbutton', { name: /Restarts above/ });
  await restart.fill('15');
  await restart.press('Enter');
  const banner = cart.locator('.banner');
  await expect(banner).toContainText('stand still');
  await cart.keyboard.press('Control+z');
  await expect(banner).toHaveCount(0);
  await figuresReady(cart);
});

/** The field of a place that answers a typed unit, what is typed, and what the field then shows. */
const typed = [
  // 1 lb = 0.45359237 kg exactly. [P] International yard and pound agreement, 1959.
  { place: 'packs', name: /^Mass, Two 12 V 18/, text: '5 lb', shows: '2.26796185' },
  { place: 'packs', name: /^Length, Two 12 V 18/, text: '7.5 in', shows: '190.5', group: 'Limits' },
  { place: 'packs', name: /^Rated capacity, Two 12 V 18/, text: '18500 mAh', shows: '18.5' },
  { place: 'packs', name: /^Inner resistance, Two 12 V 18/, text: '0,012 Ω', shows: '12' },
  { place: 'machine', name: /^Minutes wanted/, text: '1.5 h', shows: '90' },
  // 59 °F = (59 − 32) / 1.8 = 15 °C. [P] definition of the degree Fahrenheit.
  { place: 'machine', name: /^Temperature,/, text: '59 °F', shows: '15' },
  { place: 'machine', name: /^Low-voltage cutoff/, text: '21000 mV', shows: '21' },
] as const;

for (const entry of typed) {
  test(`converts ${entry.text} typed into a field`, async ({ cart }) => {
    await cart.locator(`[data-place=${entry.place}]`).click();
    if ('group' in entry) await cart.getByRole('button', { name: entry.group }).first().click();
    const field = cart.getByRole('spinbutton', { name: entry.name }).first();
    await field.fill(entry.text);
    await field.press('Enter');
    await expect(field).toHaveValue(entry.shows);
    await expect(cart.locator('.field-error')).toHaveCount(0);
    await figuresReady(cart);
  });
}

test('refuses a unit of another kind and says which fits', async ({ cart }) => {
  const field = cart.getByRole('spinbutton', { name: /^Mass, Two 12 V 18/ });
  await field.fill('5 mph');
  await field.blur();
  await expect(cart.locator('.field-error')).toBeVisible();
  await expect(field).toHaveValue('5 mph');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await cart.keyboard.press('Tab');
  await expect(field).toHaveValue('5 mph');
});

test('says the range a value must lie in, in the unit shown', async ({ cart }) => {
  const field = cart.getByRole('spinbutton', { name: /^Inner resistance, Two 12 V 18/ });
  await field.fill('90 Ω');
  await field.blur();
  await expect(cart.locator('.field-error')).toContainText('10,000 mΩ');
});

test('steps with the arrow and page keys and stays inside the range', async ({ cart }) => {
  const field = cart.getByRole('spinbutton', { name: /^Blocks in series, Two 12 V 18/ });
  await field.focus();
  await cart.keyboard.press('ArrowUp');
  await expect(field).toHaveValue('3');
  for (let step = 0; step < 5; step += 1) await cart.keyboard.press('ArrowDown');
  await expect(field).toHaveValue('1');
  await cart.keyboard.press('PageUp');
  await expect(field).toHaveValue('11');
});

test('says what it takes for a figure that is not known, and how far off that may be', async ({
  cart,
}) => {
  const field = cart.getByRole('spinbutton', { name: /^Inner resistance, Two 12 V 18/ });
  await expect(cart.locator('.field-note')).toHaveCount(3);
  await field.fill('');
  await field.press('Enter');
  await expect(field).toHaveAttribute('aria-valuetext', /^not known · [\d.]+ mΩ assumed$/);
  await expect(field).toHaveAccessibleDescription(/[\d.]+ to [\d.]+ mΩ in practice/);
  await figuresReady(cart);
});

test('takes the decimal comma of German and shows it', async ({ cart }) => {
  await cart.getByRole('button', { name: 'Settings', exact: true }).click();
  await cart.getByRole('button', { name: /Language/ }).click();
  await cart.getByRole('option', { name: 'Deutsch' }).click();
  await cart.keyboard.press('Escape');
  const field = cart.locator('[data-field="options.0.pack.block.massKg"]');
  await field.fill('1,250');
  await field.press('Enter');
  await expect(field).toHaveValue('1,25');
  await expect(cart.locator('.field-error')).toHaveCount(0);
});
