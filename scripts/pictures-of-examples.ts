import { readFileSync } from 'node:fs';
import * as cw from 'crankwright';
import { planBuilds } from 'crankwright/planning';
import * as plots from 'crankwright/plots';
import { readShed } from 'crankwright/shed';
import { inspect, readSheet } from 'crankwright/sheet';

const example = (name: string) =>
  readFileSync(new URL(`../examples/${name}`, import.meta.url), 'utf8');

/** The pictures that `docs/pictures.md` shows, by file name; all of them of the examples. */
export async function picturesOfExamples(): Promise<ReadonlyMap<string, string>> {
  const sheet = readSheet(example('pump-set-inch.json'));
  const plan = await planBuilds(
    readShed(example('pump-set-shed.json'), example('pump-set-shed-readings.csv')),
  );
  const untidy = await planBuilds(readShed(example('untidy-shed.json')));
  const sized = { units: 'inch', width: 480 } as const;
  const [, rod] = sheet.rods ?? [];
  const [cylinder] = sheet.cylinders ?? [];
  if (!rod || !cylinder || !sheet.oil?.sample) throw new Error('the example lost its readings');
  const crank = { stroke: cw.inch(3.25), rodLength: cw.inch(6) };
  const loads = cw.bigEndLoads({
    ...crank,
    bore: cw.inch(3),
    speed: cw.rpm(1800),
    pistonMass: cw.kilogram(0.45),
    smallEndMass: cw.kilogram(0.18),
    bigEndMass: cw.kilogram(0.42),
    gas: cw.gasTrace({ ...crank, compressionRatio: cw.ratio(6) }).readings,
  });
  const clearance = cw.inch(0.0017);
  const orbit = cw.bigEndOrbit({
    journal: cw.inch(1.625),
    length: cw.inch(1),
    clearance,
    viscosity: cw.millipascalSecond(15),
    loads,
  });
  const least = {
    oil: cw.quartUS(1),
    fuel: cw.mL(5),
    leak: { running: cw.mLPerHour(0), standing: cw.mLPerHour(6) },
    log: [{ running: cw.hour(3) }, { standing: cw.hour(12) }, { running: cw.hour(3) }],
  };
  const most = {
    ...least,
    fuel: cw.mL(30),
    leak: { running: cw.mLPerHour(0), standing: cw.mLPerHour(9) },
  };
  return new Map([
    [
      'journal.svg',
      plots.journalPicture({ name: rod.name, readings: rod.journal.readings }, sized),
    ],
    ['bore.svg', plots.borePicture({ name: cylinder.name, ...cylinder.bore }, sized)],
    ['clearances.svg', plots.clearancesPicture(plots.clearancesOf(inspect(sheet)), sized)],
    [
      'big-end.svg',
      plots.bigEndPicture(
        { name: 'rod 1', orbit, loads, clearance, needed: cw.micrometre(2) },
        sized,
      ),
    ],
    ['fuel.svg', plots.fuelPicture({ least, most }, {}, sized)],
    [
      'viscosity.svg',
      plots.viscosityPicture(
        {
          oils: [{ name: 'clean oil', line: sheet.oil.line }],
          samples: [{ name: 'sample of the used oil', ...sheet.oil.sample }],
        },
        sized,
      ),
    ],
    ['plan.svg', plots.planPicture(plan, sized)],
    ['measure-first.svg', plots.measureFirstPicture(untidy, sized)],
  ]);
}
