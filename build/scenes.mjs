/**
 * What can be pictured: the seven places, and the dialogs, drawers, empty and error states of the window. A scene
 * brings a page with the first sample open into its state and names what must be in sight before the picture is taken.
 */
const figures = (page) =>
  page.waitForFunction(
    () => {
      const words = document.querySelector('.status-figures')?.textContent ?? '';
      return words !== '' && document.querySelector('.strip[data-stale=true]') === null;
    },
    undefined,
    { timeout: 120_000 },
  );

/** Waits until what is worked out behind the figures stands too. */
export const behind = async (page) => {
  await figures(page);
  // It begins a quiet moment after the figures; until then the strip has dots for low and high.
  await page.waitForFunction(
    () => ![...document.querySelectorAll('.strip td')].some((cell) => cell.textContent === '…'),
    undefined,
    { timeout: 180_000 },
  );
  await page.locator('.behind-running').waitFor({ state: 'detached', timeout: 180_000 });
};

export const placeNames = ['machine', 'packs', 'run', 'charging', 'wiring', 'bench', 'sheet'];

const goTo = async (page, place) => {
  await page.locator(`[data-place=${place}]`).click();
  await page.locator(`[data-place=${place}][aria-current=page]`).waitFor();
  await page.locator('main h2').first().waitFor();
  await figures(page);
};

/** What a place works out by itself once it is gone to. */
const placeDone = {
  charging: (page) =>
    page.waitForFunction(() => document.querySelector('.charging[data-stale=false]') !== null),
  run: async (page) => {
    await page.locator('.run-pair').first().waitFor();
    await behind(page);
  },
  sheet: async (page) => {
    await behind(page);
    // Everything can be done with a sheet once low and high stand in it.
    await page.waitForFunction(
      () =>
        document.querySelector('.sheet-actions button') !== null &&
        document.querySelector('.sheet-actions button:disabled') === null,
      undefined,
      { timeout: 60_000 },
    );
  },
};

const press = (page, name) => page.getByRole('button', { name }).first().click();
const pick = (page, name) => page.getByRole('menuitem', { name }).first().click();
const dialog = (page) => page.getByRole('dialog').first().waitFor();

const findings = (page) => press(page, /^Findings: /);

/** Opens a dialog by a way of its own and waits until it stands. */
const opens = (open) => async (page) => {
  await open(page);
  await dialog(page);
};

const states = {
  findings: opens(findings),
  limits: opens(async (page) => {
    await findings(page);
    await press(page, 'Rules and limits');
  }),
  rules: opens(async (page) => {
    await findings(page);
    await press(page, 'Rules and limits');
    await page.getByRole('tab', { name: 'Rules', exact: true }).click();
  }),
  palette: opens((page) => page.keyboard.press('Control+k')),
  shortcuts: opens((page) => page.keyboard.press('Control+/')),
  'new-plan': opens((page) => page.keyboard.press('Alt+n')),
  settings: opens((page) => page.getByRole('button', { name: 'Settings', exact: true }).click()),
  working: opens((page) => page.locator('.strip-hero .figure-button').first().click()),
  trial: opens(async (page) => {
    await goTo(page, 'packs');
    await page.getByRole('spinbutton', { name: /^Rated capacity, Two 12 V 18/ }).focus();
    await page.keyboard.press('Alt+Enter');
  }),
  search: opens(async (page) => {
    await goTo(page, 'packs');
    await press(page, 'Add option');
    await pick(page, /^Find packs/);
  }),
  blocks: opens(async (page) => {
    await goTo(page, 'packs');
    await press(page, /Choose a block, Two 12 V 18/);
  }),
  differences: opens(async (page) => {
    await goTo(page, 'packs');
    await press(page, /^Blocks that differ: Two 12 V 18/);
  }),
  rating: opens(async (page) => {
    await goTo(page, 'packs');
    await press(page, /^Capacity at other rates: Two 12 V 18/);
    await page.getByText('Rating table').click();
  }),
  curves: opens(async (page) => {
    await goTo(page, 'packs');
    await press(page, /^Capacity at other rates: Two 12 V 18/);
    await page.getByText('Discharge curves').click();
  }),
  'own-parts': opens(async (page) => {
    await goTo(page, 'packs');
    await press(page, /^Actions for One 24 V 20/);
    await pick(page, 'Keep block as own part');
    await page.getByRole('button', { name: 'Own parts', exact: true }).click();
  }),
  trouble: async (page) => {
    await goTo(page, 'packs');
    for (const [name, typed] of [
      [/^Rated capacity, Two 12 V 18/, '1,250'],
      [/^Mass, Two 12 V 18/, 'many'],
    ]) {
      const field = page.getByRole('spinbutton', { name });
      await field.fill(typed);
      await field.blur();
    }
    await page.locator('[aria-invalid=true]').first().waitFor();
  },
  menu: async (page) => {
    await page.locator('header button').first().click();
    await page.getByRole('menu').first().waitFor();
  },
};

/** How to bring a page into the state of a scene. */
export const scenes = {
  ...Object.fromEntries(
    placeNames.map((place) => [
      place,
      async (page) => {
        await goTo(page, place);
        await placeDone[place]?.(page);
      },
    ]),
  ),
  ...states,
};

export { figures };
