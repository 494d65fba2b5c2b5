import { readFile } from 'node:fs/promises';
import type { BrowserContext, Page } from '@playwright/test';
import { expect, figuresReady, test } from './page.ts';
import { test as plain } from '@playwright/test';

/*
 * The browser as host. The pickers need a person, so they are replaced by ones that hand out files of
 * the browser's own private file system: these are real handles, which can be read, written, compared
 * and kept in the database like any other.
 */
type Picks = { picks: { open: string[]; save: string[]; asked: number } };

const withFiles = async (context: BrowserContext): Promise<Page> => {
  await context.addInitScript(() => {
    const own = globalThis as unknown as Picks;
    own.picks = { open: [], save: [], asked: 0 };
    const pick = async (kind: 'open' | 'save', create: boolean): Promise<unknown> => {
      own.picks.asked += 1;
      const name = own.picks[kind].shift();
      if (name === undefined) throw new DOMException('backed out', 'AbortError');
      const folder = await navigator.storage.getDirectory();
      return folder.getFileHandle(name, { create });
    };
    Object.assign(globalThis, {
      showSaveFilePicker: () => pick('save', true),
      showOpenFilePicker: async () => [await pick('open', false)],
    });
  });
  const page = await context.newPage();
  await page.goto('/');
  await figuresReady(page);
  return page;
};

const willPick = (page: Page, kind: 'open' | 'save', ...names: string[]): Promise<void> =>
  page.evaluate(
    ([which, list]) => {
      (globalThis as unknown as Picks).picks[which].push(...list);
    },
    [kind, names] as const,
  );
const asked = (page: Page): Promise<number> =>
  page.evaluate(() => (globalThis as unknown as Picks).picks.asked);

const readOwn = (page: Page, name: string): Promise<string> =>
  page.evaluate(async (file) => {
    const folder = await navigator.storage.getDirectory();
    return (await (await folder.getFileHandle(file)).getFile()).text();
  }, name);
const writeOwn = (page: Page, name: string, text: string): Promise<void> =>
  page.evaluate(
    async ([file, content]) => {
      const folder = await navigator.storage.getDirectory();
      const stream = await (await folder.getFileHandle(file, { create: true })).createWritable();
      await stream.write(content);
      await stream.close();
    },
    [name, text] as const,
  );

const capacity = (page: Page) =>
  page.getByRole('spinbutton', { name: /Rated capacity, Two 12 V 18/ });
const edit = async (page: Page, value: string): Promise<void> => {
  await capacity(page).fill(value);
  await capacity(page).press('Enter');
  await expect(page).toHaveTitle(/^• /);
};
const saveAs = async (page: Page, name: string): Promise<void> => {
  await willPick(page, 'save', name);
  await page.keyboard.press('Control+s');
  await expect(page).toHaveTitle(new RegExp(`^${name}`));
};

