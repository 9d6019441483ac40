import { bigEndOrbit } from '../bearings/index.js';
import type { Pictures } from '../pages/index.js';
import { hour, type Time, type UnitSystem, type Volume } from '../quantities/index.js';
import { journalWords } from '../reading/index.js';
import type { Inspection, OilSheet, Sheet } from '../sheet/index.js';
import { loadsOf, readingsAsJudged } from '../sheet/internal.js';
import { bigEndPicture } from './big-end-picture.js';
import { borePicture } from './bore-picture.js';
import { clearancesOf } from './clearances-of.js';
import { clearancesPicture } from './clearances-picture.js';
import { fuelPicture } from './fuel-picture.js';
import { journalPicture } from './journal-picture.js';
import { NARROW, twice } from './page-pictures.js';
import { viscosityPicture } from './viscosity-picture.js';

/** The pictures of a report, each below the section it belongs to. */
export function sheetPictures(
  sheet: Sheet,
  inspection: Inspection,
  units: UnitSystem,
): readonly Pictures[] {
  const readings = readingsAsJudged(sheet);
  const narrow = (id: string) => ({ units, width: NARROW, id });
  const journals = (['mains', 'rods'] as const).map((kind) => ({
    after: journalWords(kind).toUpperCase(),
    pictures: (inspection[kind]?.bearings ?? []).map(({ name, readAgain = [] }, i) =>
      journalPicture(
        { name, readings: readings[kind][i] ?? [], odd: readAgain },
        narrow(`${kind}-${i + 1}`),
      ),
    ),
  }));
  const bores = inspection.cylinders.map(({ name, readAgain = [] }, i) => {
    const { ringTravel } = sheet.cylinders?.[i]?.bore ?? {};
    const bore = {
      name,
      readings: readings.cylinders[i] ?? [],
      odd: readAgain,
      ...(ringTravel && { ringTravel }),
    };
    return { after: name.toUpperCase(), pictures: [borePicture(bore, narrow(`bore-${i + 1}`))] };
  });
  const clearances = twice(
    (size) => clearancesPicture(clearancesOf(inspection), { units, ...size }),
    'clearances',
  );
  return [
    { after: 'WHAT TO DO', pictures: [clearances] },
    ...journals,
    ...bores,
    { after: 'OIL', pictures: oilPictures(sheet, inspection, units) },
  ];
}

function oilPictures({ oil }: Sheet, inspection: Inspection, units: UnitSystem): readonly string[] {
  if (oil === undefined || !('line' in oil) || inspection.oil === undefined) return [];
  const narrow = (id: string) => ({ units, width: NARROW, id });
  return [
    viscosityPicture(
      {
        oils: [{ name: 'clean oil', line: oil.line }],
        ...(oil.sample && { samples: [{ name: 'sample of the used oil', ...oil.sample }] }),
      },
      narrow('viscosity'),
    ),
    ...fuelOf(oil, inspection.oil, narrow('fuel')),
    ...orbitOf(oil, inspection.oil, narrow('big-end')),
  ];
}

type Oil = OilSheet;
type OilReport = NonNullable<Inspection['oil']>;
type Narrow = Parameters<typeof fuelPicture>[2];

/** The longest time that the fuel is drawn over, and the most of it that there is room for. */
const DAY = 24;
const MOST = 0.8;

/** What a day of standing does to the oil as it is, where it is known what is in it. */
function fuelOf({ sump, thresholds }: Oil, report: OilReport, options: Narrow): readonly string[] {
  const { leak, sample } = report;
  const { span } = sample?.byLaw ?? {};
  if (leak === undefined || span === undefined || span.max > MOST || leak.flow.max <= 0) return [];
  const standing = Math.min(hour(DAY), (8 * sump) / leak.flow.max) as Time;
  const story = (fraction: number, flow: typeof leak.flow.max) => ({
    oil: sump,
    fuel: ((sump * Math.max(0, fraction)) / (1 - Math.max(0, fraction))) as Volume,
    leak: flow,
    log: [{ standing }],
  });
  return [
    fuelPicture(
      { least: story(span.min, leak.flow.min), most: story(span.max, leak.flow.max) },
      thresholds
        ? {
            thresholds: { act: thresholds.act, critical: thresholds.critical },
            basis: {
              kind: 'specified',
              ...(thresholds.source !== undefined && { by: thresholds.source }),
            },
          }
        : {},
      options,
    ),
  ];
}

/** The orbit that the bearing was judged by, if it was judged by one that settled. */
function orbitOf({ bearing }: Oil, { film }: OilReport, options: Narrow): readonly string[] {
  const films = film?.acceptance.films;
  if (bearing?.bigEnd === undefined || films?.orbit?.outcome !== 'settled') return [];
  const { name, journal, length, speed, bigEnd } = bearing;
  const { clearance, mean } = films;
  const loads = loadsOf(bigEnd, speed);
  const orbit = bigEndOrbit({ journal, length, clearance, viscosity: mean.viscosity, loads });
  return orbit.outcome === 'settled'
    ? [bigEndPicture({ name, orbit, loads, clearance }, options)]
    : [];
}
