import { inch, mm } from 'crankwright';
import { buildSheet } from 'crankwright/build-sheet';
import type { AssemblyData } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { plain, twoEngines } from '../planning/plans.js';

type Fits = NonNullable<AssemblyData['fits']>;

const pageWith = (fits: Fits) =>
  flowing(
    buildSheet(
      {
        ...twoEngines,
        units: 'metric',
        engine: { ...twoEngines.engine, assembly: { fits } },
        builds: [plain],
      },
      { format: 'text' },
    ),
  );

describe('fits on the build sheet', () => {
  it('leaves room to measure one that was not, and says that no limits are stated', () => {
    const page = pageWith([{ name: 'governor spindle' }]);
    expect(page).toMatch(/governor spindle not measured _+ not judged no limit stated/);
    expect(page).not.toContain('Do not assemble or press');
    expect(page).not.toContain('Parts under a press can burst');
  });

  it('gives what new parts of a class measure, and the caution of a press where they are tight', () => {
    // From memory, of ISO 286-2:2010: 30 H7 is 0 to +21 µm, 30 p6 is +22 to +35 µm.
    const page = pageWith([{ name: 'bush in its boss', isoFit: '30H7/p6' }]);
    expect(page).toContain(
      'bush in its boss, new parts: hole 30.000 to 30.021 mm, shaft 30.022 to 30.035 mm',
    );
    expect(page).toContain('Parts under a press can burst and fly');
  });

  it('stops one that reads outside of what is wanted before it is assembled', () => {
    // 20.060 - 20.000 = 0.060 mm, above 0.02 mm.
    const pin = { name: 'pin', clearance: { max: mm(0.02) }, shaft: mm(20) };
    expect(pageWith([{ ...pin, hole: mm(20.06) }])).toContain(
      'Do not assemble or press pin before it is settled: pin: clearance 0.060 mm: 0.040 mm above the limit of 0.020 mm',
    );
    expect(pageWith([{ ...pin, hole: mm(20.01) }])).not.toContain('Do not assemble or press');
  });

  it('judges an inch fit that is not measured by nothing', () => {
    const page = pageWith([{ name: 'idler', inchFit: { fitClass: 'RC4', basic: inch(1) } }]);
    expect(page).toContain('idler not measured');
    expect(page).toContain('idler, new parts: hole');
  });
});
