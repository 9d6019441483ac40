import type { UnitSystem } from '../quantities/index.js';

/** How the fields that a new sheet has no place for are written, in the shape of a sheet; of a made-up engine. */
export function fieldExamples(units: UnitSystem): Readonly<Record<string, unknown>> {
  const size = (inch: string, metric: string) => (units === 'inch' ? `${inch} in` : `${metric} mm`);
  // Limits that are copied as they stand say so in the report.
  const source = 'made up: name your manual';
  const between = (min: string, max: string) => ({ min, max, source });
  return {
    crankshaft: {
      rodJournals: {
        standard: { min: size('1.6245', '41.262'), max: size('1.6250', '41.275') },
        oilClearance: between(size('0.0012', '0.030'), size('0.0028', '0.071')),
      },
      endPlay: { readings: [{ pushed: size('0', '0'), pulled: size('0.009', '0.23') }] },
    },
    'a rod or main': { fittedShells: 'rod std' },
    shells: [
      {
        name: 'rod std',
        fits: 'rods',
        undersize: 'standard',
        wall: size('0.0618', '1.570'),
        pairs: 1,
      },
    ],
    'a cylinder': {
      piston: size('2.9965', '76.111'),
      rings: [{ name: 'top', gap: size('0.012', '0.30'), measuredIn: size('3.0002', '76.205') }],
    },
    cylinderLimits: {
      pistonClearance: between(size('0.0025', '0.064'), size('0.0045', '0.114')),
      ringGap: between(size('0.009', '0.23'), size('0.020', '0.51')),
    },
    oil: { leak: { drops: '6 per minute' } },
  };
}
