import { readFileSync } from 'node:fs';
import { reportPage } from 'crankwright/plots';
import { readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { root } from '../support/repo.js';
import { expectSound } from './seen.js';

type Given = Record<string, Record<string, unknown>>;

const whole = readFileSync(`${root}/examples/pump-set-inch.json`, 'utf8');
/** The titles of the pictures of the example's page, after a change to its file. */
function titlesOf(change: (sheet: Given) => void): readonly string[] {
  const sheet = JSON.parse(whole) as Given;
  change(sheet);
  const page = reportPage(readSheet(JSON.stringify(sheet)));
  return (page.match(/<svg .*?<\/svg>/gs) ?? []).map((svg) => expectSound(svg).title);
}
const leaveOut =
  (...fields: readonly string[]) =>
  (sheet: Given) => {
    for (const field of fields) delete sheet[field];
  };
const ofOil = ['Viscosity against temperature', 'Fuel in the sump'];

describe('a page of which little was read', () => {
  it('draws nothing of the oil where none is told of', () => {
    const titles = titlesOf(leaveOut('oil'));
    for (const title of ofOil) expect(titles).not.toContain(title);
    expect(titles.some((title) => title.includes('over the cycle'))).toBe(false);
    expect(titles).toContain('rod 1: diameters round the journal');
  });

  it('draws no bore where none was read', () => {
    const titles = titlesOf(leaveOut('cylinders', 'compressionTest'));
    expect(titles.some((title) => title.includes('from the deck down'))).toBe(false);
    expect(titles).toContain(ofOil[0]);
  });

  it('draws no orbit of a bearing whose load over the cycle is not known', () => {
    const titles = titlesOf(({ oil }) => {
      const bearing = oil?.['bearing'] as Record<string, unknown>;
      delete bearing['bigEnd'];
    });
    expect(titles.some((title) => title.includes('over the cycle'))).toBe(false);
    expect(titles).toContain(ofOil[0]);
  });

  it('draws the fuel without limits where the sheet sets none, and not at all without a sample or a leak', () => {
    expect(titlesOf(({ oil }) => delete oil?.['thresholds'])).toContain(ofOil[1]);
    expect(titlesOf(({ oil }) => delete oil?.['sample'])).not.toContain(ofOil[1]);
    expect(titlesOf(({ oil }) => delete oil?.['leak'])).not.toContain(ofOil[1]);
  });
});
