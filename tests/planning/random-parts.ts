import type { Section } from '../../src/shed/sections.js';
import type { HeadPart, ValveSetPart } from '../../src/shed/shed.js';
import type { Parts, PistonSetPart, RingSetPart, ShellPart, ThrustWasherPart } from './full.js';
import { randomBlock, randomCrankshaft, randomRods } from './random-bottoms.js';
import { anyPart, anyTest, type Draw, nextStep, places } from './random-draw.js';
import { defined, SIZES } from './random-engine.js';
import { about } from './random-measured.js';

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
  otherParts: (draw, name) => ({ ...anyPart(draw, 'otherParts', name), kind: 'magneto' }),
};

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
    ...anyTest(draw),
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
    margin: dice.percent(40) ? ruler.length(SIZES.margin + dice.from(-30, 200)) : undefined,
  });
}
