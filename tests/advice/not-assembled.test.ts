import { afterMachining, outsideLimits, readShed, writeShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { captured } from '../command/captured.js';
import { plainShed } from '../shed/sheds.js';

// The limits are those of the boxes below, and every reading is set beside them by hand.

const offers = {
  shells: [{ name: 'rod 10', fits: 'rods', undersize: '10 under', price: '8 EUR' }],
};
const file = JSON.stringify({ ...plainShed(), toBuy: offers });
const shed = readShed(file);

interface Filled {
  readonly housing?: string;
  readonly wall?: string;
  readonly oil?: string;
  readonly endPlay?: string;
}

const boxes = ({ housing = '', wall = '', oil = '', endPlay = '' }: Filled) => ({
  version: 1,
  engine: 'block A',
  builtInto: 'No. 1',
  takes: [{ name: 'block A' }, { name: 'rods A' }, { name: 'rod 10', count: 2 }],
  boxes: [
    { part: 'rods A', feature: 'rod A1', mayBe: '1.7500 to 1.7510 in', reading: housing },
    { part: 'rod 10', feature: 'wall', mayBe: '0.0666 to 0.0672 in', reading: wall },
  ],
  checks: [
    { what: 'oil clearance, rod 1', limits: 'at most 0.0030 in', reading: oil },
    { what: 'end play', limits: 'no limit stated', reading: endPlay },
  ],
});

describe('the boxes of an engine', () => {
  it.each<[string, Filled, readonly string[]]>([
    [
      'a housing that is too large',
      { housing: '1.7511 in' },
      ['rods A, rod A1: 1.7511 in, and it may be 1.7500 to 1.7510 in'],
    ],
    [
      'a slipped digit, which is no wear, as one to read again',
      { housing: '1.7150 in', oil: '0.020 in' },
      [
        'rods A, rod A1: 1.7150 in, and it may be 1.7500 to 1.7510 in; read it again first, as a digit or a turn of the thimble may have slipped',
        'oil clearance, rod 1: 0.020 in, and it may be at most 0.0030 in; read it again first, as a digit or a turn of the thimble may have slipped',
      ],
    ],
    [
      'shells that are too thin',
      { wall: '0.0665 in' },
      ['rod 10, wall: 0.0665 in, and it may be 0.0666 to 0.0672 in'],
    ],
    [
      'a clearance that is too large, in another unit',
      { oil: '0.09 mm' },
      ['oil clearance, rod 1: 0.09 mm, and it may be at most 0.0030 in'],
    ],
    [
      'a clearance below nothing, of which no limit is known',
      { endPlay: '-0.004 in' },
      ['end play: -0.004 in, and no clearance is less than nothing'],
    ],
    [
      'no size at its upper limit',
      { housing: '1.7510 in', wall: '0.0672 in', oil: '0.0030 in' },
      [],
    ],
    ['no size at its lower limit', { housing: '1.7500 in', wall: '0.0666 in' }, []],
    ['nothing whose limit is not known', { endPlay: '0.020 in' }, []],
    ['no empty box', {}, []],
  ])('name %s', (_, filled, said) => {
    expect(outsideLimits(boxes(filled))).toEqual(said);
  });

  it('mark no engine as built that does not fit together, and keep the readings', () => {
    const filled = { housing: '1.7511 in', wall: '0.0670 in', oil: '0.0020 in' };
    const after = afterMachining(shed, boxes(filled));
    expect(writeShed(after)).not.toMatch(/built ?into/i);
    const rods = after.rods?.find(({ name }) => name === 'rods A')?.rods;
    expect(rods?.find(({ name }) => name === 'rod A1')?.housingBore).toBeCloseTo(
      1.7511 * 0.0254,
      9,
    );
    expect(after.blocks?.find(({ name }) => name === 'block A')?.history?.at(-1)?.what).toBe(
      'checked: oil clearance, rod 1 0.0020 in',
    );
    // The shells were bought, whether they fit or not.
    const bought = after.shells?.find(({ name }) => name === 'rod 10 for No. 1');
    expect(bought).toMatchObject({ pairs: 2 });
    expect(bought?.wall).toBeDefined();
  });

  it('take the same parts once a reading is put right', () => {
    const once = afterMachining(shed, boxes({ housing: '1.7511 in', wall: '0.0670 in' }));
    const twice = afterMachining(once, boxes({ housing: '1.7507 in', wall: '0.0670 in' }));
    expect(twice.shells?.filter(({ name }) => name.startsWith('rod 10'))).toMatchObject([
      { name: 'rod 10 for No. 1', pairs: 2, builtInto: 'No. 1' },
    ]);
  });

  it('are complained of by done, with what to do', async () => {
    const done = async (filled: Filled) => {
      const files = { 'shed.json': file, 'work.json': JSON.stringify(boxes(filled)) };
      return captured(['done', 'shed.json', 'work.json'], { files });
    };
    const bad = await done({ housing: '1.7511 in' });
    expect(bad.err).toContain('rod A1: 1.7511 in, and it may be 1.7500 to 1.7510 in');
    expect(bad.err).toContain('do not assemble: plan again with these sizes');
    const slipped = await done({ housing: '1.7150 in' });
    expect(slipped.err).toContain('do not assemble: read again what is told to be');
    const good = await done({ housing: '1.7507 in' });
    expect(good.err).not.toContain('do not assemble');
    expect(readShed(good.out).blocks?.[0]?.builtInto).toBe('No. 1');
  });
});
