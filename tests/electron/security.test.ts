import { createServer, request as httpRequest } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, onTestFinished, test } from 'vitest';
import { callChannels } from '#core/shell/bridge.ts';
import { planText } from '../support/plan-text.ts';
import {
  eventually,
  sharedShell,
  startShell,
  type RunningShell,
  type TestPage,
} from '../support/shell-driver.ts';

/** A request with its path exactly as given, which no browser would send. */
const rawGet = (port: number, path: string) =>
  new Promise<{ status: number; headers: Record<string, unknown>; body: string }>(
    (resolve, reject) => {
      const options = {
        host: '127.0.0.1',
        port,
        path,
        headers: { host: `shell.localhost:${port}` },
      };
      httpRequest(options, (answer) => {
        let body = '';
        answer.setEncoding('utf8').on('data', (text: string) => {
          body += text;
        });
        answer.on('end', () =>
          resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body }),
        );
      })
        .on('error', reject)
        .end();
    },
  );

/** A foreign site, with a page of its own. */
const foreignSite = async (): Promise<string> => {
  const server = createServer((_request, answer) => {
    answer.writeHead(200, { 'content-type': 'text/html' }).end('<h1>Foreign</h1>');
  });
  await new Promise<void>((listening) => {
    server.listen(0, '127.0.0.1', listening);
  });
  onTestFinished(() => {
    server.close();
    server.closeAllConnections();
  });
  return `http://foreign.localhost:${(server.address() as AddressInfo).port}/`;
};

const forge = ([channel, payload]: readonly [string, unknown]) =>
  (globalThis as unknown as TestPage).standinInvoke(channel, payload);

const violations = (shell: RunningShell) =>
  shell.inPage(() => (globalThis as unknown as TestPage).standinViolations);

