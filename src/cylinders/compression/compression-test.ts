import { guardFields, guardList, guardText, showIn } from '../../judging/internal.js';
import { type GaugePressure, psiGauge, RebuildInputError } from '../../quantities/index.js';
import { compressionReading, readingsApart, riseWithOil } from './domains.js';
import { judgeRule, type ReadCylinder, type SortedReadings } from './judge-rule.js';
import { oiledCylinders } from './oiled.js';
import { type CompressionRule, guardRules } from './rules.js';
import type {
  CompressionReadings,
  CompressionTest,
  JudgedCompression,
  JudgedRule,
  OiledCylinder,
} from './test-types.js';

const TEST = ['cylinders', 'rules', 'repeatsWithin', 'gaugeWithin', 'risesBy'] as const;
const CYLINDER = ['name', 'dry', 'wet', 'head'] as const;

/**
 * Judges a compression test by the rules that the caller picks. Published rules contradict each other
 * (`publishedCompressionRules`): several at once may disagree, and the result says so. The maker's own rule counts
 * first.
 *
 * Errors enter the verdict, as the root of the sum of their squares: how a cylinder repeats counts wherever cylinders
 * are compared; the gauge's own error counts in full against a figure only. A cylinder that was not read leaves a rule
 * undecided, unless the others break it already.
 *
 * Two hints come with it, both rules of thumb and no verdicts. Oil that raises a low cylinder speaks of rings or bore;
 * one that stays low, of valves or gasket. Use a teaspoon or less: 5 mL in a chamber of 50 mL already raises the
 * reading by an eighth, whatever the rings are like. And two low neighbours that oil does not raise may leak into each
 * other through the gasket. `leakDown` tells more.
 *
 * Test warm, all plugs out, throttle open, decompressor off, the same number of turns for each. Earth the plug leads
 * away from the openings and shut the fuel: what is blown out burns. Keep clear of what turns.
 *
 * @param test - all cylinders as far as they were read, the rules, and the errors as far as they are known
 * @returns what the rules say, each and together, what oil did, and what was not read
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there is no cylinder or
 * no rule, two cylinders have one name, a rule is unknown, or no cylinder was read
 * @see Source: TM 1-1500-204-23-1 for the test; rules as in `publishedCompressionRules`
 * @example
 * ```ts
 * const test = compressionTest({
 *   cylinders: [{ name: '1', dry: psiGauge(95) }, { name: '2', dry: psiGauge(72), wet: psiGauge(90) }],
 *   rules: [
 *     { kind: 'share of highest', least: ratio(0.75), basis: { kind: 'specified', by: 'the manual' } },
 *     { kind: 'spread', most: psi(20) },
 *   ],
 * });
 * test.outcome; // "rules disagree"
 * test.rules.map(({ verdict }) => verdict).join(); // "kept,broken"
 * test.oiled[0]?.suggests; // "rings or bore"
 * ```
 */
export function compressionTest(test: CompressionTest): JudgedCompression {
  guardFields('test', test, TEST);
  const read = guardCylinders(test.cylinders);
  guardRules('rules', test.rules);
  const { repeatsWithin, gaugeWithin, risesBy } = test;
  if (repeatsWithin !== undefined) readingsApart('repeatsWithin', repeatsWithin);
  if (gaugeWithin !== undefined) readingsApart('gaugeWithin', gaugeWithin);
  const least = risesBy === undefined ? A_TENTH : riseWithOil('risesBy', risesBy);
  const readings = sorted(read, repeatsWithin ?? 0, gaugeWithin ?? 0, test.cylinders.length);
  const rules = test.rules.map((rule) => judgeRule(rule, readings));
  const low = new Set(rules.flatMap((rule) => rule.low));
  const oiled = oiledCylinders(test.cylinders, low, least, readings.repeats);
  const own = rules.filter(({ rule }) => isOfThisEngine(rule));
  return {
    outcome: together(rules),
    ...(own.length > 0 && { byOwnRules: together(own) }),
    rules,
    readings: { min: readings.lowest.dry, max: readings.highest.dry },
    average: readings.average as GaugePressure,
    oiled,
    gasketBetween: lowNeighbours(test.cylinders, low, oiled),
    notRead: test.cylinders.flatMap(({ name, dry }) => (dry === undefined ? [name] : [])),
    takenAsExact: [
      ...(gaugeWithin === undefined ? (['gauge'] as const) : []),
      ...(repeatsWithin === undefined ? (['repeats'] as const) : []),
    ],
  };
}

