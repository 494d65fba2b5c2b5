import { request } from 'node:http';
import { connect } from 'node:net';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { contentPolicy } from '#core/shell/content-policy.ts';
import { servePage, type RunningServer } from '#electron/serve/serve.ts';

let server: RunningServer;
let port = 0;

beforeAll(async () => {
  server = await servePage(join(inject('shellFolder'), 'dist', 'renderer'), 0);
  port = Number(new URL(server.url).port);
});
afterAll(() => server.close());

type Answer = { status: number; policy: string; body: string };

const ask = (path: string, host = `127.0.0.1:${port}`, method = 'GET') =>
  new Promise<Answer>((resolve, reject) => {
    request({ host: '127.0.0.1', port, path, method, headers: { host } }, (answer) => {
      let body = '';
      answer.setEncoding('utf8').on('data', (text: string) => {
        body += text;
      });
      answer.on('end', () => {
        const policy = String(answer.headers['content-security-policy'] ?? '');
        resolve({ status: answer.statusCode ?? 0, policy, body });
      });
    })
      .on('error', reject)
      .end();
  });

describe('the page served to a browser', () => {
  test('listens on the loopback address alone', () => {
    expect(new URL(server.url).hostname).toBe('127.0.0.1');
  });

  test('comes with the very policy of the desktop shell', async () => {
    const { status, policy, body } = await ask('/');
    expect(status).toBe(200);
    expect(body).toContain('<h1>');
    const nonce = /'nonce-([0-9a-f]{32})'/.exec(policy)?.[1] ?? '';
    expect(policy).toBe(contentPolicy(nonce));
  });

  test('is given to no request that names another host', async () => {
    for (const host of ['evil.test', `evil.test:${port}`, `127.0.0.1:${port + 1}`, 'localhost']) {
      const { status, body } = await ask('/', host);
      expect([400, 403], host).toContain(status);
      expect(body).not.toContain('<h1>');
    }
  });

  test('is given to no request without a host, which only a raw connection can send', async () => {
    for (const head of ['GET / HTTP/1.0', 'GET / HTTP/1.1', 'GET / HTTP/1.1\r\nHost:']) {
      const answer = await new Promise<string>((resolve, reject) => {
        let text = '';
        const socket = connect(port, '127.0.0.1', () =>
          socket.write(`${head}\r\nConnection: close\r\n\r\n`),
        );
        socket.setEncoding('utf8').on('data', (part: string) => {
          text += part;
        });
        socket.once('close', () => resolve(text)).once('error', reject);
      });
      expect(answer, head).toMatch(/^HTTP\/1\.1 40[03]/);
      expect(answer).not.toContain('<h1>');
    }
  });

  test('cannot be left by any path', async () => {
    for (const path of [
      '/../main/main.js',
      '/..%2fmain%2fmain.js',
      '/%2e%2e/main/main.js',
      '/..\\main\\main.js',
    ]) {
      expect([400, 404], path).toContain((await ask(path)).status);
    }
  });

  test('answers nothing but reading', async () => {
    for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS']) {
      expect((await ask('/', undefined, method)).status, method).toBe(405);
    }
  });
});