describe('content policy', () => {
  const shared = sharedShell();

  test('every answer carries the policy, also a refusal', async () => {
    const shell = await startShell();
    const port = await shell.command<number>('servedPort');
    for (const path of ['/index.html', '/page.js', '/none.js', '/..%2fmain/main.js']) {
      const { headers } = await rawGet(port, path);
      const policy = String(headers['content-security-policy']);
      for (const rule of [
        "default-src 'none'",
        "script-src 'self'",
        "connect-src 'none'",
        "object-src 'none'",
        "frame-src 'none'",
        "base-uri 'none'",
        "form-action 'none'",
        "frame-ancestors 'none'",
        "require-trusted-types-for 'script'",
      ]) {
        expect(policy, path).toContain(rule);
      }
      expect(policy).not.toMatch(/unsafe|\*|https?:/);
      expect(headers['x-content-type-options']).toBe('nosniff');
    }
  });

  test('the nonce differs from answer to answer', async () => {
    const port = await shared().command<number>('servedPort');
    const nonces = await Promise.all(
      [1, 2].map(async () => {
        const { headers } = await rawGet(port, '/index.html');
        return /'nonce-([0-9a-f]{32})'/.exec(String(headers['content-security-policy']))?.[1];
      }),
    );
    expect(nonces[0]).toMatch(/^[0-9a-f]{32}$/);
    expect(nonces[0]).not.toBe(nonces[1]);
  });

  test('the page by itself violates nothing', async () => {
    expect(await violations(shared())).toEqual([]);
  });

  test('the real page starts under the shell and violates nothing', async () => {
    const shell = await startShell({ shell: inject('realShellFolder') });
    await eventually(
      () => shell.inPage(() => (document.querySelector('main')?.textContent ?? '').length),
      (length) => length > 0,
    );
    expect(await violations(shell)).toEqual([]);
  });

  test.each([
    ['an inline script', '<script>globalThis.hit = true</script>'],
    ['an event attribute', '<img src="x" onerror="globalThis.hit = true">'],
    ['a script address', '<a href="javascript:globalThis.hit = true">x</a>'],
    ['a frame', '<iframe src="https://example.com/"></iframe>'],
    ['an object', '<object data="https://example.com/"></object>'],
    ['a form', '<form action="https://example.com/"><input name="a"></form>'],
    ['a base', '<base href="https://example.com/">'],
  ])('markup with %s from a plan has no way into the page', async (_what, markup) => {
    const outcome = await shared().inPage((html: string) => {
      try {
        document.body.innerHTML = html;
        return 'written';
      } catch (error) {
        return (error as Error).name;
      }
    }, markup);
    expect(outcome).toBe('TypeError');
    expect(await shared().inPage(() => 'hit' in globalThis)).toBe(false);
  });

  test.each(['eval', 'a function from text', 'a timer from text'])(
    '%s is refused',
    async (attack) => {
      // In a task of the page's own: the test's way into the page is let past the policy.
      const outcome = await shared().inPage(
        (name: string) =>
          new Promise<string>((resolve) => {
            setTimeout(() => {
              try {
                const text = 'globalThis.hit = true';
                // oxlint-disable-next-line no-eval -- the attack itself
                if (name === 'eval') globalThis.eval(text);
                // oxlint-disable-next-line typescript/no-implied-eval -- the attack itself
                else if (name === 'a function from text') new Function(text)();
                else setTimeout(text as unknown as () => void, 0);
                resolve('run');
              } catch (error) {
                resolve((error as Error).name);
              }
            }, 0);
          }),
        attack,
      );
      expect(outcome).toMatch(/^(EvalError|TypeError)$/);
      expect(await shared().inPage(() => 'hit' in globalThis)).toBe(false);
    },
  );

  test.each([
    [
      'fetch',
      () =>
        fetch('https://example.com/').then(
          () => 'sent',
          () => 'refused',
        ),
    ],
    [
      'a picture from elsewhere',
      () =>
        new Promise<string>((resolve) => {
          const image = new Image();
          image.addEventListener('load', () => resolve('sent'));
          image.addEventListener('error', () => resolve('refused'));
          image.src = 'https://example.com/a.png';
        }),
    ],
    [
      'a socket',
      () =>
        new Promise<string>((resolve) => {
          const socket = new WebSocket('wss://example.com/');
          socket.addEventListener('open', () => resolve('sent'));
          socket.addEventListener('error', () => resolve('refused'));
        }),
    ],
  ])('%s is refused by the policy, not by the network', async (_what, attack) => {
    expect(await shared().inPage(attack)).toBe('refused');
    const found = await violations(shared());
    expect(found.some((entry) => /^(connect|img)-src .*example\.com/.test(entry))).toBe(true);
  });
});

describe('page files', () => {
  const shared = sharedShell();

  test.each([
    '/../main/main.js',
    '/..%2fmain%2fmain.js',
    '/%2e%2e/main/main.js',
    '/%2e%2e%2fmain%2fmain.js',
    '/..%5cmain%5cmain.js',
    '/..\\main\\main.js',
    '/%252e%252e%252fmain/main.js',
    '/a/../../main/main.js',
    '/%00/page.js',
    '/page.js%00.html',
    '/%zz',
    '//etc/passwd.js',
    '/%2fetc%2fpasswd.json',
    '/../../package.json',
    '/index',
  ])('the path %s gives nothing', async (path) => {
    const port = await shared().command<number>('servedPort');
    const { status, body } = await rawGet(port, path);
    expect([400, 404]).toContain(status);
    expect(body).toMatch(/^(Bad request|Not found)$/);
  });
});

