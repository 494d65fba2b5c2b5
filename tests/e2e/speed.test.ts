import { expect, figuresReady, runTime, test } from './page.ts';

const edits = 30;

test('shows new headline figures within a tenth of a second of an edit', async ({ cart }) => {
  test.slow();
  const field = cart.getByRole('spinbutton', { name: /Rated capacity, Two 12 V 18/ });
  const times: number[] = [];
  for (let step = 0; step < edits; step += 1) {
    const before = await runTime(cart, 0);
    await field.fill(String(step % 2 === 0 ? 19 + step / 10 : 26 - step / 10));
    await field.press('Enter');
    await expect.poll(() => runTime(cart, 0)).not.toBe(before);
    await figuresReady(cart);
    const words = await cart.locator('.status-figures').innerText();
    times.push(Number(/\(([\d.,]+) ms\)/.exec(words)?.[1]));
  }
  // The first edits pay for code that is not compiled yet, as they do at a desk; they count.
  const sorted = times.toSorted((one, other) => one - other);
  const at = (share: number): number => sorted[Math.ceil(share * edits) - 1] ?? Infinity;
  const words = `edit to figures: p50 ${at(0.5)} ms, p95 ${at(0.95)} ms over ${edits} edits`;
  test.info().annotations.push({ type: 'measured', description: words });
  console.log(words);
  // The budget is 100 ms at a desk; a machine under test load is slower, and the figure is printed.
  if (process.env['STRICT_TIMES'] === '1') expect(at(0.95)).toBeLessThan(100);
  expect(at(0.5)).toBeLessThan(200);
});
