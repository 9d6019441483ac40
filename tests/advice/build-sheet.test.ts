import { readFileSync } from 'node:fs';
import { buildSheet } from 'crankwright/build-sheet';
import { planBuilds } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { beforeAll, describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';

const file = (name: string) => readFileSync(new URL(`../../examples/${name}`, import.meta.url));
const SYSTEMS = ['lubrication', 'ignition', 'cooling', 'assembly'];

/** The pages of both engines of the example's plan, if the shed file says this of how they run. */
async function pagesOf(systems: object): Promise<readonly string[]> {
  const shed = JSON.parse(file('pump-set-shed.json').toString()) as { engine: object };
  const engine = Object.fromEntries(
    Object.entries(shed.engine).filter(([field]) => !SYSTEMS.includes(field)),
  );
  const read = readShed(
    { ...shed, engine: { ...engine, ...systems } },
    file('pump-set-shed-readings.csv').toString(),
  );
  return buildSheet(await planBuilds(read), { format: 'text' })
    .split('\f')
    .slice(1);
}

/** Where words stand on a page; they must be there. */
function at(page: string, words: string): number {
  expect(flowing(page)).toContain(words);
  return flowing(page).indexOf(words);
}

/** The numbers of a row of a table, the place first. */
function row(page: string, place: string): readonly number[] {
  const line = page.split('\n').find((each) => each.startsWith(`${place} `)) ?? '';
  return (line.slice(place.length).match(/\d\.\d{4}/g) ?? []).map(Number);
}

let unstated: readonly string[];
let splash: readonly string[];
let pump: readonly string[];
beforeAll(async () => {
  unstated = await pagesOf({});
  splash = await pagesOf({
    lubrication: 'splash',
    ignition: 'magneto',
    cooling: 'hopper',
    assembly: {
      fasteners: {
        mainCaps: { locking: 'tabs' },
        rodCaps: { locking: 'pins' },
        flywheel: { locking: 'locknuts' },
      },
    },
  });
  pump = await pagesOf({ lubrication: 'pump', ignition: 'coil', cooling: 'water' });
}, 60_000);

describe('how the engine is oiled', () => {
  it('never asks a splash engine for oil pressure: it has no pump and no gauge', () => {
    for (const page of splash) {
      expect(page).not.toMatch(/oil pressure|gauge pressure|on the gauge|prime/i);
    }
  });

  it('fills the troughs by hand before the engine is turned over: the dippers find no oil else', () => {
    for (const page of splash) {
      expect(at(page, 'Trough under every rod filled by hand')).toBeLessThan(
        at(page, 'Turned by hand through two full turns'),
      );
      at(page, 'Depth that the dippers enter the oil');
    }
  });

  it('has every dipper face the way the crankshaft turns: the other way it scoops nothing', () => {
    for (const page of splash) {
      expect(at(page, 'Way the crankshaft turns')).toBeLessThan(at(page, 'its dipper facing'));
    }
  });

  it('asks an engine with a pump for oil at the gauge before the start and for pressure after it', () => {
    for (const page of pump) {
      expect(at(page, 'oil shows at the bearings or on the gauge')).toBeLessThan(
        at(page, 'Oil pressure cold'),
      );
      expect(page).not.toMatch(/dipper|trough/i);
    }
  });

  it('says that it does not know, and prints what holds for both', () => {
    for (const page of unstated) {
      at(page, 'Lubrication: not stated');
      expect(page).not.toMatch(/oil pressure|dipper|trough/i);
      at(page, 'Oil poured by hand over every bearing');
    }
  });
});

describe('what can hurt the builder', () => {
  it('earths the magneto before the engine is first turned with it: it sparks without a switch', () => {
    // TM 5-4240-501-14&P, p. 289: earth the magneto lead before spinning.
    for (const page of splash) {
      const earthed = at(page, 'Earth the leads of the magneto');
      expect(earthed).toBeLessThan(at(page, 'Valve lash'));
      expect(earthed).toBeLessThan(at(page, 'Turned by hand through two full turns'));
      expect(at(page, 'Leads of the magneto back in place')).toBeGreaterThan(
        at(page, 'Turned by hand through two full turns'),
      );
    }
  });

  it('makes the ignition dead before the turning whichever it is', () => {
    for (const page of [...pump, ...unstated]) {
      expect(at(page, 'Disconnect the battery')).toBeLessThan(at(page, 'Valve lash'));
    }
    for (const page of unstated) at(page, 'Ignition: not stated');
  });

  it('has the fire extinguisher at hand before the fuel is let in', () => {
    for (const page of [...splash, ...pump, ...unstated]) {
      expect(at(page, 'Fire extinguisher for burning liquids at hand')).toBeLessThan(
        at(page, 'Fuel turned on'),
      );
    }
  });

  it('cautions before the act', () => {
    for (const page of splash) {
      expect(at(page, 'Stand clear of flywheel')).toBeLessThan(at(page, 'Started'));
      expect(at(page, 'let them cool before you open')).toBeLessThan(at(page, 'Stopped after'));
      expect(at(page, 'Never file')).toBeLessThan(at(page, 'Housings, at right angles'));
      expect(at(page, 'Never slacken a nut')).toBeLessThan(at(page, 'Rod caps locked'));
    }
  });
});

describe('what can hurt the engine', () => {
  it('puts every cap on its own rod by its mark: a swapped cap makes a bore that is not round', () => {
    for (const page of [...splash, ...pump, ...unstated]) {
      expect(at(page, 'its own cap, mark to mark')).toBeLessThan(at(page, 'Rod caps torqued'));
    }
  });

  it('locks every fastener in the way stated, and asks where it is not', () => {
    for (const page of splash) {
      at(page, 'Rod caps locked: a new split pin');
      at(page, 'Main bearing caps locked: a new tab washer');
      at(page, 'Cylinder head: whether and how it is locked is not stated');
    }
    for (const page of pump) at(page, 'Rod caps: whether and how they are locked is not stated');
  });

  it("gives no reading more room than the shed's own limits", () => {
    // The shed: rod housing 1.7505 to 1.7510, main housing 2.1260 to 2.1265, standard bore 3.0000 to
    // 3.0005, standard main journal 1.9995 to 2.0000, standard rod journal 1.6245 to 1.6250. The spare crankshaft is
    // 0.0100 under on all its journals; the rod journals of crankshaft A are 0.0200 under.
    const [first = '', second = ''] = unstated;
    for (const [page, place, least, most] of [
      [first, 'rods A, rod A1', 1.7505, 1.751],
      [first, 'block A, pulley housing', 2.126, 2.1265],
      [first, 'cylinder 1', 3, 3.0005],
      [first, 'spare crankshaft 1, pulley main', 1.9895, 1.99],
      [first, 'spare crankshaft 1, rod 1', 1.6145, 1.615],
      [second, 'crankshaft A, pulley main', 1.9995, 2],
      [second, 'crankshaft A, rod 1', 1.6045, 1.605],
      [second, 'cylinder 1', 3.02, 3.0205],
    ] as const) {
      // Should be: two numbers; may be: the two after them.
      const [min, max] = row(page.slice(page.indexOf('Journals, at both ends')), place).slice(2);
      expect({ place, min, max }).toEqual({ place, min: least, max: most });
    }
  });

  it('has journals and bores read at the three angles that together show an oval', () => {
    for (const page of unstated) {
      at(page, 'Journals, at both ends and at 0, 60 and 120°');
      at(page, 'the bottom of the ring travel and at 0, 60 and 120°');
      expect(page).not.toMatch(/two axes/);
    }
  });

  it('has bought pistons measured before the cylinders are bored to them', () => {
    const [, second = ''] = unstated;
    expect(at(second, 'Measure pistons and shells before anything is cut')).toBeLessThan(
      at(second, 'block B: bore and hone'),
    );
    expect(at(second, 'Do not send block B out before its pistons')).toBeLessThan(
      at(second, 'block B: bore and hone'),
    );
    // Hand-computed from the shed: 3.0205 - 0.0055 to 3.0200 - 0.0025.
    expect(second).toMatch(/^piston 2 .* 3\.0165 +_+ +3\.0150 to 3\.0175/m);
  });

  it('has a line for every size of a head and its valves, with its limits or that none is stated', async () => {
    const pages = await pagesOf({ guideClearance: { min: '0.001 in', max: '0.0035 in' } });
    for (const page of pages) {
      expect(page).toMatch(/^head \w+, largest gap under a straight edge +_+ +at most 0\.0040/m);
      expect(page).toMatch(/^head \w+, bore of the valve guides +_+ +see the guide clearance/m);
      expect(page).toMatch(/, diameter of the stems +_+ +see the guide clearance/);
      expect(page).toMatch(/, thinnest margin of a valve +_+ +at least 0\.\d{4} /);
      expect(page).toMatch(/^guide clearance +.* +0\.0010 to 0\.0035 /m);
      expect(page).toMatch(/^cylinder 1 +not judged +no limit stated +_+ +_+ +_+/m);
    }
  });

  it('holds a skimmed head against the limit that the shed gives', () => {
    const [, second = ''] = unstated;
    expect(second).toMatch(/^head B, largest gap under a straight edge +_+ +at most 0\.0040/m);
  });
});