describe('calls from the page', () => {
  const shared = sharedShell();

  test('an unknown channel has no handler', async () => {
    const call = shared().inPage(forge, ['file:read', {}] as const);
    await expect(call).rejects.toThrow(/No handler/);
  });

  test('the page sees the bridge and nothing of Electron or Node', async () => {
    const found = await shared().inPage(() => ({
      globals: ['require', 'process', 'module', 'Buffer', 'ipcRenderer', 'electron'].filter(
        (name) => name in globalThis,
      ),
      bridge: Object.keys((globalThis as unknown as TestPage).cellwainShell).toSorted(),
      frozen: Object.isFrozen((globalThis as unknown as TestPage).cellwainShell.call),
    }));
    expect(found).toEqual({
      globals: [],
      bridge: ['call', 'listen', 'platform', 'version'],
      frozen: true,
    });
  });

  test('a call forged from a frame inside the page is refused', async () => {
    const shell = await startShell();
    await shell.inPage(() => {
      document.body.append(document.createElement('iframe'));
    });
    await shell.answer('open', join(shell.folder, 'x.wain'));
    const answer = await shell.command('evaluateInFrame', {
      index: 0,
      source: forge.toString(),
      argument: ['plan:open', {}],
    });
    expect(answer).toEqual({ ok: false, code: 'refused' });
    expect((await shell.seen()).dialogs).toEqual([]);
  });

  test('a call forged by a foreign page is refused on every channel', async () => {
    const shell = await startShell();
    await shell.command('forceAddress', { index: 0, url: await foreignSite() });
    for (const channel of Object.values(callChannels)) {
      const answer = await shell.inPage(forge, [channel, {}] as const);
      expect(answer, channel).toEqual({ ok: false, code: 'refused' });
    }
  });

  test.each([
    ['a path instead of nothing', 'plan:open', { path: '/etc/passwd' }],
    ['a path as handle', 'plan:read-again', { handle: '/etc/passwd' }],
    ['a path as recent file', 'plan:open-recent', { id: '../../etc/passwd' }],
    ['a path as recovery copy', 'recovery:take', { id: '../recent-files' }],
    ['an extra field', 'recovery:discard-own', { all: true }],
    ['a missing field', 'plan:open-dropped', { name: 'x' }],
    ['a wrong type', 'plan:open-dropped', { name: 'x', text: 5 }],
    ['no object', 'plan:open', null],
    ['a list', 'plan:open', []],
    ['an address as link', 'link:open', { key: 'https://example.com' }],
    ['a prototype key as link', 'link:open', { key: '__proto__' }],
    ['an unknown command', 'menu:state', { disabled: ['rm -rf'] }],
    [
      'a kind of export that is a program',
      'export:file',
      { kind: 'exe', suggestedName: 'a', content: '' },
    ],
    [
      'a revision that is no number',
      'plan:save',
      { handle: null, text: '', suggestedName: '', revision: null, replaceChanged: false },
    ],
  ])('a payload with %s is a bad request', async (_what, channel, payload) => {
    const answer = await shared().inPage(forge, [channel, payload] as const);
    expect(answer).toEqual({ ok: false, code: 'bad-request' });
    expect(await shared().seen()).toEqual({ dialogs: [], opened: [], copied: [], printed: [] });
  });

  test('a payload that is too large is refused before any work', async () => {
    const shell = await startShell();
    const answer = await shell.inPage(
      async (bytes: number) => {
        const { call } = (globalThis as unknown as TestPage).cellwainShell;
        // Each of these letters takes three bytes: within the limit as letters, above it as bytes.
        const text = '€'.repeat(bytes / 2);
        return call.openDropped({ name: 'x', text });
      },
      8 * 1024 * 1024,
    );
    expect(answer).toEqual({ ok: false, code: 'too-large' });
  });

  test('a plan with prototype keys is refused and taints nothing', async () => {
    const text = planText().replace('{', '{"__proto__": {"polluted": true},');
    const answer = await shared().call('openDropped', { name: 'x.wain', text });
    expect(answer).toMatchObject({ ok: false, code: 'bad-plan' });
    expect(await shared().inPage(() => 'polluted' in {})).toBe(false);
  });

  test('a name full of tricks becomes a plain proposal for a file name', async () => {
    const shell = await startShell();
    for (const wish of [
      '../../etc/cron',
      'a/b\\c:d',
      'con',
      '\u202Egnp.exe',
      '',
      '...',
      'x'.repeat(255),
    ]) {
      await shell.call('exportFile', { kind: 'csv', suggestedName: wish, content: 'a' });
    }
    const proposals = (await shell.seen()).dialogs.map(({ options }) =>
      String(options['defaultPath']),
    );
    for (const proposal of proposals) {
      const folder = join(shell.folder, 'documents');
      expect(proposal.startsWith(`${folder}/`)).toBe(true);
      expect(proposal.slice(folder.length + 1)).toMatch(/^[^/\\:\u202E.][^/\\:\u202E]*\.csv$/);
    }
    expect(proposals).toHaveLength(7);
  });

  test('a link opens its own address and no other', async () => {
    const shell = await startShell();
    await shell.call('openLink', { key: 'electron-licence' });
    const { opened } = await shell.seen();
    expect(opened).toHaveLength(1);
    expect(new URL(opened[0] ?? '').protocol).toBe('https:');
  });
});

