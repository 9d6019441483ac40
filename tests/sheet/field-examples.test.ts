import { inspect, newSheet, readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';

interface Examples {
  readonly crankshaft: { readonly rodJournals: object; readonly endPlay: object };
  readonly 'a rod or main': object;
  readonly shells: readonly object[];
  readonly 'a cylinder': object;
  readonly cylinderLimits: object;
  readonly oil: object;
}

const STANDARDS = {
  inch: { rodJournal: '1.6245 in to 1.6250 in', bore: '3.0000 in to 3.0005 in' },
  metric: { rodJournal: '41.262 mm to 41.275 mm', bore: '76.200 mm to 76.213 mm' },
} as const;

/** What was read at each of two stations, in inches or millimetres. */
const read = (unit: string, diameter: number) => ({
  unit,
  angles: ['0 deg', '60 deg', '120 deg'],
  stations: unit === 'in' ? [0.25, 1] : [6, 25],
  diameters: [
    [diameter, diameter, diameter],
    [diameter, diameter, diameter],
  ],
});

describe.each(['inch', 'metric'] as const)('the examples in a new sheet, %s', (units) => {
  const file = newSheet({ name: 'twin', units, cylinders: 2, mains: 0, ...STANDARDS[units] });
  const examples = file['x-examples'] as Examples;
  const isInch = units === 'inch';

  it('are read where their names say, every one', () => {
    const { rodJournals } = file['crankshaft'] as { rodJournals: object };
    const unit = isInch ? 'in' : 'mm';
    const sheet = readSheet({
      ...file,
      crankshaft: {
        ...examples.crankshaft,
        rodJournals: { ...rodJournals, ...examples.crankshaft.rodJournals },
      },
      rods: [
        {
          name: 'rod 1',
          journal: { readings: read(unit, isInch ? 1.6248 : 41.27) },
          housingBore: isInch ? '1.7507 in' : '44.468 mm',
          ...examples['a rod or main'],
        },
      ],
      shells: examples.shells,
      cylinders: [
        {
          name: 'cylinder 1',
          bore: { readings: read(unit, isInch ? 3.0004 : 76.21) },
          ...examples['a cylinder'],
        },
      ],
      cylinderLimits: examples.cylinderLimits,
      oil: examples.oil,
    });
    const { endPlay, oil, rods, cylinders } = inspect(sheet);
    expect(endPlay?.finding.verdict).toBe('within');
    expect(oil?.leak).toBeDefined();
    expect(rods?.bearings[0]?.fitted?.shells).toBe('rod std');
    expect(cylinders[0]?.piston?.finding).toBeDefined();
    expect(cylinders[0]?.rings).toHaveLength(1);
  });

  it('are not read where they stand', () => {
    const { crankshaft, shells, cylinderLimits, oil } = readSheet(file);
    expect([crankshaft?.endPlay, shells, cylinderLimits, oil]).toEqual(Array(4).fill(undefined));
    expect(file['x-notes']).toContainEqual(expect.stringContaining('of a made-up engine'));
  });
});