const A_TENTH = 0.1;
/** A gauge that shows less than this on every cylinder was not connected. */
const A_BREATH = 1000;

function guardCylinders(cylinders: readonly CompressionReadings[]): readonly ReadCylinder[] {
  guardList('cylinders', cylinders, 1, 'cylinders');
  const names = new Set<string>();
  const read = cylinders.flatMap((one, i) => {
    const at = `cylinders[${i}]`;
    guardFields(at, one, CYLINDER);
    const { name, dry, wet, head } = one;
    if (names.has(guardText(`${at}.name`, name))) throw twice(`${at}.name`, name);
    names.add(name);
    if (wet !== undefined) compressionReading(`${at}.wet`, wet);
    if (head !== undefined) guardText(`${at}.head`, head);
    return dry === undefined ? [] : [{ name, dry: compressionReading(`${at}.dry`, dry) }];
  });
  if (read.some(({ dry }) => dry >= A_BREATH)) return read;
  throw new RebuildInputError({
    parameter: 'cylinders',
    value: cylinders,
    shown:
      read.length === 0
        ? 'a list without a reading'
        : showIn(read[0]?.dry as GaugePressure, psiGauge),
    expected: 'a reading of at least one cylinder',
    hint: 'Was the gauge screwed in, and did the engine turn? Readings are pascals; wrap them, e.g. psiGauge(95).',
  });
}

function twice(parameter: string, value: string): RebuildInputError {
  return new RebuildInputError({
    parameter,
    value,
    shown: `"${value}"`,
    expected: 'a name that no other cylinder has',
    hint: 'The result names cylinders: number them as on the engine.',
  });
}

function sorted(
  cylinders: readonly ReadCylinder[],
  repeats: number,
  gauge: number,
  all: number,
): SortedReadings {
  const first = cylinders[0] as ReadCylinder;
  let [lowest, highest, sum] = [first, first, 0];
  for (const one of cylinders) {
    sum += one.dry;
    if (one.dry < lowest.dry) lowest = one;
    if (one.dry > highest.dry) highest = one;
  }
  const incomplete = cylinders.length < all;
  const average = sum / cylinders.length;
  return { cylinders, lowest, highest, average, repeats, gauge, incomplete };
}

/** The maker's or the caller's own; a rule of thumb and another engine's rule only advise. */
const isOfThisEngine = ({ basis = { kind: 'specified' } }: CompressionRule): boolean =>
  basis.kind === 'specified' || (basis.kind === 'published' && !basis.forAnotherEngine);

function together(rules: readonly JudgedRule[]): JudgedCompression['outcome'] {
  const says = (verdict: JudgedRule['verdict']) => rules.some((rule) => rule.verdict === verdict);
  if (says('broken')) return says('kept') ? 'rules disagree' : 'broken';
  return says('undecided') ? 'undecided' : 'kept';
}

/** Pairs that stand next to each other under one head, both low, and neither raised by oil. */
function lowNeighbours(
  cylinders: readonly CompressionReadings[],
  low: ReadonlySet<string>,
  oiled: readonly OiledCylinder[],
): readonly (readonly [string, string])[] {
  const raised = new Set(
    oiled.flatMap(({ cylinder, suggests }) => (suggests === 'rings or bore' ? [cylinder] : [])),
  );
  const suspect = ({ name }: CompressionReadings) => low.has(name) && !raised.has(name);
  return cylinders.flatMap((one, i) => {
    const next = cylinders[i + 1];
    if (next === undefined || one.head !== next.head) return [];
    return suspect(one) && suspect(next) ? [[one.name, next.name] as const] : [];
  });
}
