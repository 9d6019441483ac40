import { inch } from 'crankwright';
import { buildBoxes, buildSheet } from 'crankwright/build-sheet';
import { planBuilds, planReport } from 'crankwright/planning';
import { afterMachining, readShed, type Shed, writeShed } from 'crankwright/shed';
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

  it('come into the shed with the walls that were measured, once the engine is built', async () => {
    const shed = readShed(writeShed(worn));
    const [file] = buildBoxes(await planBuilds(shed), shed);
    const boxes = (file?.boxes ?? []).map((box) =>
      box.feature === 'wall' ? { ...box, reading: '0.0668 in' } : box,
    );
    const walls = boxes.filter(({ feature }) => feature === 'wall');
    expect(walls.map(({ at: where }) => where)).toEqual([
      'thinnest, at the crown, rod journal',
      'thickest, at the crown, rod journal',
    ]);
    const after = afterMachining(shed, { ...file, boxes, builtInto: 'engine 1' });
    expect(after.shells?.at(-1)).toMatchObject({
      name: 'cast shells in engine 1',
      fits: 'rods',
      pairs: 1,
      homeMade: true,
      wall: inch(0.0668),
      builtInto: 'engine 1',
    });
    expect(after.toMake).toEqual(shed.toMake);
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

describe('a block that is bored too far', () => {
  it('is sleeved with a sleeve that is made: the plan says to what bore, and with what wall', async () => {
    // 30230 has worn past the largest oversize, 200 over, of 30200 to 30205: nothing cleans it up. Sleeved
    // and bored to standard, 30000 to 30005, it has 30 to 35 round a piston of 29970, within 20 to 45.
    const shed: Shed = {
      ...single,
      ...withEngine({
        bores: { ...single.engine.bores, steps: [0, 200].map((step) => span(step, step).min) },
      }),
      blocks: [
        {
          name: 'block A',
          bores: [{ name: 'cylinder 1', readings: readings(rulerOf('inch'), 30230, { oval: 20 }) }],
        },
      ],
      machining: [{ work: 'sleeve', shop: 'the borer', price: eur(80) }],
      toMake: {
        sleeves: [
          { name: 'dear sleeve', price: eur(40), wall: span(900, 1300) },
          {
            name: 'cast sleeve',
            material: 'cast iron',
            price: eur(12),
            wall: span(940, 1250),
          },
        ],
      },
    };
    const plan = await planBuilds(shed);
    // 80 for the work and 12 for the cheaper of the two sleeves.
    expect(plan.cost).toEqual(eur(92));
    expect(plan.builds[0]?.cylinders[0]).toMatchObject({
      boreSize: span(30000, 30005),
      clearance: {
        min: expect.closeTo(span(30, 30).min, 9),
        max: expect.closeTo(span(35, 35).min, 9),
      },
    });
    const text = planReport(plan).replace(/\s+/g, ' ');
    expect(text).toContain(
      'cast sleeve (cast iron), a sleeve, for cylinder 1 of block A: finished bore 3.0000 to 3.0005 in, wall 0.0940 to 0.1250 in as it can be made; the shop chooses it; 12.00 EUR',
    );
    expect(text).toContain('It is bored to the finished size only once it is in');
    expect(text).not.toContain('dear sleeve');
    const page = await pages(shed);
    expect(page).toContain('finished bore 3.0000 to 3.0005 in, wall 0.0940 to 0.1250 in');
    // The bore is finished to the piston, so that comes first; the sleeve is the shop's to fit.
    expect(page).toContain('Do not send block A out before its pistons are in hand and measured');
    expect(page).toContain('leave that to the shop, and do not stand in line with the press');
    expect(page).toMatch(/cylinder 1 3\.0000 to 3\.0005 _+ 3\.0000 to 3\.0005/);
  });
});
