import { type DiameterReading, degree, inch, mm, oddReadings, valueIn } from 'crankwright';
import { borePicture, journalPicture } from 'crankwright/plots';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyReadings, anyUnits, anyWidth } from './arbitraries.js';
import { expectSound, pixelOf, placeOf, scaleOf, seen } from './seen.js';

const read = (station: number, angle: number, diameter: number): DiameterReading => ({
  station: inch(station),
  angle: degree(angle),
  diameter: inch(diameter),
});

/** A rod journal that is worn oval. */
const oval = [
  read(0.25, 0, 1.6046),
  read(0.25, 90, 1.6034),
  read(1.25, 0, 1.6044),
  read(1.25, 90, 1.6033),
];
/** A bore of which one reading has a slipped digit. */
const slipped = [
  read(0.15, 0, 3.0),
  read(0.5, 0, 3.0008),
  read(0.5, 90, 3.0012),
  read(2, 0, 3.0105),
  read(2, 90, 3.0007),
  read(3.5, 0, 3.0002),
  read(3.5, 90, 3.0004),
];
const travel = { min: inch(0.4), max: inch(3.6) };

/** Whether a mark stands where it should, to a pixel. */
const stands = (
  marks: readonly (readonly [number, number])[],
  [x, pixelX]: readonly [number, number],
  [y, pixelY]: readonly [number, number],
) => marks.some(([a, b]) => Math.abs(a - x) <= pixelX && Math.abs(b - y) <= pixelY);

describe('the picture of a journal', () => {
  it.each(['inch', 'metric'] as const)(
    'shows every reading at its angle and size, in %s',
    (units) => {
      const picture = expectSound(
        journalPicture({ name: 'rod 2', readings: oval }, { units, width: 320 }),
      );
      const [x, y] = [scaleOf(picture, 'x'), scaleOf(picture, 'y')];
      const marks = picture.all('reading').map((mark) => {
        const [px, py] = placeOf(mark);
        return [x(px), y(py)] as const;
      });
      const unit = units === 'inch' ? inch : mm;
      for (const { angle, diameter } of oval) {
        const size = [valueIn(diameter, unit), pixelOf(y)] as const;
        expect(stands(marks, [valueIn(angle, degree), pixelOf(x)], size)).toBe(true);
      }
      // Those at 0° come again at 180°.
      expect(marks).toHaveLength(6);
      expect(stands(marks, [180, pixelOf(x)], [valueIn(inch(1.6046), unit), pixelOf(y)])).toBe(
        true,
      );
    },
  );

  it('tells in words what is seen: how many, from what to what, and where', () => {
    const { title, desc } = seen(
      journalPicture({ name: 'rod 2', readings: oval }, { units: 'inch' }),
    );
    expect(title).toBe('rod 2: diameters round the journal');
    expect(desc).toContain(
      '4 readings, from 1.6033 in (station 1.2500 in, 90°) to 1.6046 in (station 0.2500 in, 0°)',
    );
    // 0.0013 in and an eighth of it on either side.
    expect(desc).toContain('all its height is 0.0016 in');
  });

  it('rings the reading that does not fit, and no other', () => {
    const wrong = [
      read(0.25, 0, 1.6248),
      read(0.25, 90, 1.6148),
      read(0.75, 0, 1.6248),
      read(0.75, 90, 1.6248),
      read(1.25, 0, 1.6248),
      read(1.25, 90, 1.6248),
    ];
    const picture = expectSound(
      journalPicture({ name: 'rod 1', readings: wrong }, { units: 'inch' }),
    );
    const [odd] = picture.all('odd');
    const [circle] = odd?.getElementsByTagName('circle') ?? [];
    expect(picture.all('odd')).toHaveLength(1);
    expect(scaleOf(picture, 'x')(Number(circle?.getAttribute('cx')))).toBeCloseTo(90, 0);
    expect(scaleOf(picture, 'y')(Number(circle?.getAttribute('cy')))).toBeCloseTo(1.6148, 4);
    expect(picture.desc).toContain('read again: 1.6148 in at station 0.2500 in, 90°');
    // One who looked himself and found none is believed.
    const looked = seen(
      journalPicture({ name: 'rod 1', readings: wrong, odd: [] }, { units: 'inch' }),
    );
    expect(looked.all('odd')).toEqual([]);
  });

  it('joins no readings that are more than a quarter turn apart', () => {
    const far = [read(0.25, 0, 1.6046), read(0.25, 120, 1.6034)];
    const lines = seen(
      journalPicture({ name: 'rod 2', readings: far }, { units: 'inch' }),
    ).root.getElementsByTagName('path');
    const drawn = [...lines]
      .map((line) => line.getAttribute('d') ?? '')
      .filter((d) => /^M.*L/.test(d));
    // From 120° to the 0° that comes again at 180°, and not from 0 to 120°.
    expect(
      drawn.filter((d) => d.split('M').length === 2 && d.split('L').length === 2),
    ).toHaveLength(1);
  });

  it('is sound for any readings at any width', () => {
    fc.assert(
      fc.property(anyReadings, anyUnits, anyWidth, (readings, units, width) => {
        expectSound(journalPicture({ name: 'j', readings }, { units, width }));
      }),
      { numRuns: 40 },
    );
  });
});

