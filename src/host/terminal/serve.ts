import { createReadStream, lstatSync } from 'node:fs';
import { createServer, type ServerResponse } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { pipeline } from 'node:stream';
import { rangeOf } from './range.ts';

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
  '.vtt': 'text/vtt; charset=utf-8',
  '.webp': 'image/webp',
  '.jpg': 'image/jpeg',
  '.png': 'image/png',
  '.webm': 'video/webm',
  '.mp4': 'video/mp4',
  '.m4v': 'video/mp4',
  '.ogv': 'video/ogg',
};

/**
 * Serves a folder on the loopback address only, under its own names only; nothing outside the folder, nothing but GET and
 * HEAD. Port 0 takes a free one.
 */
export async function serve(input: { folder: string; port: number }): Promise<{ port: number; close: () => void }> {
  const root = normalize(input.folder + sep);
  const server = createServer((request, response) => {
    const file = ownName.test(request.headers.host ?? '') ? fileFor(root, request.url ?? '/') : null;
    if (file === null || (request.method !== 'GET' && request.method !== 'HEAD')) {
      response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not in this book.\n');
      return;
    }
    answer(response, { file, range: request.headers.range, headOnly: request.method === 'HEAD' });
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(input.port, '127.0.0.1', resolve);
  });
  const address = server.address();
  return {
    port: typeof address === 'object' && address !== null ? address.port : input.port,
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}

/** The file, or the part of it that a player needs to go to another place in a film. */
function answer(
  response: ServerResponse,
  { file, range, headOnly }: { file: string; range: string | undefined; headOnly: boolean },
): void {
  const size = found(file)?.size ?? 0;
  const part = headOnly ? 'whole' : rangeOf(range, size);
  const { from, to } = typeof part === 'string' ? { from: 0, to: size - 1 } : part;
  response.writeHead(part === 'whole' ? 200 : part === 'none' ? 416 : 206, {
    'content-type': kinds[extname(file).toLowerCase()] ?? 'application/octet-stream',
    'content-length': part === 'none' ? 0 : to - from + 1,
    'accept-ranges': 'bytes',
    'cache-control': 'no-store',
    'x-content-type-options': 'nosniff',
    ...(part === 'whole' ? {} : { 'content-range': `bytes ${part === 'none' ? '*' : `${from}-${to}`}/${size}` }),
  });
  if (headOnly || part === 'none' || size === 0) response.end();
  // A player that jumps breaks off what it asked for before; the file is closed then.
  else pipeline(createReadStream(file, { start: from, end: to }), response, () => undefined);
}

/** A page of the web may have its own name point here; what it then asks for carries that name. */
const ownName = /^(?:127\.0\.0\.1|localhost)(?::\d+)?$/i;

function fileFor(root: string, url: string): string | null {
  let path: string;
  try {
    path = decodeURIComponent(new URL(`http://127.0.0.1${url}`).pathname);
  } catch {
    return null;
  }
  const wanted = normalize(join(root, path));
  if (path.includes('\0') || (!wanted.startsWith(root) && wanted + sep !== root)) return null;
  const file = found(wanted)?.isDirectory() === true ? join(wanted, 'index.html') : wanted;
  return found(file)?.isFile() === true ? file : null;
}

/** Links are not followed: a site has none. */
const found = (path: string) => lstatSync(path, { throwIfNoEntry: false });
