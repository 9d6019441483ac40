import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';

/** A bore that is round and straight, of this size. */
const cylinder = (name: string, size: number, piston?: string) => ({
  name,
  bore: {
    readings: {
      unit: 'in',
      angles: ['0 deg', '60 deg', '120 deg'],
      stations: [0.5, 2, 3.5],
      diameters: [
        [size, size, size],
        [size, size, size],
        [size, size, size],
      ],
    },
  },
  ...(piston !== undefined && { piston }),
});

const said = (fields: object) =>
  actionsFrom(
    inspect(readSheet({ version: 1, engine: 'pump set', units: 'inch', ...fields })),
  ).flatMap((action) => describeAction(action, { units: 'inch' }));

const bores = { standard: { min: '3.0000 in', max: '3.0005 in' }, sizeAllowance: '1 thou' };
const orders = (cylinders: readonly object[]) =>
  said({ bores, cylinders }).filter((text) => text.includes('hone to'));
/** Oval by 2 thou at every station. */
const oval = cylinder('cylinder 1', 3.0055);
Object.assign(oval.bore.readings, {
  diameters: [0, 1, 2].map(() => [3.0055, 3.0075, 3.0055]),
});
const worn = oval;

describe('what is said of cylinders that are to be bored', () => {
  it('names none as sound where none is', () => {
    // 3.0075 in and 3 thou for the hone come to 3.0105 in: 10 over is 3.0100 to 3.0105 in, which leaves nothing to hone
    // at its low end, so it is 20 over.
    const [order] = orders([worn]);
    expect(order).toContain('hone to 0.0200 in over, 3.0200 to 3.0205 in');
    expect(order).not.toMatch(/within every limit|reads sound/);
  });

  it('says that none needs boring where each is sound at its own size', () => {
    const sizes = [cylinder('cylinder 1', 3.0003), cylinder('cylinder 2', 3.0103)];
    expect(orders(sizes)[0]).toMatch(
      /^cylinder 1 reads sound at standard, the others at 0\.0100 in over: with pistons and rings of each size, all pistons of one weight, none needs boring, if the manual allows it; else get the pistons and rings for cylinder 1 and measure them first, and the wall of cylinder 1 at its thinnest, then bore cylinder 1, and none of the others, to /,
    );
  });

  it('names one, or several, that need no boring by themselves', () => {
    expect(orders([worn, cylinder('cylinder 2', 3.0003)])[0]).toContain(
      'cylinder 2 is within every limit: ask what a sleeve in the others would cost',
    );
    const sound = ['cylinder 2', 'cylinder 3'].map((name) => cylinder(name, 3.0003));
    expect(orders([worn, ...sound])[0]).toContain(
      'cylinder 2, cylinder 3 are within every limit: ask what a sleeve in the others would cost',
    );
  });

  it('is to read piston and bore again where the piston is larger', () => {
    // 3.0010 - 3.0003 = 0.0007 in.
    expect(said({ bores, cylinders: [cylinder('cylinder 1', 3.0003, '3.0010 in')] })).toContain(
      'cylinder 1: read piston and bore again: the piston reads 0.0007 in larger than its bore, and cannot go in',
    );
  });

  it('is to bore or sleeve where no standard size is known, in doubt by a rule of thumb alone', () => {
    const oval = cylinder('cylinder 1', 3.0003);
    Object.assign(oval.bore.readings, {
      diameters: [
        [3.0003, 3.0063, 3.0003],
        [3.0003, 3.0063, 3.0003],
        [3.0003, 3.0063, 3.0003],
      ],
    });
    const limits = {
      cylinderLimits: { outOfRound: { max: '1 thou', service: { max: '3 thou' } } },
    };
    const sure = said({ cylinders: [oval], ...limits });
    expect(sure.find((text) => text.startsWith('cylinder 1'))).toMatch(
      /^cylinder 1: bore or sleeve it, then fit piston and rings to the new size/,
    );
  });
});

describe('a piston that no wear explains', () => {
  // 20 thou too small for its bore: a slipped digit, or a piston of another size.
  const slipped = cylinder('cylinder 2', 3.0003, '2.9765 in');
  const cylinderLimits = {
    pistonClearance: { min: '2.5 thou', max: '5.5 thou', source: 'a manual' },
  };

  it('is measured again before anything is bored', () => {
    const all = said({ bores, cylinderLimits, cylinders: [worn, slipped] });
    expect(all).toContainEqual(expect.stringMatching(/^cylinder 2: measure the piston again/));
    expect(all).toContain(
      'bore nothing and buy no pistons before the piston of cylinder 2 is read again',
    );
    expect(all.join()).not.toMatch(/hone to/);
    const sheet = { version: 1, engine: 'pump set', units: 'inch', bores, cylinderLimits };
    const text = report(inspect(readSheet({ ...sheet, cylinders: [worn, slipped] })));
    expect(text).toContain('Decision: none before the piston of cylinder 2 is read again.');
  });

  it('is told of without limits too, past 3 thou for each inch of bore and half a step', () => {
    const loose = (piston: string) => said({ cylinders: [cylinder('cylinder 2', 3.0003, piston)] });
    // By hand: 3.0003 in - 9.0 thou - 5 thou = 2.9863 in.
    expect(loose('2.9862 in')).toContainEqual(expect.stringMatching(/measure the piston again/));
    expect(loose('2.9864 in').join()).not.toMatch(/measure the piston again/);
  });
});

describe('what happened to an engine', () => {
  it('does not spare its block the crack test before it is bored', () => {
    const tests = (happened: readonly string[]) =>
      said({ bores, cylinders: [worn], happened }).filter((text) => /crack-test/.test(text));
    const ofBlock = /^have the block crack-tested before you pay for machining/;
    expect(tests(['seized piston'])).toContainEqual(expect.stringMatching(ofBlock));
    // Where something struck the block, the first line has it tested already.
    expect(tests(['thrown rod'])).toEqual([expect.stringMatching(/the block and every rod/)]);
  });
});

describe('what is asked before a cylinder is sleeved', () => {
  it('is whether its wall carries a sleeve, and no oversizes are promised after it', () => {
    const deep = cylinder('cylinder 1', 3.05);
    Object.assign(deep.bore.readings, { diameters: [0, 1, 2].map(() => [3.04, 3.05, 3.04]) });
    const order = orders([deep, cylinder('cylinder 2', 3.0003)]).join();
    expect(order).toContain('whether the wall of cylinder 1 carries a sleeve');
    expect(order).not.toMatch(/left after it/);
  });
});
