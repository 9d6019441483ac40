import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ready, site, type Visit, visit } from './browser.js';

let all: Visit;
beforeAll(async () => {
  all = await visit();
});
afterAll(async () => {
  expect(all.faults).toEqual([]);
  await all.end();
});

describe('the site', () => {
  it('has no link that leads nowhere, and none that leaves but by its words', () => {
    const pages = readdirSync(site, { recursive: true, encoding: 'utf8' }).filter((file) =>
      file.endsWith('.html'),
    );
    expect(pages.length).toBeGreaterThan(500);
    const dead = pages.flatMap((page) => {
      const html = readFileSync(join(site, page), 'utf8');
      const links = [...html.matchAll(/(?:href|src)="([^"#]+)/g)].map(([, link = '']) => link);
      return links
        .filter((link) => !existsSync(normalize(join(site, dirname(page), decodeURI(link)))))
        .map((link) => `${page}: ${link}`);
    });
    expect(dead).toEqual([]);
  });

  it.each([
    ['how much to grind', 'grindPlan'],
    ['petrol in the oil', 'fuelInSump'],
    ['gasoline in my oil', 'fuelInSump'],
    ['how much to bore', 'borePlan'],
    ['which shells fit', 'matchShells'],
    ['wrong shells', 'explainClearance'],
    ['bent crankshaft', 'bend'],
    ['carburettor drips', 'dripFlow'],
    ['valve clearance', 'lashGrowth'],
    ['find top dead centre', 'topDeadCentre'],
    ['plastic thread', 'flattenedThreadGap'],
    ['low compression', 'compressionTest'],
    ['inch to mm', 'convert'],
    ['oilClearance', 'oilClearance'],
  ])('finds for "%s" what is called %s', async (phrase, name) => {
    const { page } = all;
    await page.goto(`${all.base}index.html`);
    await page.waitForFunction('window.searchData !== undefined');
    await page.click('#tsd-search-trigger');
    await page.keyboard.type(phrase);
    await page.waitForSelector('#tsd-search-results li');
    const found = await page.locator('#tsd-search-results li a').allTextContents();
    const names = found.map((text) => text.trim().split('.').at(-1));
    expect(names.slice(0, 5)).toContain(name);
  });

  it('lists the exports by room, and the guides beside them', async () => {
    const { page } = all;
    await page.goto(`${all.base}modules/crankwright_oil.html`);
    const sidebar = page.locator('.site-menu');
    await sidebar.locator('text=crankwright/oil').first().waitFor({ state: 'attached' });
    for (const name of ['crankwright/bearings', 'fuelInSump', 'The shed file']) {
      expect(await sidebar.locator(`text=${name}`).count(), name).toBeGreaterThan(0);
    }
  });

  it.each([
    'index.html',
    'documents/The_shed_file.html',
    'modules/crankwright_oil.html',
    'functions/crankwright_bearings.oilClearance.html',
    'formulas/index.html',
    'your-parts.html',
  ])('fits %s on a phone, without scrolling sideways', async (path) => {
    await all.page.goto(all.base + path);
    expect(await all.page.evaluate('document.documentElement.scrollWidth')).toBe(360);
  });

  it('finds formulas by the words of a restorer', async () => {
    const { page } = all;
    await page.goto(`${all.base}formulas/index.html`);
    await ready(page);
    await page.fill('#find', 'petrol in the oil');
    const left = await page.locator('li[data-words]:not([hidden])').allTextContents();
    expect(left).toContain('Fuel in a sump after a time');
    expect(left.length).toBeLessThan(30);
    await page.fill('#find', 'xyzzy');
    expect(await page.textContent('#found')).toBe('No formula has these words.');
  });
});

describe('a formula page by keyboard', () => {
  it('takes readings as they are written, converts units and moves its picture', async () => {
    const { page } = all;
    await page.goto(`${all.base}formulas/oilClearance.html`);
    await ready(page);
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.className')).toBe('skip');
    const order: string[] = [];
    for (let i = 0; i < 30 && order.at(-1) !== 'slider'; i++) {
      await page.keyboard.press('Tab');
      const id = (await page.evaluate('document.activeElement.id')) as string;
      if (id !== '') order.push(id);
      if (id === 'field-D_j') {
        await page.keyboard.press('Control+A');
        await page.keyboard.type('2-1/8');
      }
      if (id === 'field-D_h') {
        await page.keyboard.press('Control+A');
        await page.keyboard.type('57.1754 mm');
      }
      if (id === 'field-t') {
        await page.keyboard.press('Control+A');
        await page.keyboard.type('62 thou');
      }
    }
    expect(order).toEqual([
      'field-D_h',
      'unit-D_h',
      'field-t',
      'unit-t',
      'field-D_j',
      'unit-D_j',
      'again',
      'unit-of-result',
      'against',
      'slider',
    ]);
    // 57.1754 mm is 2.251 in; less 2.125 in and twice 0.062 in, that is 2 thou.
    expect(await page.textContent('#result')).toBe('2 thou');
    await page.keyboard.press('ArrowRight');
    expect(await page.textContent('#result')).not.toBe('2 thou');
    expect(await page.textContent('#picture desc')).toContain('At ');
  });

  it('moves a slider and sees the oil film thin', async () => {
    const { page } = all;
    await page.goto(`${all.base}formulas/leastFilm.html`);
    await ready(page);
    await page.selectOption('#against', 'W');
    const film = async () => Number(await page.getAttribute('#result data', 'value'));
    const films = [await film()];
    for (let i = 0; i < 3; i++) {
      await page.focus('#slider');
      await page.keyboard.press('PageUp');
      films.push(await film());
    }
    expect(films).toEqual([...films].sort((a, b) => b - a));
    expect(new Set(films).size).toBe(4);
    await page.fill('#field-W', '500');
    await page.selectOption('#unit-W', 'lbf');
    expect(await page.textContent('#refusal')).toBe('');
  });

  it('shows the refusal beside the field that it names', async () => {
    const { page } = all;
    await page.goto(`${all.base}formulas/ringGapIn.html`);
    await ready(page);
    await page.fill('#field-D', '3.008');
    await page.fill('#field-D_0', '3 m');
    expect(await page.textContent('#refusal-D_0')).toContain('outside');
    expect(await page.getAttribute('#field-D_0', 'aria-invalid')).toBe('true');
    await page.fill('#field-D_0', '3 psi');
    expect(await page.textContent('#refusal-D_0')).toContain('has no unit of length');
    expect(await page.textContent('#result')).toBe('no result');
  });

  it('works a formula out when that is opened', async () => {
    const { page } = all;
    await page.goto(`${all.base}formulas/oilClearance.html`);
    await ready(page);
    await page.click('#working summary');
    await page.waitForSelector('#working-lines math');
    const [legend = ''] = await page.locator('#working-lines li').allTextContents();
    expect(legend).toBe('Dh = 2.25 in, housing bore, cap torqued, no shells');
    const lines = await page.locator('#working-lines .equations math').allTextContents();
    // Twice 0.061 in and 2.126 in are 2.248 in, which leaves 0.002 in of 2.25 in.
    expect(lines).toEqual(['c=Dh−2·t−Dj', '=2.25in−2·0.061in−2.126in', '=0.002in', '=2thou']);
  });
});