describe('the picture of a bore', () => {
  it('shows every reading at its depth and size', () => {
    const bore = { name: 'cylinder 1', readings: slipped, ringTravel: travel };
    const picture = expectSound(borePicture(bore, { units: 'inch', width: 960 }));
    const [x, y] = [scaleOf(picture, 'x'), scaleOf(picture, 'y')];
    const marks = picture.all('reading').map((mark) => {
      const [px, py] = placeOf(mark);
      return [x(px), y(py)] as const;
    });
    expect(marks).toHaveLength(slipped.length);
    for (const { station, diameter } of slipped) {
      const size = [valueIn(diameter, inch), pixelOf(x)] as const;
      expect(stands(marks, size, [valueIn(station, inch), pixelOf(y)])).toBe(true);
    }
  });

  it('shades the travel of the rings', () => {
    const bore = { name: 'cylinder 1', readings: slipped, ringTravel: travel };
    const picture = seen(borePicture(bore, { units: 'inch' }));
    const [shade] = picture.all('ring-travel');
    const y = scaleOf(picture, 'y');
    const top = Number(shade?.getAttribute('y'));
    expect(y(top)).toBeCloseTo(0.4, 1);
    expect(y(top + Number(shade?.getAttribute('height')))).toBeCloseTo(3.6, 1);
    const untold = seen(borePicture({ name: 'cylinder 1', readings: slipped }, { units: 'inch' }));
    expect(untold.all('ring-travel')).toEqual([]);
    expect(untold.desc).toContain('Where the rings run was not told.');
  });

  it('says how much larger diameters are drawn than depths, as measured in the picture', () => {
    const picture = seen(
      borePicture({ name: 'cylinder 1', readings: slipped, ringTravel: travel }, { units: 'inch' }),
    );
    const times = pixelOf(scaleOf(picture, 'y')) / pixelOf(scaleOf(picture, 'x'));
    const [, said = ''] = /about (\d+) times as large/.exec(picture.desc) ?? [];
    expect(Math.abs(Number(said) / times - 1)).toBeLessThan(0.06);
  });

  it('rings the slipped digit', () => {
    const bore = { name: 'cylinder 1', readings: slipped, ringTravel: travel };
    const { all, desc } = seen(borePicture(bore, { units: 'inch' }));
    expect(all('odd')).toHaveLength(1);
    expect(desc).toContain('read again: 3.0105 in at station 2.0000 in, 0°');
  });

  it('is sound for any readings at any width', () => {
    fc.assert(
      fc.property(anyReadings, anyUnits, anyWidth, (readings, units, width) => {
        expectSound(borePicture({ name: 'b', readings }, { units, width }));
      }),
      { numRuns: 40 },
    );
  });
});

describe('every picture of readings', () => {
  const draw = { journal: journalPicture, bore: borePicture } as const;

  it.each(['journal', 'bore'] as const)('escapes the name of a %s', (part) => {
    const name = `a <b> & "c" ]]> \u0000\ud800\ufffe '`;
    const { title } = expectSound(draw[part]({ name, readings: oval }, { units: 'inch' }));
    expect(title).toContain(`a <b> & "c" ]]> `);
  });

  it.each(['journal', 'bore'] as const)('refuses a %s by the place that is wrong', (part) => {
    const refusal = (given: object, options: object = {}) => {
      try {
        draw[part]({ name: 'x', readings: oval, ...given }, { units: 'inch', ...options });
      } catch (error) {
        return (error as { parameter?: string }).parameter;
      }
      return undefined;
    };
    expect(refusal({ name: '' })).toBe(`${part}.name`);
    expect(refusal({ readings: [] })).toBe(`${part}.readings`);
    expect(refusal({ readings: [{ ...oval[0], diameter: Number.NaN }] })).toBe(
      `${part}.readings[0].diameter`,
    );
    expect(refusal({ reading: oval })).toBe(`${part}.reading`);
    const [odd] = oddReadings(slipped);
    expect(refusal({ odd: [{ ...odd, index: 4 }] })).toBe(`${part}.odd[0].index`);
    expect(refusal({}, { width: 100 })).toBe('options.width');
    expect(refusal({}, { id: '1"' })).toBe('options.id');
    expect(refusal({}, { units: 'furlongs' })).toBe('options.units');
  });

  it('begins its ids with what is asked for', () => {
    const svg = journalPicture({ name: 'rod 2', readings: oval }, { units: 'inch', id: 'rod-2' });
    expect(seen(svg).root.getAttribute('aria-labelledby')).toBe('rod-2-title rod-2-desc');
  });

  it('is the same each time', () => {
    const once = () => journalPicture({ name: 'rod 2', readings: oval }, { units: 'inch' });
    expect(once()).toBe(once());
  });
});
