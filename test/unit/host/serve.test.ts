import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../../../src/host/terminal/serve.ts';

const root = mkdtempSync(join(tmpdir(), 'dipmark-serve-'));
const folder = join(root, 'site');
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  mkdirSync(join(folder, 'runs', 'S-07'), { recursive: true });
  mkdirSync(join(root, 'site-of-another'));
  writeFileSync(join(folder, 'index.html'), 'home');
  writeFileSync(join(folder, 'K7.webm'), '0123456789');
  writeFileSync(join(folder, 'K7.vtt'), 'WEBVTT');
  writeFileSync(join(folder, 'none.webm'), '');
  writeFileSync(join(folder, 'runs', 'S-07', 'index.html'), 'a run');
  writeFileSync(join(root, 'secret.txt'), 'secret');
  writeFileSync(join(root, 'site-of-another', 'index.html'), 'secret');
  symlinkSync(join(root, 'secret.txt'), join(folder, 'link.txt'));
  server = await serve({ folder, port: 0 });
});
afterAll(() => {
  server.close();
  rmSync(root, { recursive: true, force: true });
});

/** The path goes out as it is written here: a browser would tidy it up first. */
const ask = (path: string, method = 'GET', headers: Readonly<Record<string, string>> = {}) =>
  new Promise<{ status: number; type: string; text: string; part: string; length: string }>((resolve, reject) => {
    request({ host: '127.0.0.1', port: server.port, path, method, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (more: string) => (text += more));
      response.on('end', () => {
        const {
          'content-type': type = '',
          'content-range': part = '',
          'content-length': length = '',
        } = response.headers;
        resolve({ status: response.statusCode ?? 0, type, text, part, length });
      });
    })
      .on('error', reject)
      .end();
  });

describe('the pages of a preview', () => {
  it('are served as what they are, a folder as its page', async () => {
    expect(await ask('/')).toMatchObject({ status: 200, type: 'text/html; charset=utf-8', text: 'home', length: '4' });
    expect(await ask('/runs/S-07/')).toMatchObject({ status: 200, text: 'a run' });
    expect(await ask('/runs/S-07/?at=1')).toMatchObject({ status: 200, text: 'a run' });
  });
  it('name captions and clips for the players that will not take them otherwise', async () => {
    expect((await ask('/K7.vtt')).type).toBe('text/vtt; charset=utf-8');
    expect((await ask('/K7.webm')).type).toBe('video/webm');
  });
  it('give the part of a clip that a player jumps to, and say what it is a part of', async () => {
    const part = (range: string, method = 'GET') => ask('/K7.webm', method, { range });
    expect(await part('bytes=2-4')).toMatchObject({ status: 206, text: '234', part: 'bytes 2-4/10', length: '3' });
    expect(await part('bytes=7-')).toMatchObject({ status: 206, text: '789', part: 'bytes 7-9/10' });
    expect(await part('bytes=-2')).toMatchObject({ status: 206, text: '89', part: 'bytes 8-9/10' });
    expect(await part('bytes=10-')).toMatchObject({ status: 416, text: '', part: 'bytes */10' });
    expect(await part('bytes=2-4', 'HEAD')).toMatchObject({ status: 200, text: '', length: '10' });
    expect(await ask('/none.webm', 'GET', { range: 'bytes=0-' })).toMatchObject({ status: 416 });
    expect(await ask('/none.webm')).toMatchObject({ status: 200, text: '' });
  });
  it('do not lead out of the folder, however the way is spelled', async () => {
    const ways = [
      ...['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/runs/..%2f..%2fsecret.txt'],
      ...['/../site-of-another/', '/..%2fsite-of-another/index.html', '//secret.txt', '/link.txt', '/%00', '/%'],
    ];
    for (const way of ways) {
      const answer = await ask(way);
      expect(answer.status, way).toBe(404);
      expect(answer.text, way).not.toContain('secret');
    }
  });
  it('can be read and nothing else', async () => {
    for (const method of ['POST', 'PUT', 'DELETE']) expect((await ask('/', method)).status, method).toBe(404);
    expect(await ask('/', 'HEAD')).toMatchObject({ status: 200, text: '' });
  });
  it('are not for a page of another address that had its name pointed at this machine', async () => {
    expect((await ask('/', 'GET', { host: 'elsewhere.example' })).status).toBe(404);
    expect((await ask('/', 'GET', { host: `localhost:${server.port}` })).status).toBe(200);
  });
  it('are not there for other machines', async () => {
    const others = Object.values(networkInterfaces()).flatMap((all) => all ?? []);
    for (const { address, internal, family } of others.filter((one) => !one.internal && one.family === 'IPv4')) {
      const open = await new Promise<boolean>((resolve) => {
        const socket = connect({ host: address, port: server.port });
        socket.once('connect', () => {
          socket.destroy();
          resolve(true);
        });
        socket.once('error', () => {
          resolve(false);
        });
      });
      expect(open, `${address} ${family} ${String(internal)}`).toBe(false);
    }
    expect(await ask('/')).toMatchObject({ status: 200 });
  });
});
