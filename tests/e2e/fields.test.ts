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
