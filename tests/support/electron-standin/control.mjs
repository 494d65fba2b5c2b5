import { app } from './app.mjs';
import { servedPort, session, toPageAddress } from './session.mjs';
import { answers, clickMenu, menuItem, nativeTheme, screens, seen } from './small-modules.mjs';

const windows = () => [...app.windows].toSorted((one, other) => one.id - other.id);
const windowAt = (index) => {
  const window = windows()[index];
  if (window === undefined) throw new Error(`No window ${index}`);
  return window;
};
const pageAt = (index) => windowAt(index).webContents.page;

/** What a test can ask of the running stand-in. */
const commands = {
  windows: () =>
    windows().map((window) => ({
      id: window.id,
      title: window.title,
      edited: window.edited,
      represented: window.represented,
      bounds: window.getBounds(),
      focused: window.isFocused(),
      url: window.webContents.page === null ? '' : window.webContents.mainFrame.url,
    })),
  // The source is a function of the test's own, sent as text.
  evaluate: ({ index, source, argument }) =>
    pageAt(index).evaluate(`(${source})(${JSON.stringify(argument ?? null)})`),
  evaluateInFrame: async ({ index, source, argument }) => {
    const [, frame] = pageAt(index).frames();
    return frame.evaluate(`(${source})(${JSON.stringify(argument ?? null)})`);
  },
  forceAddress: async ({ index, url }) => {
    await pageAt(index).unroute('**/*');
    await pageAt(index).goto(url);
  },
  // What a user does: elements are found by role and name, and waited for.
  press: ({ index, role, name, within }) =>
    pageAt(index).locator(within).getByRole(role, { name, exact: true }).first().click(),
  fill: ({ index, role, name, text }) => pageAt(index).getByRole(role, { name }).first().fill(text),
  stroke: ({ index, keys }) => pageAt(index).keyboard.press(keys),
  count: ({ index, role, name }) => pageAt(index).getByRole(role, { name }).count(),
  value: ({ index, role, name }) => pageAt(index).getByRole(role, { name }).first().inputValue(),
  text: ({ index, role, name }) => pageAt(index).getByRole(role, { name }).first().innerText(),
  pageCount: () => pageAt(0).context().pages().length,
  address: ({ index }) => pageAt(index).url(),
  pageAddress: ({ url }) => toPageAddress(url),
  servedPort,
  clickMenu: ({ id }) => {
    clickMenu(id);
  },
  menuItem: ({ id }) => {
    const item = menuItem(id);
    if (item === null) return null;
    const { label, enabled, accelerator, role, submenu } = item;
    return { label, enabled, accelerator, role, items: submenu?.map((entry) => entry.label ?? '') };
  },
  answerDialogs: ({ kind, replies }) => {
    answers[kind].push(...replies);
  },
  seen: () => seen,
  focus: ({ index }) => windowAt(index).focus(),
  minimize: ({ index }) => windowAt(index).minimize(),
  closeWindow: ({ index }) => windowAt(index).close(),
  quit: () => app.quit(),
  openFile: ({ path }) => {
    app.emit('open-file', { preventDefault() {} }, path);
  },
  setDark: ({ dark }) => {
    nativeTheme.shouldUseDarkColors = dark;
    nativeTheme.emit('updated');
    for (const { webContents } of windows()) {
      void webContents.page?.emulateMedia({ colorScheme: dark ? 'dark' : 'light' });
    }
    return windows().map((window) => window.options.backgroundColor);
  },
  setScreens: ({ areas }) => {
    screens.splice(0, screens.length, ...areas.map((workArea, id) => ({ id, workArea })));
  },
  crash: async ({ index }) => {
    const page = pageAt(index);
    const client = await page.context().newCDPSession(page);
    void client.send('Page.crash').catch(() => {});
  },
  permissions: async ({ partition, names }) => {
    const { handlers } = session.fromPartition(partition);
    const asked = names.map((name) => {
      let granted = null;
      handlers.request({}, name, (answer) => {
        granted = answer;
      });
      return granted;
    });
    return {
      asked,
      checked: names.map((name) => handlers.check({}, name)),
      device: handlers.device({}),
    };
  },
  sandboxed: () => app.sandboxed,
  pdfText: async ({ index }) => (await pageAt(index).pdf()).subarray(0, 5).toString('latin1'),
};

export const listenForTest = () => {
  process.on('message', ({ id, name, argument }) => {
    Promise.resolve()
      .then(() => commands[name](argument ?? {}))
      .then(
        (value) => process.send({ id, value: value ?? null }),
        (error) => process.send({ id, error: String(error?.stack ?? error) }),
      );
  });
  // The test is gone: so are we.
  process.on('disconnect', () => process.exit(0));
  process.on('unhandledRejection', (error) => {
    // Pages that close under a running call reject; anything else is a fault of the shell.
    if (/closed|Target crashed/.test(String(error))) return;
    process.stderr.write(`unhandled: ${error?.stack ?? error}\n`);
    process.exitCode = 70;
  });
};
