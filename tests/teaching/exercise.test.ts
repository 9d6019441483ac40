import { coherentUnit, inch, minus, thou } from 'crankwright';
import {
  type CardName,
  cards,
  check,
  type Exercise,
  exampleValues,
  exercise,
  solution,
  worked,
} from 'crankwright/teaching';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { compute } from '../support/card-values.js';

const names = Object.keys(cards) as CardName[];
const systems = ['inch', 'metric'] as const;
const each = names.flatMap((name) => systems.map((units) => ({ name, units })));

describe.each(each)('exercises on $name in $units', ({ name, units }) => {
  const drawn = [0, 1, 2].map((seed) => exercise(name, seed, { units }));

  it('have the answer of the function, and one that is told right in its own words', () => {
    for (const problem of drawn) {
      expect(problem.value).toBe(compute(cards[name], problem.values));
      expect(check(problem, problem.answer.text)).toEqual({ outcome: 'right' });
      expect(Math.abs(problem.value)).toBeGreaterThan(2 * problem.tolerance);
    }
  });

  it('are right by the last line of their working, which ends in the unit that is asked for', () => {
    for (const problem of drawn) {
      const { result, converted } = solution(problem);
      const { text, unit } = converted?.gives ?? result;
      expect([text, unit, check(problem, text).outcome]).toEqual([
        text,
        problem.asks.unit,
        'right',
      ]);
    }
  });

  it('are of the sort that the example is', () => {
    for (const problem of drawn) {
      const sample = compute(cards[name], cards[name].example) ?? Number.NaN;
      expect(problem.value / sample).toBeGreaterThan(0.4);
      expect(problem.value / sample).toBeLessThan(2.5);
    }
  });

  it('take the answer without its unit as in the unit after the blank, and say so', () => {
    for (const problem of drawn) {
      const { value, unit, text } = problem.answer;
      const checked = check(problem, `${value}`);
      expect(checked).toEqual({ outcome: 'right', ...(unit !== '' && { takenAs: text }) });
    }
  });

  it('are told wrong where the sign is lost or the answer is half or twice as much', () => {
    for (const problem of drawn) {
      const { value, unit } = problem.answer;
      for (const wrong of [-value, 2 * value, value / 2]) {
        const { outcome } = check(problem, `${wrong} ${unit || '-'}`);
        expect(outcome, `${wrong} ${unit}`).toBe('wrong');
      }
    }
  });
});

