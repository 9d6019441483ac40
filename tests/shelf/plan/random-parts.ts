import type { Length } from 'crankwright';
import type { EngineKind } from '../../../src/shelf/engine-kind.js';
import { consequenceOf, type Fault, faultsOf } from '../../../src/shelf/faults.js';
import type {
  BlockPart,
  CrankshaftPart,
  HeadPart,
  HousingPlace,
  JournalPlace,
  Parts,
  PistonSetPart,
  RingSetPart,
  RodsPart,
  Section,
  ShellPart,
  ThrustWasherPart,
  ValveSetPart,
} from '../../../src/shelf/shelf.js';
import type { Dice } from '../../support/dice.js';
import { defined, SIZES } from './random-engine.js';
import { about, type Ruler, readings, STEP } from './random-measured.js';

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
const someStep = ({ dice, usual, strays }: Draw, of: keyof Draw['usual']) =>
  dice.percent(strays) ? STEP * dice.from(0, 2) : usual[of];

/** The step of what goes with machined parts: often the next one. */
const nextStep = (draw: Draw, of: keyof Draw['usual']) =>
  someStep(draw, of) + (draw.dice.percent(draw.worn / 2) ? STEP : 0);

/** Draws a part of every section. */
export const randomPart: {
  readonly [S in Section]: (draw: Draw, name: string) => Parts[S][number];
} = {
  blocks: randomBlock,
  crankshafts: randomCrankshaft,
  rods: randomRods,
  pistonSets: randomPistons,
  ringSets: randomRings,
  shells: randomShells,
  thrustWashers: randomWashers,
  heads: randomHead,
  valveSets: randomValves,
};

/** What any part may have. */
function anyPart({ dice, grouped, worn, engine }: Draw, section: Section, name: string) {
  const some = faultsOf(section).filter((fault) => fault !== 'spun' || engine.mains > 0);
  const mendable = some.filter((fault) => consequenceOf(section, fault).kind !== 'scrap');
  const faults = dice.percent(70) && mendable.length > 0 ? mendable : some;
  return defined({
    name,
    interchange:
      grouped && dice.percent(50)
        ? dice.oneOf([['early'], ['late'], ['early', 'late']] as const)
        : undefined,
    faults: dice.percent(worn / 3) ? [dice.oneOf(faults)] : undefined,
  });
}

const surfaceFault = ({ dice, worn }: Draw): readonly Fault[] | undefined =>
  dice.percent(worn / 6) ? [dice.oneOf(['scored', 'pitted'] as const)] : undefined;

const places = (count: number) => Array.from({ length: count }, (_, i) => i + 1);

function randomBlock(draw: Draw, name: string): BlockPart {
  const { dice, ruler, engine } = draw;
  const step = someStep(draw, 'bores');
  const worn = dice.percent(10 + draw.worn);
  const hasWalls = dice.percent(30);
  return defined({
    ...anyPart(draw, 'blocks', name),
    bores: places(engine.cylinders).map((i) => {
      const bad = worn && dice.percent(70);
      const largest = SIZES.bore[1] + step + (bad ? dice.from(15, 70) : dice.from(-3, 8));
      return defined({
        name: `cylinder ${i}`,
        readings: readings(ruler, largest, {
          oval: bad ? dice.from(2, 15) : dice.from(0, 3),
          taper: dice.from(0, 3),
        }),
        wall: hasWalls ? ruler.length(SIZES.leastWall + dice.from(30, 200)) : undefined,
        faults: surfaceFault(draw),
      });
    }),
    mainHousings: engine.mains > 0 ? randomHousings(draw, 'mains', engine.mains) : undefined,
    thrustWidth: randomWidth(draw, SIZES.thrust.block),
  });
}

function randomWidth({ dice, ruler }: Draw, width: number): Length | undefined {
  return dice.percent(80)
    ? ruler.length(width + dice.oneOf([0, 0, 60]) + dice.from(-12, 12))
    : undefined;
}

/** Housings, mostly within their limits. */
function randomHousings(
  { dice, ruler }: Draw,
  kind: 'rods' | 'mains',
  count: number,
): readonly HousingPlace[] {
  const [least, most] = SIZES[kind].housing;
  return places(count).map((i) => ({
    name: kind === 'rods' ? `big end ${i}` : `main ${i}`,
    housingBore: about(
      ruler,
      dice,
      dice.percent(8) ? most + dice.from(1, 8) : dice.from(least, most - 1),
    ),
  }));
}

