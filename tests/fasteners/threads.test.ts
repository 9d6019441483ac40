import { inch, mm, nearestThreads, threadAreas, threadOf, threadsIn } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const SERIES = ['metric coarse', 'metric fine', 'UNC', 'UNF', 'BSW', 'BSF', 'BSC', 'BA'] as const;
const all = () => SERIES.flatMap(threadsIn);

describe('threadOf', () => {
  it('knows every thread of the series by its own name', () => {
    for (const thread of all()) expect(threadOf(thread.designation)).toEqual(thread);
  });

  it('has no two threads of one name', () => {
    const names = all().map(({ designation }) => designation);
    expect(new Set(names).size).toBe(names.length);
  });

  it.each([
    ['3/8-16 UNC', '3/8-16 UNC'],
    ['3/8-16UNC-2A', '3/8-16 UNC'],
    ['3/8" - 16 NC', '3/8-16 UNC'],
    ['3/8 16 unc', '3/8-16 UNC'],
    ['3/8 UNF', '3/8-24 UNF'],
    ['3/8-24', '3/8-24 UNF'],
    ['1-8 UNC', '1-8 UNC'],
    ['1 UNC', '1-8 UNC'],
    ['1-64 UNC', '#1-64 UNC'],
    ['10-32 UNF', '#10-32 UNF'],
    ['#10-24 UNC', '#10-24 UNC'],
    ['No. 8-32 UNC', '#8-32 UNC'],
    ['1-1/8-7 UNC', '1 1/8-7 UNC'],
    ['1 1/8 UNF', '1 1/8-12 UNF'],
    ['3/8 BSW', '3/8-16 BSW'],
    ['3/8 Whitworth', '3/8-16 BSW'],
    ['1/4-26 BSF', '1/4-26 BSF'],
    ['1/2 BSC', '1/2-26 BSC'],
    ['1/2-20 CEI', '1/2-20 BSC'],
    ['M10', 'M10'],
    ['M10x1.5', 'M10'],
    ['M10 × 1.25', 'M10x1.25'],
    ['M10X1,25'.replace(',', '.'), 'M10x1.25'],
    ['M8x1-6g', 'M8x1'],
    ['2 BA', '2 BA'],
    ['BA2', '2 BA'],
    ['No. 4 BA', '4 BA'],
  ])('reads %s as %s', (text, name) => {
    expect(threadOf(text).designation).toBe(name);
  });

  it('tells a left-hand thread', () => {
    expect(threadOf('1/2-20 UNF-LH')).toEqual({ ...threadOf('1/2-20 UNF'), leftHand: true });
    expect(threadOf('M14x1.5 LH').leftHand).toBe(true);
  });

  it.each([
    ['3/8-18 UNC', '3/8-16 UNC'],
    ['3/8-20 UNF', '3/8-24 UNF'],
    ['M9', 'M10'],
    ['M10x1.4', 'M10'],
    ['11/32 BSW', '3/8-16 BSW'],
    ['13 BA', '12 BA'],
    ['13-32 UNF', '#12-28 UNF'],
    ['#11-24 UNC', '#12-24 UNC'],
  ])('refuses %s, which is in no series, and names %s', (text, near) => {
    const error = refusal(() => threadOf(text));
    expect(error.parameter).toBe('designation');
    expect(error.hint).toContain(near);
  });

  it.each(['3/8-16', '1/4-26', '5/16-18'])(
    'refuses %s without its series, as threads of two angles have that size',
    (text) => {
      const error = refusal(() => threadOf(text));
      expect(error.parameter).toBe('designation');
      expect(error.hint).toContain('flanks');
    },
  );

  it.each([
    '',
    ' ',
    'bolt',
    '3/8',
    'M',
    'UNC',
    '3/8-16 UNX',
    '3/8-16-2 UNC',
    'M10x',
    'x'.repeat(99),
  ])('refuses %j, which is no name', (text) => {
    expect(refusal(() => threadOf(text)).parameter).toBe('designation');
  });
});

describe('threadAreas', () => {
  it('takes a thread by its form and its sizes, and gives what its name gives', () => {
    const named = threadAreas(threadOf('3/8-16 UNC'));
    expect(threadAreas({ form: 'unified', diameter: inch(0.375), pitch: inch(1 / 16) })).toEqual(
      named,
    );
  });

  it('grows with the diameter, shrinks with the pitch, and orders its diameters', () => {
    const thread = fc.record({
      form: fc.constantFrom('ISO metric', 'unified', 'Whitworth', 'BSC', 'BA'),
      diameter: fc.double({ min: 0.003, max: 0.029, noNaN: true }).map((d) => mm(d * 1000)),
      share: fc.double({ min: 0.08, max: 0.27, noNaN: true }),
    });
    fc.assert(
      fc.property(thread, ({ form, diameter, share }) => {
        const pitch = mm(diameter * share * 1000);
        const areas = threadAreas({ form, diameter, pitch });
        expect(areas.minorDiameter).toBeLessThan(areas.stressDiameter);
        expect(areas.stressDiameter).toBeLessThan(areas.pitchDiameter);
        expect(areas.pitchDiameter).toBeLessThan(diameter);
        expect(areas.stressArea).toBeCloseTo((Math.PI / 4) * areas.stressDiameter ** 2, 15);
        const finer = threadAreas({ form, diameter, pitch: mm(pitch * 900) });
        expect(finer.stressArea).toBeGreaterThan(areas.stressArea);
        const thicker = threadAreas({ form, diameter: mm(diameter * 1010), pitch });
        expect(thicker.minorArea).toBeGreaterThan(areas.minorArea);
      }),
    );
  });

  it('refuses a pitch that would leave no bolt, an unknown form and what is no number', () => {
    const sound = { form: 'unified', diameter: inch(0.375), pitch: inch(1 / 16) } as const;
    const named = (wrong: object) => refusal(() => threadAreas({ ...sound, ...wrong })).parameter;
    expect(named({ pitch: inch(1 / 8) })).toBe('pitch');
    expect(named({ form: 'ACME' })).toBe('form');
    expect(named({ dia: 1 })).toBe('thread.dia');
    for (const value of notNumbers) {
      expect(named({ diameter: value })).toBe('diameter');
      expect(named({ pitch: value })).toBe('pitch');
    }
  });
});

describe('nearestThreads', () => {
  it('finds a thread from a worn crest and a counted pitch', () => {
    const near = nearestThreads({ diameter: inch(0.246), pitch: inch(1 / 26) });
    const names = near.map(({ thread }) => thread.designation);
    // A cycle thread of that size is alike: only its flanks tell.
    expect(names.slice(0, 2).sort()).toEqual(['1/4-26 BSC', '1/4-26 BSF']);
    expect(near[0]?.diameterOff).toBeCloseTo(inch(-0.004), 12);
  });

  it('finds every thread from its own sizes', () => {
    for (const thread of all()) {
      const { diameter, pitch } = thread;
      const near = nearestThreads({ diameter, pitch });
      const same = near.filter(({ diameterOff, pitchOff }) => diameterOff === 0 && pitchOff === 0);
      expect(same.map((one) => one.thread.designation)).toContain(thread.designation);
    }
  });

  it('refuses a diameter that was not wrapped in its unit', () => {
    const measured = { diameter: 0.375 as never, pitch: inch(1 / 16) };
    expect(refusal(() => nearestThreads(measured)).parameter).toBe('diameter');
  });
});