describe('exercise', () => {
  const drawn = exercise('oilClearance', 7, { units: 'inch' });

  it('draws the same for the same seed, and another for another', () => {
    expect(exercise('oilClearance', 7, { units: 'inch' })).toEqual(drawn);
    const many = Array.from({ length: 20 }, (_, seed) =>
      exercise('oilClearance', seed, { units: 'inch' })
        .given.map(({ text }) => text)
        .join(),
    );
    expect(new Set(many).size).toBeGreaterThan(15);
  });

  it('is in inches where no units are asked for', () => {
    expect(exercise('oilClearance', 7)).toEqual(drawn);
    expect(exercise('oilClearance', 7, {})).toEqual(drawn);
    expect(worked('oilClearance', drawn.values)).toEqual(solution(drawn));
    expect(exampleValues('oilClearance')).toEqual(exampleValues('oilClearance', { units: 'inch' }));
  });

  it('gives readings that a shop could read', () => {
    for (const { text } of drawn.given) expect(text).toMatch(/^\d(?:\.\d{1,4})? in$/);
    for (const { text } of exercise('oilClearance', 7, { units: 'metric' }).given) {
      expect(text).toMatch(/^\d+(?:\.\d{1,3})? mm$/);
    }
  });

  it('is solved in the same numbers', () => {
    const { legend, value } = solution(drawn);
    expect(legend.map(({ given }) => given.text)).toEqual(drawn.given.map(({ text }) => text));
    expect(value).toBe(drawn.value);
  });

  it('is worked by hand to the answer it gives', () => {
    // Two walls and the journal out of the housing, from the values of the problem in inches.
    const [housing, wall, journal] = drawn.given.map(({ value }) => value) as [
      number,
      number,
      number,
    ];
    expect(drawn.answer.value).toBeCloseTo((housing - 2 * wall - journal) * 1000, 6);
    expect(drawn.answer.unit).toBe('thou');
  });

  it('draws undersizes that shells are made in', () => {
    for (let seed = 0; seed < 20; seed++) {
      const { given } = exercise('targetDiameter', seed, { units: 'inch' });
      expect((given[1]?.value ?? Number.NaN) % 10).toBe(0);
    }
  });

  it.each<[CardName, string, 'inch' | 'metric', readonly string[]]>([
    ['screwTorque', 'P', 'inch', ['0.0625 in', '0.04167 in']],
    ['turnOfNut', 'P', 'metric', ['1.25 mm', '1.5 mm']],
    ['sparkHeldBack', 'i', 'metric', ['0.5', '1', '1.5']],
    ['springRate', 'n_d', 'metric', ['1.5', '2']],
    ['areaToRim', 'beta', 'inch', ['30 deg', '45 deg']],
  ])('draws for %s %s in %s units sizes that are made', (name, letter, units, made) => {
    const drawn = Array.from(
      { length: 20 },
      (_, seed) =>
        exercise(name, seed, { units }).given.find(({ symbol }) => symbol === letter)?.text,
    );
    expect([...new Set(drawn)].filter((text) => !made.includes(text ?? ''))).toEqual([]);
    expect(new Set(drawn).size).toBeGreaterThan(1);
  });

  it('refuses what it is not asked with, by name', () => {
    const asked = (...args: readonly unknown[]) =>
      refusal(() => exercise(...(args as Parameters<typeof exercise>))).parameter;
    expect(asked('gap', 1, { units: 'inch' })).toBe('name');
    const misspelt = () => exercise('oilClearence' as CardName, 1, { units: 'inch' });
    expect(refusal(misspelt).hint).toBe('Did you mean oilClearance?');
    expect(asked('oilClearance', -1, { units: 'inch' })).toBe('seed');
    expect(asked('oilClearance', 1.5, { units: 'inch' })).toBe('seed');
    expect(asked('oilClearance', 1, { units: 'feet' })).toBe('options.units');
    expect(asked('oilClearance', 1, { unit: 'inch' })).toBe('options.unit');
    expect(refusal(() => solution({ ...drawn, seed: '7' } as never)).parameter).toBe(
      'problem.seed',
    );
  });
});

describe('check reads a unit built of others', () => {
  // One pound-force is 4.4482216152605 N, and one inch is 25.4 mm, by definition.
  const PSI = 4.4482216152605 / 0.0254 ** 2;
  it.each([
    ['pressure', (pa: number) => `${pa / 1e6} N/mm2`],
    ['pressure', (pa: number) => `${pa / PSI} lbf/in^2`],
    ['pressure', (pa: number) => `${pa / 1e9} kN/mm²`],
    ['rate', (perSecond: number) => `${perSecond * 60} strokes/min`],
    ['rate', (perSecond: number) => `${perSecond * 60} per min`],
    ['rate', (perSecond: number) => `${perSecond} s⁻¹`],
    ['torque', (newtonMetres: number) => `${newtonMetres * 1000} N·mm`],
  ] as const)('of a %s', (dimension, answer) => {
    const name = names.find((each) => cards[each].gives.dimension === dimension);
    if (name === undefined) throw new Error(`no card gives a ${dimension}`);
    const problem = exercise(name, 3, { units: 'metric' });
    expect(check(problem, answer(problem.value)).outcome).toBe('right');
    expect(check(problem, answer(problem.value * 1.4)).outcome).toBe('wrong');
  });
});

