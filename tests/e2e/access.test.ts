import type { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { axeOn } from './axe.ts';
import { expect, figuresReady, sheetReady, test } from './page.ts';

/** Popovers are dialogs at the end of the page, outside of its landmarks. */
const without = ['region'];
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const listed = (result: Awaited<ReturnType<AxeBuilder['analyze']>>, theme: string): string[] =>
  result.violations.map(
    ({ id, nodes }) => `${theme}, ${id}: ${nodes.map(({ target }) => String(target)).join(' | ')}`,
  );

/** Waits for the colours on their way from one theme to the other. */
const settled = (page: Page) =>
  page.evaluate(async () => {
    await Promise.allSettled(document.getAnimations().map(({ finished }) => finished));
  });

/**
 * Breaches in both themes. The dark one has the same structure, so that there only colours are looked at, and with a
 * dialog open only those of the dialog.
 */
const violations = async (page: Page, colouredPart = 'html'): Promise<string[]> => {
  const light = await axeOn(page).withTags(rules).disableRules(without).analyze();
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await settled(page);
  const dark = await axeOn(page).include(colouredPart).withRules(['color-contrast']).analyze();
  await page.emulateMedia({ colorScheme: 'light' });
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'light');
  return [...listed(light, 'light'), ...listed(dark, 'dark')];
};

/** Breaches of an open dialog. */
const violationsOfDialog = async (page: Page): Promise<string[]> => {
  await expect(page.getByRole('dialog').first()).toBeVisible();
  await settled(page);
  return violations(page, '.overlay, .popover');
};

/** Closes whatever is open, however deep. */
const closeDialogs = async (page: Page): Promise<void> => {
  await expect(async () => {
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog')).toHaveCount(0, { timeout: 500 });
  }).toPass();
};

/** Every place of the window. */
const places = ['machine', 'packs', 'run', 'charging', 'wiring', 'bench', 'sheet'];

/** Dialogs that leave the plan as it is; one page shows them one after another. */
const readingDialogs = {
  findings: (page: Page) => page.getByRole('button', { name: /^Findings: / }).click(),
  limits: async (page: Page) => {
    await page.getByRole('button', { name: /^Findings: / }).click();
    await page.getByRole('button', { name: 'Rules and limits' }).click();
  },
  'the list of rules': async (page: Page) => {
    await page.getByRole('button', { name: /^Findings: / }).click();
    await page.getByRole('button', { name: 'Rules and limits' }).click();
    await page.getByRole('tab', { name: 'Rules', exact: true }).click();
  },
  palette: (page: Page) => page.keyboard.press('Control+k'),
  shortcuts: (page: Page) => page.keyboard.press('Control+/'),
  'new plan': (page: Page) => page.keyboard.press('Alt+n'),
  'pack search': async (page: Page) => {
    await page.locator('[data-place=packs]').click();
    await page.getByRole('button', { name: 'Add option' }).click();
    await page.getByRole('menuitem', { name: /^Find packs/ }).click();
  },
  'block picker': (page: Page) =>
    page.getByRole('button', { name: /Choose a block, Two 12 V 18/ }).click(),
  'differing blocks': (page: Page) =>
    page.getByRole('button', { name: /^Blocks that differ: Two 12 V 18/ }).click(),
  'a trial': async (page: Page) => {
    await page.getByRole('spinbutton', { name: /^Rated capacity, Two 12 V 18/ }).focus();
    await page.keyboard.press('Alt+Enter');
  },
  'a working': (page: Page) => page.locator('.strip-hero .figure-button').first().click(),
} as const;

/** Dialogs that change the plan or build on what they changed; each has a page of its own. */
const editingDialogs = {
  'a rating table': async (page: Page) => {
    await page.getByRole('button', { name: /^Capacity at other rates: Two 12 V 18/ }).click();
    await page.getByText('Rating table').click();
  },
  'discharge curves': async (page: Page) => {
    await page.getByRole('button', { name: /^Capacity at other rates: Two 12 V 18/ }).click();
    await page.getByText('Discharge curves').click();
  },
  'cell groups': async (page: Page) => {
    await page.getByRole('button', { name: /^Blocks that differ: One 24 V/ }).click();
    await page.getByRole('button', { name: 'A group differs' }).click();
  },
  'own parts': async (page: Page) => {
    await page.getByRole('button', { name: /^Actions for One 24 V 20/ }).click();
    await page.getByRole('menuitem', { name: 'Keep block as own part' }).click();
    await page.getByRole('button', { name: 'Own parts', exact: true }).click();
  },
} as const;