describe('navigation', () => {
  const shared = sharedShell();

  test.each([
    ['an address elsewhere', () => location.assign('https://example.com/')],
    ['a file', () => location.assign('file:///etc/passwd')],
    ['data', () => location.assign('data:text/html,<h1>x</h1>')],
    ['another file of the page', () => location.assign('/page.js')],
  ])('the page cannot go to %s', async (_what, attack) => {
    const before = await shared().command<string>('address', { index: 0 });
    await shared()
      .inPage(attack)
      .catch(() => {});
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(await shared().command('address', { index: 0 })).toBe(before);
    expect(await shared().inPage(() => 'heard' in globalThis)).toBe(true);
  });

  test('the page cannot open a window', async () => {
    const before = await shared().command<number>('pageCount');
    await shared().inPage(() => {
      globalThis.open('https://example.com/', '_blank');
    });
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(await shared().command('pageCount')).toBe(before);
    expect((await shared().seen()).opened).toEqual([]);
  });

  test('a download on the account of the page does not happen', async () => {
    await shared().inPage(() => {
      const link = document.createElement('a');
      link.href = URL.createObjectURL(new Blob(['x']));
      link.download = 'x.txt';
      link.click();
    });
    await new Promise((resolve) => setTimeout(resolve, 200));
    expect((await shared().seen()).dialogs).toEqual([]);
  });

  test('every permission and device is denied', async () => {
    const names = ['media', 'geolocation', 'notifications', 'clipboard-read', 'fullscreen', 'usb'];
    const answer = await shared().command('permissions', { partition: 'persist:plans', names });
    const no = names.map(() => false);
    expect(answer).toEqual({ asked: no, checked: no, device: false });
  });

  test('the sandbox is on for the whole program', async () => {
    expect(await shared().command('sandboxed')).toBe(true);
  });
});

describe('report', () => {
  const shared = sharedShell();

  test('it holds versions and problems but no folder of a person', async () => {
    const shell = await startShell();
    const message = `Cannot read ${shell.folder}/home/secret/plan.wain and C:\\Users\\Ada\\a.txt`;
    await shell.call('noteProblem', { message });
    const report = await shell.call('report', {});
    if (!report.ok) throw new Error(report.code);
    expect(report.value).toContain('Cellwain 0.1.0');
    expect(report.value).toContain('plan.wain');
    expect(report.value).not.toMatch(/secret|Ada|\/tmp\//);
  });

  test('the about data lists each bundled package with its licence text', async () => {
    const about = await shared().call('about', {});
    if (!about.ok) throw new Error(about.code);
    const main = JSON.parse(
      readFileSync(join(inject('shellFolder'), 'dist', 'main', 'licences.json'), 'utf8'),
    ) as { name: string }[];
    expect(main.map(({ name }) => name)).toContain('zod');
    for (const { name } of main) {
      const entry = about.value.packages.find((bundled) => bundled.name === name);
      expect(entry?.text, name).toMatch(/licen[cs]e|permission/i);
    }
  });
});