plain.describe('files by handle', () => {
  plain('a plan is saved where asked, and then again without asking', async ({ context }) => {
    const page = await withFiles(context);
    await edit(page, '26');
    await saveAs(page, 'cart.wain');
    expect(await readOwn(page, 'cart.wain')).toContain('"capacityAh": 26');
    await edit(page, '27');
    await page.keyboard.press('Control+s');
    await expect(page).toHaveTitle(/^cart.wain/);
    expect(await readOwn(page, 'cart.wain')).toContain('"capacityAh": 27');
    expect(await asked(page)).toBe(1);
  });

  plain('backing out of the picker changes nothing and says nothing', async ({ context }) => {
    const page = await withFiles(context);
    await edit(page, '26');
    await page.keyboard.press('Control+s');
    await expect.poll(() => asked(page)).toBe(1);
    await expect(page.getByRole('dialog')).toHaveCount(0);
    await expect(page).toHaveTitle(/^• /);
  });

  plain('a file changed elsewhere is replaced only after a question', async ({ context }) => {
    const page = await withFiles(context);
    await edit(page, '26');
    await saveAs(page, 'cart.wain');
    const theirs = (await readOwn(page, 'cart.wain')).replace(
      '"capacityAh": 26',
      '"capacityAh": 7',
    );
    await writeOwn(page, 'cart.wain', theirs);
    await edit(page, '27');
    await page.keyboard.press('Control+s');
    const question = page.getByRole('alertdialog', { name: 'The file has changed outside' });
    await expect(question).toBeVisible();
    expect(await readOwn(page, 'cart.wain')).toBe(theirs);
    await question.getByRole('button', { name: 'Replace' }).click();
    await expect.poll(() => readOwn(page, 'cart.wain')).toContain('"capacityAh": 27');
  });

  plain('a file that was only touched is saved without a question', async ({ context }) => {
    const page = await withFiles(context);
    await edit(page, '26');
    await saveAs(page, 'cart.wain');
    await writeOwn(page, 'cart.wain', await readOwn(page, 'cart.wain'));
    await edit(page, '27');
    await page.keyboard.press('Control+s');
    await expect(page).toHaveTitle(/^cart.wain/);
  });

  plain('on return to the tab a change elsewhere is told once', async ({ context }) => {
    const page = await withFiles(context);
    await edit(page, '26');
    await saveAs(page, 'cart.wain');
    await writeOwn(page, 'cart.wain', `${await readOwn(page, 'cart.wain')} `);
    const focus = (): Promise<boolean> => page.evaluate(() => dispatchEvent(new Event('focus')));
    await focus();
    const question = page.getByRole('alertdialog', { name: 'The file has changed outside' });
    await question.getByRole('button', { name: 'Back to the plan' }).click();
    await focus();
    await page.waitForTimeout(300);
    await expect(question).toHaveCount(0);
  });

  plain('a full disk is told in words and the plan stays unsaved', async ({ context }) => {
    const page = await withFiles(context);
    await edit(page, '26');
    await saveAs(page, 'cart.wain');
    await edit(page, '27');
    await page.evaluate(() => {
      FileSystemFileHandle.prototype.createWritable = () =>
        Promise.reject(new DOMException('full', 'QuotaExceededError'));
    });
    await page.keyboard.press('Control+s');
    await expect(page.getByRole('dialog')).toContainText('The disk is full');
    await expect(page).toHaveTitle(/^• /);
    expect(await readOwn(page, 'cart.wain')).toContain('"capacityAh": 26');
  });

  plain('files opened before stand in the menu and open from there', async ({ context }) => {
    const page = await withFiles(context);
    await edit(page, '26');
    await saveAs(page, 'cart.wain');
    await page.reload();
    await figuresReady(page);
    await page.getByRole('button', { name: 'Commands and settings' }).click();
    await page.getByRole('menuitem', { name: 'cart.wain' }).click();
    await expect(page).toHaveTitle(/^cart.wain/);
    await expect(capacity(page)).toHaveValue('26');
    await page.getByRole('button', { name: 'Commands and settings' }).click();
    await page.getByRole('menuitem', { name: 'Forget these files' }).click();
    await page.getByRole('button', { name: 'Commands and settings' }).click();
    await expect(page.getByRole('menuitem', { name: 'cart.wain' })).toHaveCount(0);
  });

  plain('an export goes where asked, whole', async ({ context }) => {
    const page = await withFiles(context);
    await willPick(page, 'save', 'plan.json');
    await page.keyboard.press('Control+k');
    await page.keyboard.type('plan as JSON');
    await page.keyboard.press('Enter');
    await expect(page.locator('.toast')).toContainText('plan.json');
    expect(JSON.parse(await readOwn(page, 'plan.json'))).toMatchObject({ format: 'cellwain-plan' });
  });
});

