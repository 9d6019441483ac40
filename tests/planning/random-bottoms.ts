import type { Length } from 'crankwright';
import type { BlockPart, CrankshaftPart, HousingPlace, JournalPlace, RodsPart } from './full.js';
import { anyPart, anyTest, type Draw, places, someStep, surfaceFault } from './random-draw.js';
import { defined, SIZES } from './random-engine.js';
import { about, readings } from './random-measured.js';

export function randomBlock(draw: Draw, name: string): BlockPart {
  const { dice, ruler, engine } = draw;
  const step = someStep(draw, 'bores');
  const worn = dice.percent(10 + draw.worn);
  const hasWalls = dice.percent(30);
  return defined({
    ...anyPart(draw, 'blocks', name),
    ...anyTest(draw),
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

export function randomCrankshaft(draw: Draw, name: string): CrankshaftPart {
  const { engine } = draw;
  const throws = engine.cylinders / (engine.rodsPerJournal ?? 1);
  const part = anyPart(draw, 'crankshafts', name);
  const promised = part.faults?.includes('bent') && draw.dice.percent(70);
  return defined({
    ...part,
    ...anyTest(draw),
    runoutOnceStraight: promised ? draw.ruler.length(draw.dice.from(0, 20)) : undefined,
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
      runout: dice.percent(40) ? ruler.length(dice.from(0, 21)) : undefined,
      faults: surfaceFault(draw),
    });
  });
}

export function randomRods(draw: Draw, name: string): RodsPart {
  const count = draw.dice.percent(50) ? 1 : draw.engine.cylinders;
  return {
    ...anyPart(draw, 'rods', name),
    ...anyTest(draw),
    rods: randomHousings(draw, 'rods', count),
  };
}
