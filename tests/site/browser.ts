import { existsSync, readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { delimiter, extname, join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { root } from '../support/repo.js';

/** The folder that `npm run docs` writes. */
export const site = join(root, 'docs', 'api');

/** The site stands below a path of its server, as on a shared one. */
const BELOW = '/a/sub/path/';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.json': 'application/json',
};

/** Serves a folder below a path, as any static server does. */
export async function serve(
  folder: string,
): Promise<{ readonly server: Server; readonly base: string }> {
  const server = createServer(({ url = '' }, response) => {
    const path = decodeURIComponent(new URL(url, 'http://here').pathname).slice(BELOW.length);
    const file = join(folder, path);
    const isThere = url.startsWith(BELOW) && existsSync(file);
    const type = TYPES[extname(path)] ?? 'text/plain; charset=utf-8';
    // A browser asks for this by itself, wherever the site stands.
    const status = isThere ? 200 : url === '/favicon.ico' ? 204 : 404;
    response.writeHead(status, {
      'content-type': type,
      'cache-control': 'max-age=600',
    });
    response.end(isThere ? readFileSync(file) : '');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { server, base: `http://127.0.0.1:${(server.address() as AddressInfo).port}${BELOW}` };
}

/** The browser: the one that CHROMIUM names, or one in the PATH. */
function executable(): string {
  const places = (process.env['PATH'] ?? '').split(delimiter);
  const names = ['chromium', 'chromium-browser', 'google-chrome'];
  const found = names.flatMap((name) => places.map((place) => join(place, name))).find(existsSync);
  const path = process.env['CHROMIUM'] ?? found;
  if (path === undefined) throw new Error('no Chromium is in the PATH; name one in CHROMIUM');
  return path;
}

/** One page of one browser, and what went wrong in it. */
export interface Visit {
  readonly page: Page;
  /** The address of the site, with a slash behind it. */
  readonly base: string;
  /** Errors on the console, errors thrown, and requests that would have left. */
  readonly faults: string[];
  readonly end: () => Promise<void>;
}

/** Opens a browser on a folder. Nothing can be asked of another server; to try is a fault. */
export async function visit(folder: string = site): Promise<Visit> {
  const { server, base } = await serve(folder);
  const browser: Browser = await chromium.launch({
    executablePath: executable(),
    // No other name or address can be reached.
    args: ['--no-sandbox', '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1'],
  });
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  const faults: string[] = [];
  // A route would turn the cache off, and every page would read its scripts anew.
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(base) && !url.startsWith('blob:')) faults.push(`asks ${url}`);
  });
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`throws: ${error.message}`));
  const end = async () => {
    await browser.close();
    server.close();
  };
  return { page, base, faults, end };
}

/** Waits until the script of a page has made it ready. */
export const ready = (page: Page) => page.waitForSelector('body[data-ready]');