test.describe('in both themes', () => {
  test.use({ colorScheme: 'light' });

  for (const some of [places.slice(0, 3), places.slice(3)]) {
    test(`the places ${some.join(', ')} break no accessibility rule`, async ({ cart }) => {
      test.slow();
      for (const place of some) {
        await cart.locator(`[data-place=${place}]`).click();
        await expect(cart.getByRole('main', { name: new RegExp(`^${place}`, 'i') })).toBeVisible();
        await expect(cart.locator('main h2').first()).toBeVisible({ timeout: 20_000 });
        if (place === 'sheet') await sheetReady(cart);
        await settled(cart);
        expect(await violations(cart), place).toEqual([]);
      }
    });
  }

  test('fields in trouble and unfolded details break no accessibility rule', async ({ cart }) => {
    test.slow();
    const field = cart.getByRole('spinbutton', { name: /^Rated capacity, Two 12 V 18/ });
    await field.fill('1,250');
    await field.blur();
    const other = cart.getByRole('spinbutton', { name: /^Mass, Two 12 V 18/ });
    await other.fill('many');
    await other.blur();
    for (const head of ['More about the charger', 'Limits and size', 'Battery management']) {
      await cart.getByRole('button', { name: head }).click();
    }
    expect(await violations(cart)).toEqual([]);
    await cart.locator('[data-place=run]').click();
    await cart.getByText('Single blocks').click();
    await cart.getByRole('button', { name: 'Show as table' }).click();
    for (const fold of await cart.locator('main .disclosure-button').all()) await fold.click();
    expect(await violations(cart)).toEqual([]);
  });

  const all = Object.entries(readingDialogs);
  for (const some of [all.slice(0, 6), all.slice(6)]) {
    const names = some.map(([name]) => name).join(', ');
    test(`${names} break no accessibility rule`, async ({ cart }) => {
      test.slow();
      for (const [name, open] of some) {
        await open(cart);
        expect(await violationsOfDialog(cart), name).toEqual([]);
        await closeDialogs(cart);
      }
    });
  }

  for (const [name, open] of Object.entries(editingDialogs)) {
    test(`${name} breaks no accessibility rule`, async ({ cart }) => {
      await open(cart);
      expect(await violationsOfDialog(cart)).toEqual([]);
    });
  }
});

test('follows the system theme until one is chosen', async ({ cart }) => {
  await cart.emulateMedia({ colorScheme: 'dark' });
  await expect(cart.locator('html')).toHaveAttribute('data-theme', 'dark');
  await cart.getByRole('button', { name: 'Settings', exact: true }).click();
  await cart.getByRole('button', { name: /Appearance/ }).click();
  await cart.getByRole('option', { name: 'Light' }).click();
  await expect(cart.locator('html')).toHaveAttribute('data-theme', 'light');
});

test('stays usable at twice the size in a small window', async ({ cart }) => {
  // A window of 900 x 600 at 200 % lays out as one of 450 x 300.
  await cart.setViewportSize({ width: 450, height: 300 });
  for (const place of places) {
    await cart.keyboard.press(`Alt+${places.indexOf(place) + 1}`);
    const head = cart.locator('main h2').first();
    await expect(head).toBeVisible({ timeout: 20_000 });
    const sideways = await cart.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(sideways, place).toBeLessThanOrEqual(0);
    await head.scrollIntoViewIfNeeded();
    await expect(head).toBeInViewport();
  }
});

test('keeps every target at 24 pixels or more', async ({ cart }) => {
  for (const place of places) {
    await cart.locator(`[data-place=${place}]`).click();
    await cart.waitForTimeout(300);
    const small = await cart.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('button, label.toggle, label.tab, a[href]')]
        .filter((element) => element.offsetParent !== null && !element.closest('.skip-link'))
        .map((element) => ({ element, box: element.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 2 && (box.height < 23.5 || box.width < 23.5))
        .map(({ element, box }) => `${element.className} ${box.width}x${box.height}`),
    );
    expect(small, place).toEqual([]);
  }
});

test('is complete in German', async ({ cart }) => {
  await cart.getByRole('button', { name: 'Settings', exact: true }).click();
  await cart.getByRole('button', { name: /Language/ }).click();
  await cart.getByRole('option', { name: 'Deutsch' }).click();
  await cart.keyboard.press('Escape');
  await expect(cart.locator('html')).toHaveAttribute('lang', 'de');
  await expect(cart.getByRole('link', { name: 'Akkus' })).toBeVisible();
  await expect(cart.locator('.matrix')).toContainText('Nennkapazität');
});

test('announces that the figures are there', async ({ cart }) => {
  const field = cart.getByRole('spinbutton', { name: /Rated capacity, Two 12 V 18/ });
  await field.fill('26');
  await field.press('Enter');
  await figuresReady(cart);
  await expect(cart.locator('[role=status]', { hasText: 'Figures are up to date' })).toHaveCount(1);
});

test('keeps controls, charts and marks in sight in forced colours', async ({ cart }) => {
  await cart.emulateMedia({ forcedColors: 'active' });
  await expect(cart.locator('.run-bar-fill').first()).toHaveCSS('forced-color-adjust', 'none');
  await expect(cart.locator('.series-mark').first()).toHaveCSS('forced-color-adjust', 'none');
  for (const place of places) {
    await cart.locator(`[data-place=${place}]`).click();
    await expect(cart.locator('main h2').first()).toBeVisible();
    // Where the system paints the ground, every button and box keeps an edge to be seen by.
    const bare = await cart.evaluate(() =>
      [
        ...document.querySelectorAll<HTMLElement>(
          'main .input-box, main .choice, main .button-plain',
        ),
      ]
        .filter((element) => element.offsetParent !== null)
        .filter((element) => getComputedStyle(element).borderTopWidth === '0px')
        .map((element) => element.className),
    );
    expect(bare, place).toEqual([]);
  }
  // A switch that is on differs from one that is off by more than its colour.
  await cart.locator('[data-place=machine]').click();
  await expect(cart.locator('.toggle[data-selected] .toggle-knob').first()).not.toHaveCSS(
    'transform',
    'none',
  );
});
