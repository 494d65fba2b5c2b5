import { expect, figuresReady, test } from './page.ts';
import type { CDPSession, Page } from '@playwright/test';

const megabyte = 1_000_000;

interface Use {
  readonly usedSize: number;
  readonly backingStorageSize?: number;
}

/** Memory of each worker [MB]: its objects and the buffers behind them. */
async function workerMegabytes(session: CDPSession): Promise<number[]> {
  const found: Promise<number>[] = [];
  session.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
    if (targetInfo.type !== 'worker') return;
    found.push(
      new Promise((done) => {
        session.on('Target.receivedMessageFromTarget', (event) => {
          if (event.sessionId !== sessionId) return;
          const { id, result } = JSON.parse(event.message) as { id?: number; result?: Use };
          if (id !== 1 || result === undefined) return;
          done((result.usedSize + (result.backingStorageSize ?? 0)) / megabyte);
        });
      }),
    );
    const message = JSON.stringify({ id: 1, method: 'Runtime.getHeapUsage' });
    void session.send('Target.sendMessageToTarget', { sessionId, message });
  });
  await session.send('Target.setAutoAttach', {
    autoAttach: true,
    waitForDebuggerOnStart: false,
    flatten: false,
  });
  return Promise.all(found);
}

/** A discharge of 10 MB as a meter writes it. Invented. */
const longLog = (): Buffer => {
  const rows = Array.from({ length: 290_000 }, (_, row) => {
    const volts = 25.4 - row * 1.5e-5;
    return `${row.toString().padStart(8, '0')},${volts.toFixed(6)},${(5 + (row % 7) * 0.01).toFixed(6)},22.500`;
  });
  return Buffer.from(['time_s,pack_V,current_A,temperature_C', ...rows, ''].join('\n'));
};

const readLog = async (page: Page): Promise<void> => {
  await page.keyboard.press('Alt+6');
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Add log' }).click();
  const buffer = longLog();
  expect(buffer.byteLength).toBeGreaterThan(9 * megabyte);
  await (await choosing).setFiles({ name: 'long.csv', mimeType: 'text/csv', buffer });
  await page.getByRole('button', { name: 'Read log' }).click();
  await expect(page.locator('.log-card')).toContainText('rows used', { timeout: 20_000 });
};

test('workers stay small with a log of 10 MB read', async ({ cart }) => {
  test.slow();
  await figuresReady(cart);
  await readLog(cart);
  const session = await cart.context().newCDPSession(cart);
  const workers = await workerMegabytes(session);
  const words = `${workers.length} workers; largest worker ${Math.max(...workers).toFixed(0)} MB`;
  test.info().annotations.push({ type: 'measured', description: words });
  console.log(words);
  expect(workers.length).toBeGreaterThan(1);
  expect(Math.max(...workers)).toBeLessThan(200);
});
