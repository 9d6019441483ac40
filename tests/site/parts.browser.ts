import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildSheet } from 'crankwright/build-sheet';
import { planBuilds } from 'crankwright/planning';
import { planPage, reportPage, triagePage } from 'crankwright/plots';
import { readShed, triage } from 'crankwright/shed';
import { inspect, readSheet, report } from 'crankwright/sheet';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { root } from '../support/repo.js';
import { bare, wordsOf, wordsOnPage } from './bare.js';
import { ready, type Visit, visit } from './browser.js';
import { tasksWhile } from './tasks.js';

const file = (name: string) => join(root, 'examples', name);
const example = (name: string) => readFileSync(file(name), 'utf8');
const shed = () => readShed(example('pump-set-shed.json'), example('pump-set-shed-readings.csv'));

let all: Visit;
beforeAll(async () => {
  all = await visit();
});
beforeEach(async () => {
  await all.page.goto(`${all.base}your-parts.html`);
  await ready(all.page);
});
afterAll(async () => {
  expect(all.faults).toEqual([]);
  await all.end();
});

const done = (what: string) => all.page.waitForSelector(`#progress:has-text("Done: ${what}")`);
/** The letters and digits of a paper, once all of it stands on the page. */
const paper = async (title: string) => {
  await all.page.waitForSelector(`[data-paper="${title}"][data-whole]`);
  const text = await all.page.textContent(`[data-paper="${title}"]`);
  return bare(text ?? '');
};
/** The file that a link saves. */
async function savedBy(words: string): Promise<string> {
  const [saved] = await Promise.all([
    all.page.waitForEvent('download'),
    all.page.click(`text=${words}`),
  ]);
  return readFileSync(await saved.path(), 'utf8');
}

describe('the page for your own parts', () => {
  it('plans the pump set as the library does, at a press of two buttons', async () => {
    await all.page.click("text=the pump set's shed");
    await done('report');
    expect(await paper('Report')).toBe(bare(wordsOnPage(triagePage(triage(shed())))));
    await all.page.click('text=Plan the engines');
    await done('plan and build sheet');
    const plan = await planBuilds(shed());
    expect(await paper('Plan')).toBe(bare(wordsOnPage(planPage(plan))));
    const sheet = buildSheet(plan, { units: 'inch', format: 'text' });
    await all.page.click('summary:has-text("Build sheet")');
    await all.page.waitForSelector('[data-paper="Build sheet"][data-whole]');
    // biome-ignore lint/performance/useDomNodeTextContent: text content has no space between the cells of a table
    const shown = await all.page.innerText('[data-paper="Build sheet"]');
    expect(wordsOf(shown)).toEqual(wordsOf(sheet));
    expect(await all.page.evaluate('document.documentElement.scrollWidth')).toBe(360);
  });

  it('reports a sheet that is chosen, in the units asked for, and plans no sheet', async () => {
    await all.page.selectOption('#units', 'metric');
    await all.page.setInputFiles('#choose', file('pump-set-inch.json'));
    await done('report');
    const sheet = readSheet(example('pump-set-inch.json'));
    const wording = { units: 'metric', why: false } as const;
    const page = reportPage(sheet, wording);
    expect(await paper('Report')).toBe(bare(wordsOnPage(page)));
    // What is drawn for a wide page as well is shown once.
    const count = (tag: string) => page.split(tag).length - 1;
    expect(await all.page.locator('[data-paper="Report"] svg:visible').count()).toBe(
      count('<svg ') - count('<svg class="wide" '),
    );
    expect(await all.page.isDisabled('#plan')).toBe(true);
    expect(await savedBy('Save as text')).toBe(report(inspect(sheet), wording));
    expect(await savedBy('Save as a page')).toBe(page);
  });

  it('takes a shed and the CSV of its readings together, and keeps to the options', async () => {
    const files = ['pump-set-shed.json', 'pump-set-shed-readings.csv'].map(file);
    await all.page.setInputFiles('#choose', files);
    await done('report');
    await all.page.fill('#at-most', '1');
    await all.page.uncheck('#buying');
    await all.page.click('#plan');
    await done('plan and build sheet');
    const plan = await planBuilds(shed(), { atMost: 1, buying: false });
    expect(await paper('Plan')).toBe(bare(wordsOnPage(planPage(plan))));
  });

  it('draws its pictures in the inks of the page, whose policy takes no style from markup', async () => {
    await all.page.emulateMedia({ colorScheme: 'dark' });
    await all.page.click("text=the pump set's engine");
    await done('report');
    await all.page.waitForSelector('[data-paper="Report"] svg.narrow rect');
    const inks = await all.page.evaluate(
      `[getComputedStyle(document.querySelector('.pictures rect')).fill, getComputedStyle(document.body).backgroundColor]`,
    );
    expect(inks).toEqual(['rgb(28, 28, 26)', 'rgb(28, 28, 26)']);
    await all.page.emulateMedia({ colorScheme: 'light' });
  });

  // A stall of the machine itself counts as work: only a task that is long every time is the page's.
  it('never holds up the page while it plans, counted in work', { retry: 2 }, async () => {
    const tasks = await tasksWhile(all.page, async () => {
      await all.page.click("text=the pump set's shed");
      await done('report');
      await all.page.click('#plan');
      await done('plan and build sheet');
      await paper('Plan');
    });
    expect(tasks.length).toBeGreaterThan(100);
    // A frame of 20 a second. On a busy machine a task takes longer by the clock, but no more work.
    expect(tasks.filter((milliseconds) => !(milliseconds <= 50))).toEqual([]);
  });

  it('says what is wrong with a file, and where', async () => {
    await all.page.click('summary');
    await all.page.fill(
      '#file',
      '{"version": 1, "engine": "pump set", "units": "inch", "crankshaft": {"endPlay": {"readings": [{"pushed": "0 thou", "pulled": "14"}]}}}',
    );
    await all.page.click('#report');
    const refusal = all.page.locator('#refusal:has-text("crankshaft.endPlay.readings[0].pulled")');
    await refusal.waitFor();
    expect(await refusal.textContent()).toContain('has no unit');
    await all.page.fill('#at-most', 'many');
    await all.page.fill('#file', example('untidy-shed.json'));
    await all.page.click('#plan');
    await all.page.locator('#refusal:has-text("atMost")').waitFor();
  });

  it('is cancelled at once, and works on', async () => {
    await all.page.click("text=the pump set's shed");
    await done('report');
    await all.page.click('#plan');
    await all.page.click('#cancel');
    expect(await all.page.textContent('#progress')).toBe('Cancelled.');
    expect(await all.page.isVisible('#cancel')).toBe(false);
    await all.page.click('#report');
    await done('report');
  });

  it('is worked by keyboard alone', async () => {
    const { keyboard } = all.page;
    const tabTo = async (selector: string) => {
      for (let i = 0; i < 30; i++) {
        await keyboard.press('Tab');
        if (
          await all.page.evaluate(`document.activeElement.matches(${JSON.stringify(selector)})`)
        ) {
          return;
        }
      }
      throw new Error(`no way to ${selector} by Tab`);
    };
    await tabTo('button[data-try*="shed"]');
    await keyboard.press('Enter');
    await done('report');
    await tabTo('#plan');
    await keyboard.press('Space');
    await done('plan and build sheet');
    await tabTo('[data-paper="Plan"] input[type="checkbox"]');
    await keyboard.press('Space');
    expect(await all.page.isChecked('[data-paper="Plan"] input >> nth=0')).toBe(true);
  });
});