test('without pickers a save is a download of the whole plan', async ({ cart }) => {
  await edit(cart, '26');
  const downloading = cart.waitForEvent('download');
  await cart.keyboard.press('Control+s');
  const download = await downloading;
  expect(download.suggestedFilename()).toMatch(/\.wain$/);
  const text = await readFile(await download.path(), 'utf8');
  expect(text).toContain('"capacityAh": 26');
  await expect(cart).toHaveTitle(/^(?!• )/);
});

test('a tab with unsaved edits asks before it goes', async ({ cart }) => {
  await edit(cart, '26');
  const asking = cart.waitForEvent('dialog');
  void cart.close({ runBeforeUnload: true });
  const dialog = await asking;
  expect(dialog.type()).toBe('beforeunload');
  await dialog.dismiss();
  await expect(capacity(cart)).toHaveValue('26');
});

test('the about box lists the packages inside with their licences', async ({ cart }) => {
  await cart.keyboard.press('Control+k');
  await cart.keyboard.type('about');
  await cart.keyboard.press('Enter');
  const dialog = cart.getByRole('dialog', { name: 'Cellwain' });
  await dialog.getByRole('button', { name: /licences/ }).click();
  await expect(dialog.getByText(/^react \d+.*MIT/)).toBeVisible();
});

plain.describe('recovery in the browser', () => {
  const copies = (page: Page): Promise<number> =>
    page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          const opening = indexedDB.open('cellwain', 1);
          opening.addEventListener('success', () => {
            const counting = opening.result.transaction('recovery').objectStore('recovery').count();
            counting.addEventListener('success', () => resolve(counting.result));
          });
        }),
    );
  const start = async (context: BrowserContext): Promise<Page> => {
    const page = await context.newPage();
    await page.goto('/');
    await figuresReady(page);
    return page;
  };
  const offer = (page: Page) => page.getByRole('dialog', { name: 'Unsaved work was found' });

  plain('edits of a tab that ended come back only when asked for', async ({ context }) => {
    const first = await start(context);
    await edit(first, '33');
    await expect.poll(() => copies(first)).toBe(1);
    await first.close();
    const second = await start(context);
    await expect(offer(second)).toContainText('Orchard cart');
    await expect(second).toHaveTitle(/^Orchard cart/);
    await offer(second).getByRole('button', { name: 'Open this copy' }).click();
    await expect(capacity(second)).toHaveValue('33');
    await expect(second).toHaveTitle(/^• /);
  });

  plain('edits of a tab that is open are not offered to another', async ({ context }) => {
    const first = await start(context);
    await edit(first, '33');
    await expect.poll(() => copies(first)).toBe(1);
    const second = await start(context);
    await second.waitForTimeout(500);
    await expect(offer(second)).toHaveCount(0);
    await first.close();
    await second.reload();
    await expect(offer(second)).toBeVisible();
  });

  plain('a save takes the recovery copy away', async ({ context }) => {
    const page = await withFiles(context);
    await edit(page, '33');
    await expect.poll(() => copies(page)).toBe(1);
    await saveAs(page, 'cart.wain');
    await expect.poll(() => copies(page)).toBe(0);
  });

  plain('a damaged copy can only be thrown away', async ({ context }) => {
    const first = await start(context);
    await edit(first, '33');
    await expect.poll(() => copies(first)).toBe(1);
    await first.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const opening = indexedDB.open('cellwain', 1);
          opening.addEventListener('success', () => {
            const store = opening.result
              .transaction('recovery', 'readwrite')
              .objectStore('recovery');
            const reading = store.getAll();
            reading.addEventListener('success', () => {
              const [copy] = reading.result as { text: string }[];
              const writing = store.put({ ...copy, text: `${copy?.text ?? ''} ` });
              writing.addEventListener('success', () => resolve());
            });
          });
        }),
    );
    await first.close();
    const second = await start(context);
    await expect(offer(second)).toContainText('Damaged');
    await expect(offer(second).getByRole('button', { name: 'Open this copy' })).toBeDisabled();
    await offer(second).getByRole('button', { name: 'Throw away' }).click();
    await expect.poll(() => copies(second)).toBe(0);
  });
});
