import { buildSheet } from 'crankwright/build-sheet';
import { planBuilds, planReport } from 'crankwright/planning';
import type { Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { readings, rulerOf } from '../planning/random-measured.js';
import { eur, single, span, withEngine } from '../planning/single-shed.js';

// Sizes are tenths of a thou.

const grinder = [{ work: 'grind rod journals' as const, shop: 'the grinder', price: eur(18) }];
/** A worn journal, no undersize shells, and a shop that makes shells. */
const worn: Shed = {
  ...single,
  ...withEngine({
    rodJournals: {
      ...single.engine.rodJournals,
      steps: [0, 100].map((step) => span(step, step).min),
    },
  }),
  crankshafts: [
    {
      name: 'crankshaft A',
      rodJournals: [
        { name: 'rod journal', readings: readings(rulerOf('inch'), 16240, { oval: 20 }) },
      ],
    },
  ],
  machining: grinder,
  toMake: {
    shells: [{ name: 'cast shells', fits: 'rods', price: eur(30), wall: span(600, 700) }],
  },
};
const pages = async (shed: Shed) => flowing(buildSheet(await planBuilds(shed), { format: 'text' }));

/** Where words stand on a sheet; they must be there. */
function at(page: string, words: string): number {
  expect(page).toContain(words);
  return page.indexOf(words);
}

describe('shells that are made to suit a journal that is ground', () => {
  it('are made after it: nobody waits for shells that there cannot be', async () => {
    const plan = await planBuilds(worn);
    expect(plan.builds[0]?.jobs.map(({ work }) => work)).toEqual(['grind rod journals']);
    expect(plan.builds[0]?.bearings[0]?.madeTo).toBeDefined();
    const page = await pages(worn);
    expect(page).not.toContain('shells are in hand');
    expect(page).not.toContain('Measure pistons and shells before anything is cut');
    const sent = at(page, 'Send crankshaft A out first. Its rod shells are made afterwards');
    const measured = at(page, 'Clean and measure every part');
    const made = at(page, 'Have the parts made');
    expect(sent).toBeLessThan(measured);
    expect(measured).toBeLessThan(made);
    expect(made).toBeLessThan(at(page, 'Assemble dry'));
    // The journal is ground to its step, not to a wall that nobody has made: 16245 to 16250, less 100.
    expect(page).toMatch(/crankshaft A, rod journal 1\.6145 to 1\.6150 _+ 1\.6145 to 1\.6150/);
    // At 16145 to 16150 in 17505, clearance 10 to 30: walls (17505 - 16145 - 30) / 2 = 665 and
    // (17505 - 16150 - 10) / 2 = 672.5, both held inwards.
    expect(page).toMatch(/cast shells rod journal 0\.0669 _+ _+ 0\.0665 to 0\.0672/);
  });

  it('are waited for where they are in hand or bought', async () => {
    const { toMake: _, ...others } = worn;
    const bought = {
      ...others,
      toBuy: {
        shells: [
          {
            name: 'shells 10 under',
            fits: 'rods' as const,
            undersize: span(100, 100).min,
            wall: span(668, 668),
            pairs: 1,
            price: eur(14),
          },
        ],
      },
    };
    const page = await pages(bought);
    expect(page).toContain(
      'Do not send crankshaft A out before its rod shells are in hand and measured: the rod journals are ground to them.',
    );
    expect(page).not.toContain('Have the parts made');
    expect(planReport(await planBuilds(bought))).not.toContain('TO MAKE');
  });
});

describe('an engine without head and valves', () => {
  it('has no lines for them, and no heading over none', async () => {
    const { toMake: _, ...plain } = { ...single, toMake: undefined };
    const page = await pages(plain as Shed);
    expect(page).not.toMatch(
      /straight edge|the valve guides|of the stems|margin of a valve|guide clearance/,
    );
    // The thrust faces of block and crankshaft are there in every engine.
    expect(page).toContain('crankshaft A, distance between the thrust faces');
  });
});