function randomCrankshaft(draw: Draw, name: string): CrankshaftPart {
  const { engine } = draw;
  const throws = engine.cylinders / (engine.rodsPerJournal ?? 1);
  return defined({
    ...anyPart(draw, 'crankshafts', name),
    rodJournals: randomJournals(draw, 'rods', throws),
    mainJournals: engine.mains > 0 ? randomJournals(draw, 'mains', engine.mains) : undefined,
    thrustWidth: randomWidth(draw, SIZES.thrust.crankshaft),
  });
}

/** Journals that were ground to one step, and wore since. */
function randomJournals(
  draw: Draw,
  kind: 'rods' | 'mains',
  count: number,
): readonly JournalPlace[] {
  const { dice, ruler } = draw;
  const step = someStep(draw, kind);
  const worn = dice.percent(10 + draw.worn);
  return places(count).map((i) => {
    const bad = worn && dice.percent(70);
    const fresh = SIZES[kind].journal[1] - step;
    const largest = fresh - (bad ? dice.from(8, 50) : dice.from(0, 6));
    return defined({
      name: kind === 'rods' ? `rod journal ${i}` : `main journal ${i}`,
      readings: readings(ruler, largest, {
        oval: bad ? dice.from(2, 12) : dice.from(0, 3),
        taper: dice.from(0, 2),
      }),
      runout: dice.percent(40) ? ruler.length(dice.from(0, 90)) : undefined,
      faults: surfaceFault(draw),
    });
  });
}

function randomRods(draw: Draw, name: string): RodsPart {
  const count = draw.dice.percent(50) ? 1 : draw.engine.cylinders;
  return { ...anyPart(draw, 'rods', name), rods: randomHousings(draw, 'rods', count) };
}

function randomPistons(draw: Draw, name: string): PistonSetPart {
  const { dice, ruler, engine } = draw;
  const step = nextStep(draw, 'bores');
  return defined({
    ...anyPart(draw, 'pistonSets', name),
    count: dice.percent(10) ? 2 : undefined,
    oversize: ruler.length(step),
    pistons: places(engine.cylinders).map((i) => ({
      name: `piston ${i}`,
      diameter: about(ruler, dice, SIZES.piston + step + dice.from(-5, 5)),
    })),
  });
}

function randomRings(draw: Draw, name: string): RingSetPart {
  const { dice, ruler } = draw;
  const step = nextStep(draw, 'bores');
  const [least, most] = SIZES.ringGap;
  return defined({
    ...anyPart(draw, 'ringSets', name),
    count: dice.percent(30) ? 2 : undefined,
    oversize: ruler.length(step),
    rings: dice.percent(60)
      ? places(2).map((i) => ({
          name: `ring ${i}`,
          gap: ruler.length(dice.from(least, most + 30)),
          measuredIn: ruler.length(SIZES.bore[0] + step + dice.from(0, 5)),
        }))
      : undefined,
  });
}

function randomShells(draw: Draw, name: string): ShellPart {
  const { dice, ruler, engine } = draw;
  const fits = engine.mains > 0 && dice.percent(50) ? 'mains' : 'rods';
  const step = nextStep(draw, fits);
  return {
    ...anyPart(draw, 'shells', name),
    fits,
    undersize: ruler.length(step),
    wall: about(ruler, dice, SIZES[fits].wall + step / 2 + dice.from(-2, 2)),
    pairs: dice.from(1, 8),
  };
}

function randomWashers(draw: Draw, name: string): ThrustWasherPart {
  const { dice, ruler } = draw;
  const thin = dice.percent(40);
  return defined({
    ...anyPart(draw, 'thrustWashers', name),
    count: dice.percent(80) ? dice.from(2, 4) : undefined,
    thickness: ruler.length(thin ? dice.from(15, 60) : SIZES.thrust.washer + dice.from(-12, 12)),
  });
}

function randomHead(draw: Draw, name: string): HeadPart {
  const { dice, ruler } = draw;
  return defined({
    ...anyPart(draw, 'heads', name),
    flatness: dice.percent(60) ? ruler.length(dice.from(5, SIZES.flatness + 10)) : undefined,
    guideBore: dice.percent(85) ? about(ruler, dice, SIZES.guide + dice.from(-3, 3)) : undefined,
  });
}

function randomValves(draw: Draw, name: string): ValveSetPart {
  const { dice, ruler } = draw;
  return defined({
    ...anyPart(draw, 'valveSets', name),
    count: dice.percent(15) ? 2 : undefined,
    stem: dice.percent(85) ? about(ruler, dice, SIZES.stem + dice.from(-2, 3)) : undefined,
  });
}
