import {
  type DiameterReading,
  degree,
  describeOddReading,
  inch,
  journalShape,
  oddReadings,
} from 'crankwright';
import { inspect, readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { changed, exampleText } from '../sheet/sheets.js';

const grid = (rows: readonly (readonly number[])[]): readonly DiameterReading[] =>
  rows.flatMap((row, i) =>
    row.map((size, j) => ({
      station: inch(0.25 + i),
      angle: degree((180 / row.length) * j),
      diameter: inch(size),
    })),
  );
/** Every finding as the places in the list that it names. */
const named = (readings: readonly DiameterReading[]) =>
  oddReadings(readings).map(({ index, together = [] }) =>
    [index, ...together.map((other) => other.index)].sort((a, b) => a - b),
  );
const again = (readings: readonly DiameterReading[], i: number, size: number): DiameterReading => ({
  ...(readings[i] as DiameterReading),
  diameter: inch(size),
});

/** A journal worn oval by 1.2 thou, 1.4999 by 1.4987 and 1.4997 by 1.4986, with 1.4997 written down for 1.4987. */
const oval = grid([
  [1.4999, 1.4997],
  [1.4997, 1.4986],
]);

describe('of two stations by two angles', () => {
  it('a small slip may be any of the four: all are read again, and no sound one is accused', () => {
    expect(named(oval)).toEqual([[0, 1, 2, 3]]);
    const [odd] = oddReadings(oval);
    const said = odd && describeOddReading(odd, { units: 'inch' })[0];
    expect(said).toMatch(/^one of these does not fit the others, read them all again: at station/);
    expect(said?.match(/1\.49\d\d in/g)?.sort()).toEqual([
      '1.4986 in',
      '1.4997 in',
      '1.4997 in',
      '1.4999 in',
    ]);
  });

  it('a slip that would leave a part seldom seen, were it another, is told from the others', () => {
    const slip = grid([
      [1.4999, 1.4987],
      [1.4897, 1.4986],
    ]);
    expect(named(slip)).toEqual([[2]]);
  });
});

describe('of three stations by two angles', () => {
  it('a small slip is that one or its neighbour at the same station', () => {
    // The others are oval by 0.2 thou; one station is told apart, and no more.
    const rows = grid([
      [1.4999, 1.4997],
      [1.4998, 1.4996],
      [1.4999, 1.4987],
    ]);
    expect(named(rows)).toEqual([[4, 5]]);
  });
});

describe('a place that was read again', () => {
  it('stands if its readings agree: the others remain in doubt until they are read again too', () => {
    expect(named([...oval, again(oval, 3, 1.4986)])).toEqual([[0, 1, 2]]);
    const all = [again(oval, 0, 1.4999), again(oval, 2, 1.4997), again(oval, 3, 1.4986)];
    expect(named([...oval, ...all])).toEqual([[1]]);
  });

  it('stands though it is far off, as a worn spot is, and no other reading is accused for it', () => {
    const spot = grid([
      [1.4999, 1.4998],
      [1.4899, 1.4998],
    ]);
    expect(named(spot)).toEqual([[2]]);
    expect(named([...spot, again(spot, 2, 1.4899)])).toEqual([]);
    const more = grid([
      [2, 1.9995, 1.9998],
      [2.0001, 1.9996, 1.9999],
      [1.99, 1.9994, 1.9997],
      [2, 1.9995, 1.9998],
    ]);
    expect(named([...more, again(more, 6, 1.99)])).toEqual([]);
  });

  it('does not hide a second reading that is wrong', () => {
    const rows = grid([
      [2, 1.9995, 1.9998],
      [2.0001, 1.9996, 1.9999],
      [1.97, 1.9994, 1.9997],
      [2, 1.9995, 1.9898],
    ]);
    expect(named([...rows, again(rows, 6, 1.97)])).toEqual([[11]]);
  });

  it('is named first where its readings do not agree: the one of three, both of two', () => {
    const rows = grid([
      [2.1246, 2.1241],
      [2.1243, 2.124],
    ]);
    expect(named([...rows, again(rows, 0, 2.1346)])).toEqual([[0, 4]]);
    expect(named([...rows, again(rows, 0, 2.1346), again(rows, 0, 2.1247)])).toEqual([[4]]);
  });
});

describe('a repeat that is off', () => {
  const rows = grid([
    [2.1246, 2.1241],
    [2.1243, 2.124],
  ]);
  // 2.1240 twice more at the last place, a tenth off each way: a scatter of a tenth.
  const honest = [again(rows, 3, 2.1241), again(rows, 3, 2.1239)];

  it('widens no scatter and moves no mean', () => {
    const sound = journalShape([...rows, ...honest, again(rows, 0, 2.1246)]);
    const slipped = journalShape([
      ...rows,
      ...honest,
      again(rows, 0, 2.1246),
      again(rows, 0, 2.1346),
    ]);
    expect(slipped).toEqual(sound);
    // The squares are 2 tenths over 3 degrees of freedom.
    expect(sound.repeats?.standardDeviation).toBeCloseTo(inch(0.0001) * Math.sqrt(2 / 3), 12);
  });

  it('tells nothing of the scatter where two differ', () => {
    const { repeats } = journalShape([...rows, again(rows, 0, 2.1346)]);
    expect(repeats).toBeUndefined();
  });
});

describe('a thimble that was read a turn off all along one angle', () => {
  it('leaves a form no part has: every reading is named, none alone', () => {
    const turn = grid([
      [1.5995, 1.6245],
      [1.5995, 1.6245],
    ]);
    expect(named(turn)).toEqual([[0, 1, 2, 3]]);
    const confirmed = turn.map((_, i) => again(turn, i, i % 2 === 0 ? 1.5995 : 1.6245));
    expect(named([...turn, ...confirmed])).toEqual([]);
  });

  it('but an oval that a part may have is no slip', () => {
    // 0.005 of 1.6 in is 8 thou.
    const worn = grid([
      [1.6165, 1.6245],
      [1.6165, 1.6245],
    ]);
    expect(named(worn)).toEqual([]);
  });
});

describe('a lone spot of a bore', () => {
  const cylinder = (changes: Record<string, string>) => {
    const { cylinders, cylinderLimits } = JSON.parse(exampleText('inch'));
    const sheet = {
      version: 1,
      engine: 'e',
      units: 'inch',
      cylinders: cylinders.slice(0, 1),
      cylinderLimits,
    };
    return inspect(readSheet(changed(sheet, changes))).cylinders[0];
  };

  it('is read again before the bore is condemned: 3.0034 among 3.0004', () => {
    const { cylinders } = JSON.parse(exampleText('inch'));
    const at = cylinders[0].bore.readings.findIndex((one: { diameter: string }) =>
      one.diameter.startsWith('3.0004'),
    );
    const report = cylinder({ [`cylinders[0].bore.readings[${at}].diameter`]: '3.0034 in' });
    const all = (report?.readAgain ?? []).flatMap(({ index, together = [] }) => [
      index,
      ...together.map((other) => other.index),
    ]);
    expect(all).toContain(at);
  });
});
