import type { EngineKind } from '../../src/reading/engine-kind.js';
import { HAPPENINGS } from '../../src/reading/index.js';
import { consequenceOf, type Fault, faultsOf } from '../../src/shed/faults.js';
import type { PartTest } from '../../src/shed/history.js';
import type { Section } from '../../src/shed/sections.js';
import type { Dice } from '../support/dice.js';
import { defined } from './random-engine.js';
import { type Ruler, STEP } from './random-measured.js';

/** What parts are drawn from. */
export interface Draw {
  readonly dice: Dice;
  readonly ruler: Ruler;
  readonly engine: EngineKind;
  /** The steps that most parts of the shed are of, in grains. */
  readonly usual: { readonly rods: number; readonly mains: number; readonly bores: number };
  /** How many of its parts in a hundred are of any step, and how many are worn or damaged. */
  readonly strays: number;
  readonly worn: number;
  /** Whether parts belong to interchange groups. */
  readonly grouped: boolean;
}

/** The usual step, or now and then another. */
export const someStep = ({ dice, usual, strays }: Draw, of: keyof Draw['usual']) =>
  dice.percent(strays) ? STEP * dice.from(0, 2) : usual[of];

/** The step of what goes with machined parts: often the next one. */
export const nextStep = (draw: Draw, of: keyof Draw['usual']) =>
  someStep(draw, of) + (draw.dice.percent(draw.worn / 2) ? STEP : 0);

/** Tests that clear a part of all that they are for, and one that finds a crack. */
const CLEAR: readonly PartTest[] = [
  { for: 'cracks', how: 'magnetic particles', found: 'none' },
  { for: 'softening', how: 'hardness tester', by: 'the grinder', found: 'none' },
];
const CRACKED: readonly PartTest[] = [{ for: 'cracks', how: 'dye', found: 'some' }];

/** Tests of a part that can be tested. */
export const anyTest = ({ dice, worn }: Draw) =>
  defined({
    tested: dice.percent(worn)
      ? dice.oneOf([CLEAR, CLEAR.slice(0, 1), CLEAR.slice(1), CRACKED])
      : undefined,
  });

/** What any part may have. */
export function anyPart({ dice, grouped, worn, engine }: Draw, section: Section, name: string) {
  // Brute force does not know what may prove good once somebody has looked it over.
  const some = faultsOf(section).filter(
    (fault) =>
      (fault !== 'spun' || engine.mains > 0) && consequenceOf(section, fault).kind !== 'look',
  );
  const mendable = some.filter((fault) => consequenceOf(section, fault, CLEAR).kind !== 'scrap');
  const faults = dice.percent(70) && mendable.length > 0 ? mendable : some;
  return defined({
    name,
    interchange:
      grouped && dice.percent(50)
        ? dice.oneOf([['early'], ['late'], ['early', 'late']] as const)
        : undefined,
    faults: dice.percent(worn / 3) ? [dice.oneOf(faults)] : undefined,
    from: dice.percent(worn) ? dice.oneOf(['donor A', 'donor B', 'donor C']) : undefined,
    happened: dice.percent(worn / 10) ? [dice.oneOf(HAPPENINGS)] : undefined,
  });
}

export const surfaceFault = ({ dice, worn }: Draw): readonly Fault[] | undefined =>
  dice.percent(worn / 6) ? [dice.oneOf(['scored', 'pitted'] as const)] : undefined;

export const places = (count: number) => Array.from({ length: count }, (_, i) => i + 1);
