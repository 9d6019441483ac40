import { readFileSync } from 'node:fs';
import { planBuilds } from 'crankwright/planning';
import { clearancesOf, planPage, planPicture, reportPage, triagePage } from 'crankwright/plots';
import { readShed, triage } from 'crankwright/shed';
import { inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { captured } from '../command/captured.js';
import { root } from '../support/repo.js';
import { expectSound, seen } from './seen.js';

const example = (name: string) => readFileSync(`${root}/examples/${name}`, 'utf8');
const sheet = readSheet(example('pump-set-inch.json'));
const plan = await planBuilds(
  readShed(example('pump-set-shed.json'), example('pump-set-shed-readings.csv')),
);
/** What is read on a page, without its pictures. */
const read = (page: string) =>
  page
    .replace(/<figure>.*?<\/figure>/gs, '')
    .replace(/<style>.*?<\/style>/s, '')
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ');

describe('the page of a report', () => {
  const page = reportPage(sheet);

  it('says all that the text says', () => {
    const said = read(page).toLowerCase();
    const text = report(inspect(sheet))
      .replace(/^-+$/gm, '')
      .replace(/\d+\. \[ \]/g, '');
    const missing = [...new Set(text.toLowerCase().split(/\s+/))].filter(
      (word) => !said.includes(word),
    );
    expect(missing).toEqual([]);
  });

  it('has headings, tables and lists that are such', () => {
    expect(page.match(/<h1>/g)).toHaveLength(1);
    expect(page).toContain('<h2>What to do</h2>');
    expect(page.match(/<ol class="tasks">/g)).toHaveLength(1);
    expect(page).toContain(
      '<th scope="col">journal</th><th scope="col" class="number">smallest</th>',
    );
    expect(page).toContain('<th scope="row">rod 2</th>');
  });

  it('leads from the name of a section to it, and names it as its heading does', async () => {
    const pages = [
      page,
      planPage(plan),
      planPage(
        await planBuilds(
          readShed(example('untidy-shed.json'), example('untidy-shed-readings.csv')),
        ),
      ),
    ];
    for (const each of pages) {
      const links = [...each.matchAll(/(?:see|to) <a href="#([^"]*)">([^<]*)<\/a>/g)];
      for (const [, id, name] of links) {
        expect(each).toMatch(new RegExp(`<section id="${id}"><h[12]>${name}(:|<)`));
      }
      expect(read(each)).not.toMatch(/\bsee [A-Z]{2}/);
      const ids = [...each.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
      expect(new Set(ids).size).toBe(ids.length);
    }
    expect(pages[1]).toContain('see <a href="#section-the-next-engine">The next engine</a>.');
    expect(pages[2]).toContain('see <a href="#section-measure-first">Measure first</a>.');
  });

  it('runs nothing, loads nothing and says so to the browser', () => {
    expect(page).toContain("default-src 'none'");
    expect(page).not.toMatch(/<script|javascript:|\bon\w+=|<link|<iframe|@import|url\(/i);
    expect(
      page.match(/https?:\/\/[^"]*/g)?.every((url) => url === 'http://www.w3.org/2000/svg'),
    ).toBe(true);
  });

  it('holds a picture of every journal and bore, of the clearances, the oil and the orbit, each with ids of its own', () => {
    const pictures = page.match(/<svg .*?<\/svg>/gs) ?? [];
    const titles = pictures.map((svg) => expectSound(svg).title);
    for (const name of ['pulley main', 'rod 1', 'rod 2']) {
      expect(titles).toContain(`${name}: diameters round the journal`);
    }
    expect(titles).toContain('cylinder 2: diameter from the deck down');
    expect(titles).toContain('Clearances against their limits');
    expect(titles).toContain('Viscosity against temperature');
    expect(titles).toContain('Fuel in the sump');
    expect(titles).toContain('rod 2: load, film and orbit over the cycle');
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('draws the orbit that the bearing was judged by', () => {
    const { film } = inspect(sheet).oil ?? {};
    // A millionth of an inch is 0.0254 µm.
    const judged = ((film?.acceptance.films?.film ?? 0) / 0.0254e-6).toFixed(0);
    expect(page).toContain(`thinnest film ${judged} µin`);
    expect(page).toContain(`${judged} µin at the thinnest of the orbit`);
    expect(page).not.toContain(' µm at');
  });

  it('lets no name be markup', () => {
    const name = '<img src=x onerror=alert(1)>';
    const hostile = reportPage(readSheet({ version: 1, engine: name, units: 'inch' }));
    expect(hostile).not.toContain('<img');
    expect(read(hostile)).toContain(name);
  });
});

describe('the clearances of an inspection', () => {
  it('have what was not measured and what must be read again among them', () => {
    const all = clearancesOf(inspect(sheet));
    expect(all.find(({ name }) => name === 'cylinder 1: piston clearance')?.readAgain).toBe(true);
    const bare = clearancesOf(inspect(readSheet({ version: 1, engine: 'e', units: 'inch' })));
    expect(bare).toEqual([{ name: 'end play' }]);
  });
});

describe('the page of a plan', () => {
  it('shows which parts go into which engine', () => {
    const picture = expectSound(planPicture(plan, { units: 'inch', width: 320 }));
    const parts = plan.builds.flatMap(({ parts: its }) => its.map(({ name }) => name));
    expect(picture.all('goes-into')).toHaveLength(parts.length);
    for (const name of parts) expect(picture.desc).toContain(name);
    // A line of dots leads from each name to where its lines begin: one for a part that two engines take, too.
    const starts = picture
      .all('goes-into')
      .map((line) => `${line.getAttribute('x1')} ${line.getAttribute('y1')}`);
    const ends = picture
      .all('leader')
      .map((line) => `${line.getAttribute('x2')} ${line.getAttribute('y2')}`);
    expect(ends).toEqual([...new Set(starts)]);
  });

  it('marks the parts that wait for machining or repair', () => {
    // Block B is to be bored and head B skimmed; crankshaft A is only tested for cracks.
    const { texts } = expectSound(planPicture(plan, { units: 'inch', width: 720 }));
    expect(texts.filter((text) => text.includes('(needs work)'))).toEqual([
      'block B (needs work)*',
      'head B (needs work)*',
    ]);
    expect(texts).toContain('crankshaft A*');
  });

  it('shows the clearances of every engine below its name', () => {
    const page = planPage(plan, { units: 'metric' });
    const titles = (page.match(/<svg .*?<\/svg>/gs) ?? []).map((svg) => seen(svg).title);
    expect(titles.filter((title) => title === 'Clearances against their limits')).toHaveLength(4);
    expect(page).toContain('<h2>Engine 1: block A</h2>');
  });

  it('is for a shed, too', () => {
    const shed = readShed(example('pump-set-shed.json'), example('pump-set-shed-readings.csv'));
    expect(triagePage(triage(shed))).toContain("<h1>Parts in the shed: the pump set's shed</h1>");
  });

  it('breaks no size in two, and parts no table and no list from the line that names it', () => {
    const page = planPage(plan);
    expect(page).toMatch(/\.number \{[^}]*white-space: nowrap/);
    const print = /@media print \{.*$/s.exec(page)?.[0] ?? '';
    for (const next of ['.table', 'ul', 'ol']) expect(print).toContain(`p:has(+ ${next})`);
  });
});

describe('crankwright … --html', () => {
  const file = 'examples/pump-set-inch.json';
  const written = async (argv: readonly string[]) => {
    const files: Record<string, string> = {};
    const writeFile = async (path: string, text: string) => {
      files[path] = text;
    };
    return { ...(await captured(argv, { writeFile })), files };
  };

  it('writes the page and prints nothing', async () => {
    const { code, out, files } = await written(['report', file, '--html', 'new-page.html']);
    expect([code, out]).toEqual([0, '']);
    expect(files).toEqual({ 'new-page.html': reportPage(sheet) });
  });

  it('prints it where a dash is named, in the units asked for', async () => {
    const { out } = await captured(['report', file, '--html=-', '--units', 'metric']);
    expect(out).toBe(reportPage(sheet, { units: 'metric', why: false }));
  });

  it('writes over a file only by force, and says so before it plans', async () => {
    const { code, err } = await captured(['plan', 'examples/pump-set-shed.json', '--html', file]);
    expect(code).toBe(2);
    expect(err).toContain(`${file} is there already; --force writes over it`);
    const forced = await written(['report', file, '--html', 'README.md', '--force']);
    expect(forced.code).toBe(0);
    expect(Object.keys(forced.files)).toEqual(['README.md']);
  });

  it('refuses what cannot go with a page', async () => {
    expect((await captured(['report', file, '--html', 'x', '--json'])).err).toContain(
      'cannot be combined',
    );
    expect((await captured(['report', file, '--force'])).err).toContain('--force needs --html');
  });
});