describe('check', () => {
  // 2.251 - 2 · 0.062 - 2.105 in: a journal ground 20 thou in standard shells.
  const problem: Exercise = {
    ...exercise('oilClearance', 1, { units: 'inch' }),
    values: { D_h: inch(2.251), t: inch(0.062), D_j: inch(2.105) },
    value: minus(minus(inch(2.251), inch(0.124)), inch(2.105)),
    tolerance: thou(0.1),
  };
  const told = (answer: string, of = problem) => {
    const checked = check(of, answer);
    return 'slip' in checked ? checked.slip : checked.outcome;
  };

  it.each([
    ['22 thou', 'right'],
    ['0.022 in', 'right'],
    ['.5588 mm', 'right'],
    [' 22 thou ', 'right'],
    ['22.3 thou', 'close'],
    ['26 thou', 'wrong'],
    ['−22 thou', 'a lost minus'],
    ['11 thou', 'factor two'],
    ['44 thou', 'factor two'],
    // One wall in place of two.
    ['84 thou', 'factor two'],
    ['22 mm', 'wrong unit'],
    ['22 in', 'wrong unit'],
    ['0.022 thou', 'wrong unit'],
    ['0.5588 in', 'wrong unit'],
    // The blank is in thou.
    ['22', 'right'],
    ['0.022', 'wrong unit'],
    ['44', 'factor two'],
    ['22 N·m', 'another quantity'],
    ['much', 'unclear'],
    ['', 'unclear'],
    ['%$§', 'unclear'],
    ['22 thuo', 'unclear'],
    ['1.0745 in', 'radius for diameter'],
    // 2.251 - 2.105 in: the shells were forgotten.
    ['146 thou', 'a reading left out'],
    ['2.2 thou', 'factor of ten'],
    ['0 thou', 'wrong'],
    // As people write.
    ['c = 22 thou', 'right'],
    ['22 thou.', 'right'],
    ['about 22 thou', 'right'],
    ['22,0 thou', 'right'],
    ['twenty-two', 'unclear'],
    ['2.2 * 10^1', 'right'],
    ['2.2e1 thou', 'right'],
    ['2.2 × 10¹ thou', 'right'],
    ['220·10⁻¹', 'right'],
    ['2,2 x 10^-2 in', 'right'],
    ['2.2 * 10**(-2) in', 'right'],
    ['5.588e-1', 'wrong unit'],
  ])('says of %j: %s', (answer, expected) => {
    expect(told(answer)).toBe(expected);
  });

  it('tells what a number without a unit was taken as', () => {
    expect(check(problem, '44')).toMatchObject({ outcome: 'wrong', takenAs: '44 thou' });
    expect(check(problem, 'c = 22.')).toEqual({ outcome: 'right', takenAs: '22 thou' });
    expect(check(problem, '22 thou')).toEqual({ outcome: 'right' });
  });

  it('reads a comma after a zero, or after nothing, as a decimal one', () => {
    const metric = exercise('oilClearance', 7, { units: 'metric' });
    const millimetres = (metric.value * 1000).toFixed(3);
    for (const answer of [millimetres, millimetres.slice(1)]) {
      expect(millimetres).toMatch(/^0\.\d{3}$/);
      expect(told(`${answer.replace('.', ',')} mm`, metric), answer).toBe('right');
    }
  });

  it.each([
    ['23,700 psi', 'Is the comma a decimal or a thousands one? Write 23700 or 23.700.'],
    ['-1,234', 'Is the comma a decimal or a thousands one? Write -1234 or -1.234.'],
    ['23 700 psi', 'Write the number without marks between its thousands: 23700.'],
    ['1,023,700.5 psi', 'Write the number without marks between its thousands: 1023700.5.'],
  ])('asks what %j means, and judges no number', (answer, hint) => {
    expect(check(exercise('hoopStress', 7), answer)).toEqual({ outcome: 'unclear', hint });
  });

  it('reads a plain number with a power of ten, however that is written', () => {
    const strain = { ...exercise('hoopStrain', 7), value: 6.08e-4, tolerance: 1e-6 };
    for (const answer of ['6.08 * 10^-4', '6.08 x 10^-4', '6.08·10⁻⁴', '6.08e-4', '6,08 ⋅ 10⁻⁴']) {
      expect(check(strain, answer), answer).toEqual({ outcome: 'right' });
    }
    expect(told('6.08 * 10^-3', strain)).toBe('factor of ten');
    // Rounded too far, by the last place that was written.
    expect(check(strain, '6 * 10^-4')).toMatchObject({
      outcome: 'close',
      hint: expect.stringContaining('rounded too far'),
    });
  });

  it('shows how an answer is written, where there is no number in it', () => {
    const checked = check(problem, 'twenty-two');
    expect(checked.outcome).toBe('unclear');
    expect('hint' in checked && checked.hint).toContain('such as 1.4 thou');
    expect(check(exercise('hoopStrain', 7), '%$§')).toMatchObject({
      outcome: 'unclear',
      hint: expect.stringMatching(/such as 1\.4\.$/),
    });
  });

  it('tells an undersize that was forgotten', () => {
    const target = exercise('targetDiameter', 3, { units: 'inch' });
    expect(told(`${(target.values['D_s'] ?? 0) / 0.0254} in`, target)).toBe('a reading left out');
  });

  it.each([
    'oilClearance',
    'pistonClearance',
    'hotPistonClearance',
    'journalLeft',
    'targetDiameter',
  ] as const)(
    'takes %s to half a tenth of a thou, which is how a shop writes it, and no wider',
    (name) => {
      for (let seed = 0; seed < 40; seed++) {
        const drawn = exercise(name, seed, { units: 'inch' });
        const inThou = drawn.value / 2.54e-5;
        if (inThou < 1) continue;
        expect(told(`${inThou.toFixed(1)} thou`, drawn)).toBe('right');
        if (name === 'hotPistonClearance') continue;
        expect(told(`${inThou + 0.1} thou`, drawn)).not.toBe('right');
        expect(told(`${inThou - 0.1} thou`, drawn)).not.toBe('right');
      }
    },
  );

  it('asks to add again where nothing is rounded on the way, else for more digits', () => {
    const near = (name: CardName) => {
      const drawn = exercise(name, 3, { units: 'inch' });
      const checked = check(drawn, `${(drawn.value + 2 * drawn.tolerance) / 0.0254} in`);
      return 'hint' in checked && checked.hint;
    };
    expect(near('targetDiameter')).toContain('Add it up once more');
    expect(near('pistonTravel')).toContain('Keep more digits');
  });

  it('tells a radius that was squared for a diameter', () => {
    // A swept volume with the radius for the diameter is a quarter.
    const volume = exercise('sweptVolume', 3, { units: 'inch' });
    expect(told(`${volume.answer.value / 4} in³`, volume)).toBe('radius for diameter');
  });

  it('tells of four times as much that it is a factor of two, twice', () => {
    // The diameter of the thread is squared: doubled, it makes four times the gap.
    const gap = exercise('flattenedThreadGap', 3);
    for (const factor of [4, 1 / 4]) {
      const checked = check(gap, `${(factor * gap.value) / 2.54e-5} thou`);
      expect(checked).toMatchObject({ slip: 'factor four' });
      expect('hint' in checked && checked.hint).toContain('a factor of two, twice');
    }
    expect(told(`${(2 * gap.value) / 2.54e-5} thou`, gap)).toBe('factor two');
  });

  it('tells a step that was given to each shell in full, or taken off twice', () => {
    // The trap of a manual that adds the whole undersize to the wall, TM 9-2815-225-34&P.
    const wall = exercise('shellWallFor', 3, { units: 'inch' });
    const { t = 0, u = 0 } = wall.values;
    expect(told(`${(t + u) / 0.0254} in`, wall)).toBe('factor two');
    const target = exercise('targetDiameter', 3, { units: 'inch' });
    const { D_s = 0, u: step = 0 } = target.values;
    expect(told(`${(D_s - 2 * step) / 0.0254} in`, target)).toBe('factor two');
  });

  it.each<[CardName, (of: Readonly<Record<string, number>>) => number, string]>([
    // Half of the angle in place of the angle, or the other way round.
    [
      'crosshatchAngle',
      ({ L = 0, f = 0, w = 0, D = 0 }) => Math.atan((4 * L * f) / (w * D)),
      'half of an angle',
    ],
    ['rimChord', ({ D = 0, a = 0 }) => D * Math.sin(a), 'half of an angle'],
    // π left out of a sum, and squared.
    ['ringGapIn', ({ g_0 = 0, D = 0, D_0 = 0 }) => g_0 + D - D_0, 'factor pi'],
    ['curtainArea', ({ D_v = 0, l = 0 }) => Math.PI ** 2 * D_v * l, 'factor pi'],
    // A two left out of one term.
    ['radiusFromSagitta', ({ c = 0, s = 0 }) => c ** 2 / (8 * s) + s, 'factor two'],
    // All as cold as when it was measured, and two temperatures the wrong way round.
    ['hotPistonClearance', ({ D = 0, D_p = 0 }) => D - D_p, 'another temperature'],
    [
      'hotPistonClearance',
      ({ D = 0, D_p = 0, a_b = 0, T_b = 0, a_p = 0, T_p = 0, T_0 = 0 }) =>
        D * (1 + a_b * (T_p - T_0)) - D_p * (1 + a_p * (T_b - T_0)),
      'another temperature',
    ],
    // A share that nothing was multiplied by, and a sum that was not put in.
    ['boltPreload', ({ A = 0, S = 0 }) => A * S, 'a reading left out'],
    ['lashAfterFacing', ({ l = 0 }) => l, 'a reading left out'],
    // A speed as revolutions, not radians, in each second.
    [
      'petroffTorque',
      ({ mu = 0, omega = 0, D = 0, L = 0, C = 0 }) => (mu * omega * D ** 3 * L) / 4 / C,
      'unit of a reading',
    ],
  ])('tells a slip in %s that is no factor of the answer', (name, slipped, slip) => {
    for (const seed of [4, 5, 6]) {
      const drawn = exercise(name, seed);
      const si = coherentUnit[drawn.asks.dimension];
      expect(told(`${slipped(drawn.values)} ${si}`, drawn)).toBe(slip);
    }
  });

  it('tells an angle in radians that is called degrees', () => {
    const drawn = exercise('rodLean', 3);
    expect(told(`${drawn.value} deg`, drawn)).toBe('degrees for radians');
  });

  it.each<[CardName, (value: number) => string, string]>([
    [
      'hotPistonClearance',
      (metres) => `${Math.round(metres / 2.54e-5)} thou`,
      'in thou, to one decimal place.',
    ],
    [
      'targetDiameter',
      (metres) => `${(metres / 0.0254).toFixed(2)} in`,
      'in inches, to four decimal places.',
    ],
    ['hoopStress', (pascals) => `${Math.round(pascals / 6894757.3) * 1000} psi`, 'in psi, to '],
    [
      'topDeadCentre',
      (radians) => `${Math.round((radians * 180) / Math.PI)}`,
      'in degrees, to three digits.',
    ],
    ['compressionRatio', (ratio) => ratio.toFixed(0), 'Give it to three digits.'],
  ])('tells of %s rounded too far, in the same words, what to give', (name, rounded, asked) => {
    const seen = Array.from({ length: 12 }, (_, seed) => exercise(name, seed)).flatMap((drawn) => {
      const checked = check(drawn, rounded(drawn.value));
      return checked.outcome === 'right' ? [] : [checked];
    });
    expect(seen.length).toBeGreaterThan(5);
    for (const { outcome, hint } of seen) {
      expect([outcome, hint]).toEqual([
        'close',
        expect.stringContaining('That is rounded too far. Give it'),
      ]);
    }
    expect(seen.filter(({ hint }) => hint.includes(asked)).length).toBeGreaterThan(seen.length / 2);
  });

  it.each<[CardName, (value: number) => string]>([
    ['ringLeakArea', (squareMetres) => `${squareMetres / 2.54e-5 ** 2} thou²`],
    ['ringLeakArea', (squareMetres) => `${squareMetres / 2.54e-5 ** 2} sq thou`],
    ['ringLeakArea', (squareMetres) => `${squareMetres * 1e12} µm²`],
    ['strokeRateForCrosshatch', (perSecond) => `${perSecond * 60} rpm`],
    ['rodSpeed', (radians) => `${(radians * 30) / Math.PI} 1/min`],
    ['rodSpeed', (radians) => `${(radians * 30) / Math.PI} turns per min`],
    ['hoopStrain', (ratio) => `${ratio * 1e6} microstrain`],
    ['hoopStrain', (ratio) => `${ratio * 1e6} µin/in`],
  ])('reads an answer of %s in a unit of its dimension', (name, written) => {
    const drawn = exercise(name, 3);
    expect(told(written(drawn.value), drawn)).toBe('right');
    expect(told(written(drawn.value * 1.4), drawn)).not.toBe('right');
  });

  it('tells degrees that were put in for radians, and an earlier line', () => {
    const chord = exercise('rimChord', 3, { units: 'metric' });
    const { D = 0, a = 0 } = chord.values;
    const inDegrees = D * Math.sin(((a / 2) * 180) / Math.PI);
    expect(told(`${inDegrees * 1000} mm`, chord)).toBe('degrees for radians');
    const lash = exercise('recessionAfterFacing', 3, { units: 'metric' });
    const { c = 0, f = 0, beta = 0 } = lash.values;
    expect(told(`${(c + f / Math.cos(beta)) * 1000} mm`, lash)).toBe('an earlier line');
  });

  it('takes a share in the per cent that it asks for, and asks for a factor of a hundred', () => {
    const share = exercise('fractionByMass', 3, { units: 'metric' });
    expect(told(`${share.answer.value} %`, share)).toBe('right');
    expect(told(`${share.answer.value}`, share)).toBe('right');
    // After the blank stands "mass%".
    expect(told(`${share.answer.value / 100}`, share)).toBe('per cent');
  });

  it('never gives the answer away', () => {
    const answers = ['-22 thou', '11 thou', '22 mm', '0.022', '22 N·m', '1.0745 in', '22.3 thou'];
    for (const answer of answers) {
      const checked = check(problem, answer);
      expect('hint' in checked && checked.hint).toMatch(/^[^\d]+$/);
    }
    expect(check(problem, '26 thou')).toEqual({
      outcome: 'wrong',
      hint: expect.stringMatching(/^[^\d]*every reading[^\d]*$/),
    });
  });

  it('takes the answer of any problem, no multiple of it, and hints without a digit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.nat(1_000_000),
        fc.constantFrom(...systems),
        fc.constantFrom(2, 1 / 2, 25.4, 1 / 25.4, -1, 1000, 1 / 1000),
        (name, seed, units, factor) => {
          const drawn = exercise(name, seed, { units });
          const { text, value, unit } = drawn.answer;
          expect(check(drawn, text)).toEqual({ outcome: 'right' });
          const checked = check(drawn, `${value * factor} ${unit || '-'}`);
          expect(checked.outcome).not.toBe('right');
          expect('hint' in checked ? checked.hint : '').not.toMatch(/\d/);
        },
      ),
    );
  });

  it('refuses what is no text, and what is no exercise', () => {
    expect(refusal(() => check(problem, 22 as never)).parameter).toBe('answer');
    expect(refusal(() => check(problem, '2'.repeat(101))).parameter).toBe('answer');
    expect(refusal(() => check({} as never, '22 thou')).parameter).toBe('problem.name');
  });
});
