import { mm, thou } from 'crankwright';
import { planBuilds, planReport } from 'crankwright/planning';
import type { Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { stepMarked } from '../../src/planning/marked-step.js';
import { shells, single } from './single-shed.js';

const INCH = [0, 10, 20, 30].map((step) => thou(step));
const METRIC = [0, 0.25, 0.5, 0.75].map((step) => mm(step));

describe('a mark on a part', () => {
  it.each([
    ['10', 10],
    [' 10 under ', 10],
    ['-10', 10],
    ['010', 10],
    ['.010', 10],
    ['0.010 in', 10],
    ['U/S 20', 20],
    ['20 thou', 20],
    ['0.25', 10],
    ['0.50 mm', 20],
    ['+030', 30],
    ['STD', 0],
    ['20 stamped on the web', 20],
    ['10 on one web, the other not legible', 10],
    ['20 on web', 20],
    ['stamped .010 U/S on the flange', 10],
    ['STD on the web', 0],
    ['rod journals 20 under, 4711 cast in', 20],
    ['standard', 0],
  ])('that says %s names a step of inches', (mark, step) => {
    expect(stepMarked(mark, INCH)).toBe(thou(step));
  });

  it.each([
    ['0.25', 0.25],
    ['50', undefined],
    ['0.75mm', 0.75],
    ['20', 0.5],
  ])('that says %s is read by metric steps', (mark, step) => {
    expect(stepMarked(mark, METRIC)).toBe(step === undefined ? undefined : mm(step));
  });

  it.each([
    '0',
    '11',
    '4711',
    'A10',
    '10-20',
    'forged',
    '',
    '10 under?',
    '2.5',
    '10 or 20 on web',
    'casting no. 10',
    '#20',
    'bought for 10 GBP',
    'STD or 10',
    'not 20',
    '10 mm bolt',
    'date 3.10.31',
  ])('that says "%s" names none', (mark) => {
    expect(stepMarked(mark, INCH)).toBeUndefined();
  });
});

describe('crankshafts that nobody measured', () => {
  const shedWith = (size: number, ...marks: (readonly string[] | undefined)[]): Shed => ({
    ...single,
    crankshafts: marks.map((each, i) => ({
      name: `crankshaft ${i + 1}`,
      ...(each && { marks: each }),
    })),
    shells: [shells('shells', size, 618.5 + size / 2, 1)],
  });
  const first = async (shed: Shed) => (await planBuilds(shed)).measureFirst[0]?.parts;

  it('are measured first if they are marked as the shells on the shelf', async () => {
    // Any of the three may be of any size; one is marked 10 under, and so are the shells.
    const shed = shedWith(100, ['4711'], undefined, ['forged', '10']);
    const parts = await first(shed);
    expect(parts?.map(({ name, marks }) => [name, marks])).toEqual([['crankshaft 3', ['10']]]);
    expect(planReport(await planBuilds(shed)).replace(/\s+/g, ' ')).toContain(
      'crankshaft 3, marked "10": have it crack-tested first; rod journals (',
    );
    // Wherever it stands in the file.
    const marks = [['20'], ['STD'], undefined];
    for (const turn of [0, 1, 2]) {
      const turned = [...marks.slice(turn), ...marks.slice(0, turn)];
      const at = turned.findIndex((each) => each?.[0] === 'STD') + 1;
      expect((await first(shedWith(0, ...turned)))?.[0]?.name).toBe(`crankshaft ${at}`);
    }
  });

  it('are measured last if they are marked as shells that nobody has', async () => {
    // Of standard shells there is one pair: crankshaft 1 is marked as a step without shells.
    expect((await first(shedWith(0, ['30'], undefined)))?.[0]?.name).toBe('crankshaft 2');
  });

  it('are not named for a wider margin if they are marked as shells that nobody has', async () => {
    const wider = async (mark: string) =>
      (
        await planBuilds({
          ...single,
          crankshafts: [...(single.crankshafts ?? []), { name: 'crankshaft B', marks: [mark] }],
        })
      ).measureFirst.map(({ mayBring }) => mayBring.kind);
    expect(await wider('STD')).toContain('wider margin');
    expect(await wider('30')).not.toContain('wider margin');
  });

  it('are not counted on for their marks', async () => {
    const plan = await planBuilds(shedWith(100, ['10']));
    expect(plan.builds).toEqual([]);
    expect(plan.mayBe?.engines).toBe(1);
    expect(plan.nextEngine?.lacks.map(({ section }) => section)).toEqual(['crankshafts']);
  });
});
