import { type Ratio, RebuildInputError } from '../quantities/index.js';
import {
  accuracyOf,
  INSTRUMENT_WORDS,
  type InstrumentName,
  own,
  undescribed,
} from '../reading/index.js';
import type { Section, Shed } from '../shed/index.js';
import type { PlannedFeature } from './guard-bands.js';

/**
 * Checks the chance that every clearance must hold with. It can be shown only with instruments that are described:
 * what is not known of them would count as nothing.
 */
export function guardHoldsWith(shed: Shed, holdsWith: number): Ratio {
  if (!(Number.isFinite(holdsWith) && holdsWith > 0.5 && holdsWith < 1)) {
    throw new RebuildInputError({
      parameter: 'options.holdsWith',
      value: holdsWith,
      expected: 'a chance above 0.5 and below 1',
      hint: 'For example 0.95; leave it out to count sizes as read.',
    });
  }
  const missing = notDescribedFor(judgedIn(shed), shed);
  if (missing.length === 0) return holdsWith as Ratio;
  const words = missing.map((name) => `instruments.${name} (${INSTRUMENT_WORDS[name]})`);
  throw new RebuildInputError({
    parameter: 'options.holdsWith',
    value: holdsWith,
    expected: 'a shed that describes the instruments its clearances are read with',
    hint: `Say in the shed how well these measure: ${words.join(', ')}.`,
  });
}

/** The instruments that some features are read with and that the shed does not describe. */
export function notDescribedFor(
  features: readonly PlannedFeature[],
  shed: Shed,
): readonly InstrumentName[] {
  const accuracy = accuracyOf(shed);
  return [...new Set(features.flatMap((feature) => undescribed(feature, accuracy)))];
}

/** What plans of a shed judge. An oil clearance always has limits: the maker's or the rule of thumb. */
function judgedIn(shed: Shed): readonly PlannedFeature[] {
  const { bores, guideClearance, endPlay } = shed.engine;
  const has = (section: Section, field: string) =>
    [...(shed[section] ?? []), ...(shed.toBuy?.[section] ?? [])].some((part) =>
      Object.hasOwn(part, field),
    );
  const judges = (limits: Parameters<typeof own<'length'>>[0]) => own(limits).limits !== undefined;
  return [
    'oil clearance',
    ...(judges(bores.pistonClearance) ? (['piston clearance'] as const) : []),
    ...(judges(guideClearance) && has('heads', 'guideBore') && has('valveSets', 'stem')
      ? (['guide clearance'] as const)
      : []),
    ...(judges(endPlay) && has('blocks', 'thrustWidth') && has('crankshafts', 'thrustWidth')
      ? (['end play by washers'] as const)
      : []),
  ];
}
