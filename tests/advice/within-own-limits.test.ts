import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';

// An owner who states the manual's service limits: what they let pass is not machined by a rule of thumb.

type Row = readonly [number, number, number];
const table = (diameters: readonly Row[], stations: readonly number[]) => ({
  unit: 'in',
  angles: ['0 deg', '60 deg', '120 deg'],
  stations,
  diameters,
});

const bore = (name: string, diameters: readonly Row[], piston: string | undefined) => ({
  name,
  bore: { readings: table(diameters, [0.5, 2, 3.5]) },
  ...(piston !== undefined && { piston }),
});
/** Worn at the top: taper 0.0031 in, out-of-round 0.0004 in, up to 3.0038 in. */
const WORN: readonly Row[] = [
  [3.0038, 3.0036, 3.0034],
  [3.002, 3.002, 3.0018],
  [3.0006, 3.0005, 3.0005],
];
const NEW: readonly Row[] = [
  [3.0003, 3.0003, 3.0003],
  [3.0003, 3.0003, 3.0003],
  [3.0003, 3.0003, 3.0003],
];
const over = (by: number) => NEW.map((row) => row.map((each) => each + by) as unknown as Row);

const cylinderLimits = {
  taper: { max: '1 thou', service: { max: '5 thou' }, source: 'the manual' },
  pistonClearance: { min: '2.5 thou', max: '4.5 thou', service: { max: '9 thou' } },
};
const bores = { standard: { min: '3.0000 in', max: '3.0005 in' } };

const inspected = (fields: object) =>
  inspect(readSheet({ version: 1, engine: 'pump set', units: 'inch', ...fields }));
const said = (fields: object) =>
  actionsFrom(inspected(fields)).flatMap((action) => describeAction(action, { units: 'inch' }));
const order = (cylinders: readonly object[], more: object = {}) =>
  said({ bores, cylinderLimits, cylinders, ...more }).find((text) => text.includes('hone to'));

describe('a worn bore that every stated limit lets pass', () => {
  // 3.0038 - 2.9962 = 0.0076 in, within the service limit of 0.0090 in.
  const worn = bore('cylinder 1', WORN, '2.9962 in');
  const good = bore('cylinder 2', NEW, '2.9965 in');

  it('stays, though it is further from its size than the rule of thumb allows', () => {
    const inspection = inspected({ bores, cylinderLimits, cylinders: [worn, good] });
    expect(inspection.boring?.outcome).toBe('use as it is');
    expect(flowing(report(inspection))).toContain(
      'computed: its clearance with the piston in it holds as it is',
    );
  });

  it('is bored where the piston is too loose in it, or was not measured', () => {
    // 3.0038 - 2.9940 = 0.0098 in, past 0.0090 in.
    expect(order([bore('cylinder 1', WORN, '2.9940 in'), good])).toContain('hone to');
    expect(order([bore('cylinder 1', WORN, undefined), good])).toContain('hone to');
  });

  it('is bored where the sheet itself says how far a size may be off', () => {
    const own = { bores: { ...bores, sizeAllowance: '1 thou' } };
    expect(order([worn, good], own)).toContain('hone to');
  });

  it('lets no other bore pass that has no piston to show for it', () => {
    expect(order([worn, bore('cylinder 2', WORN, undefined)])).toContain('hone to');
  });

  it('may stay beside one that was bored before, if the manual allows two sizes', () => {
    const text = order([worn, bore('cylinder 2', over(0.02), '3.0165 in')]);
    expect(text).toMatch(
      /^cylinder 1 reads sound at standard, the others at 0\.0200 in over: .* none needs boring, if the manual allows it; else get the pistons and rings for cylinder 1 and measure them first, and the wall of cylinder 1 at its thinnest, then bore/,
    );
  });
});

describe('an order to bore one cylinder', () => {
  it('names it, and says of which size it is', () => {
    const cylinders = [
      bore('cylinder 1', WORN, '2.9940 in'),
      bore('cylinder 2', over(0.02), '3.0165 in'),
    ];
    expect(order(cylinders)).toContain(
      'get the pistons and rings for cylinder 1 and measure them first, and the wall of cylinder 1 at its thinnest, then bore cylinder 1, and none of the others, to',
    );
    expect(flowing(report(inspected({ bores, cylinderLimits, cylinders })))).toContain(
      'cylinder 1 is to be bored: it reads 3.0005 to 3.0038 in, and the step asks for 3.0200 to 3.0205 in',
    );
  });
});

describe('a worn journal that every stated limit lets pass', () => {
  const journals = {
    standard: { min: '1.6245 in', max: '1.6250 in' },
    shape: { max: '0.5 thou', service: { max: '1.5 thou' } },
    oilClearance: { min: '1.2 thou', max: '2.4 thou', service: { max: '4 thou' } },
  };
  const rod = (name: string, row: Row, fittedShells: string) => ({
    name,
    journal: { readings: table([row, row], [0.25, 1]) },
    housingBore: '1.7508 in',
    fittedShells,
  });
  const shells = [
    { name: 'std', fits: 'rods', undersize: 'standard', wall: '0.0621 in', pairs: 2 },
    { name: 'ten', fits: 'rods', undersize: '10 under', wall: '0.0670 in', pairs: 1 },
  ];
  // 1.7508 - 2 * 0.0621 - 1.6233 = 0.0033 in, within the service limit of 0.0040 in.
  const worn = rod('rod 1', [1.6243, 1.6238, 1.6233], 'std');

  it('keeps its shells where they are serviceable too: none are bought', () => {
    const sheet = {
      crankshaft: { rodJournals: journals },
      shells,
      rods: [worn, rod('rod 2', [1.6247, 1.6247, 1.6247], 'std')],
    };
    expect(inspected(sheet).rods?.pairsToBuy).toBe(0);
    expect(said(sheet).join('\n')).not.toMatch(/get \d pairs? of shells/);
  });

  it('has the choice not to be ground where the other stands at another size', () => {
    const text = said({
      crankshaft: { rodJournals: journals },
      shells,
      rods: [worn, rod('rod 2', [1.6148, 1.6148, 1.6148], 'ten')],
    });
    expect(text.some((each) => each.startsWith('rod 1 reads sound at standard'))).toBe(true);
    expect(text.join('\n')).not.toMatch(/if none is ground, get/);
    // What stays as it is found is told beside the choice, rod by rod.
    expect(text).toContainEqual(expect.stringMatching(/^rod 1: if none is ground, keep "std"/));
    expect(text).toContainEqual(expect.stringMatching(/^rod 2: if none is ground, keep "ten"/));
  });
});
