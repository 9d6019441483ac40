import * as cw from 'crankwright';
import { bigEndPicture, clearancesPicture, fuelPicture, viscosityPicture } from 'crankwright/plots';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyUnits, anyWidth } from './arbitraries.js';
import { expectSound, numberOf, numbersIn, pixelOf, placeOf, scaleOf, seen } from './seen.js';

const inches = { units: 'inch' } as const;

describe('the picture of clearances', () => {
  const judged = (value: number, limits: cw.Limits<cw.Length>, uncertainty = 0.2) =>
    cw.judge({
      feature: 'oil clearance',
      dimension: 'length',
      value: cw.thou(value),
      uncertainty: cw.thou(uncertainty),
      limits,
      basis: { kind: 'common practice', rule: 'so much for each inch' },
    });
  const limits = { min: cw.thou(1), max: cw.thou(3) };

  it('puts the value where it stands between its limits, with its uncertainty', () => {
    const picture = expectSound(
      clearancesPicture([{ name: 'rod 1', finding: judged(2.5, limits) }], inches),
    );
    const [low = 0, high = 0] = picture.all('limit').map((wall) => numberOf(wall, 'x1'));
    const thou = (x: number) => 1 + (2 * (x - low)) / (high - low);
    const [mark] = picture.all('verdict')[0]?.getElementsByTagName('path') ?? [];
    expect(mark && thou(placeOf(mark)[0])).toBeCloseTo(2.5, 1);
    const ends = numbersIn(picture.all('uncertainty')[0]?.getAttribute('d') ?? '');
    expect(thou(ends[0] ?? 0)).toBeCloseTo(2.3, 1);
    expect(picture.desc).toContain(
      'oil clearance 0.0025 in ± 0.0002 in: within 0.0010 to 0.0030 in [a]',
    );
    expect(picture.desc).toContain('[a] common practice: so much for each inch');
  });

  it('writes every value that is judged behind its track, and explains bar, mark and whisker', () => {
    const span = { min: cw.thou(2), max: cw.thou(2.5) };
    const { all, texts } = seen(
      clearancesPicture(
        [
          { name: 'rod 1', finding: judged(2.5, limits), span },
          { name: 'rod 2', finding: judged(24, limits) },
          { name: 'rod 3', finding: judged(2, limits), readAgain: true },
        ],
        inches,
      ),
    );
    expect(all('value').map(({ textContent }) => textContent)).toEqual([
      '0.0025 in',
      '0.0240 in',
      '',
    ]);
    expect(texts).toEqual(
      expect.arrayContaining(['its uncertainty', 'from the tightest to the widest place']),
    );
    // What explains is no finding.
    expect([all('span').length, all('uncertainty').length]).toEqual([1, 1]);
    const line = all('no-verdict')[0];
    const end = line ? numberOf(line, 'x') + numberOf(line, 'width') : 0;
    for (const value of all('value')) {
      expect(numberOf(value, 'x') - 8 * (value.textContent ?? '').length).toBeGreaterThan(end);
    }
  });

  it('tells within, undecided and outside apart by shape', () => {
    const shapes = [2, 2.9, 3.5].map((value) => {
      const { all } = seen(
        clearancesPicture([{ name: 'r', finding: judged(value, limits) }], inches),
      );
      return all('verdict')[0]?.getElementsByTagName('path')[0]?.getAttribute('d');
    });
    expect(new Set(shapes).size).toBe(3);
  });

  it('points past the end with an arrow, and writes the value', () => {
    const { all, desc } = seen(
      clearancesPicture([{ name: 'r', finding: judged(24, limits) }], inches),
    );
    expect(all('off-the-track')).toHaveLength(1);
    expect(all('verdict')).toEqual([]);
    expect(desc).toContain('0.0240 in ± ');
  });

  it('gives no verdict on what was not measured, has no limit or must be read again', () => {
    const { all, texts } = seen(
      clearancesPicture(
        [
          { name: 'rod 1' },
          { name: 'rod 2', span: { min: cw.thou(1), max: cw.thou(2) } },
          { name: 'rod 3', finding: judged(2, limits), readAgain: true },
        ],
        { ...inches, width: 600 },
      ),
    );
    expect(all('no-verdict')).toHaveLength(3);
    expect(all('verdict')).toEqual([]);
    expect(texts).toContain('not measured');
    expect(texts.join(' ')).toContain('not judged, as no limit is given');
    expect(texts.join(' ')).toContain('read it again first');
  });

  it('is sound at limits that are next to nothing', () => {
    for (const most of [0, Number.MIN_VALUE]) {
      expectSound(
        clearancesPicture(
          [{ name: 'rod 1', finding: judged(-1e-12, { max: cw.metre(most) }) }],
          inches,
        ),
      );
    }
  });

  it('is sound for any finding at any width', () => {
    const size = fc.double({ min: -5, max: 30, noNaN: true });
    fc.assert(
      fc.property(
        size,
        size,
        size,
        fc.nat(2),
        anyUnits,
        anyWidth,
        (value, one, other, which, units, width) => {
          const [min, max] = [cw.thou(Math.min(one, other)), cw.thou(Math.max(one, other))];
          const its = [{ min, max }, { min }, { max }][which] ?? { max };
          const finding = judged(value, its, Math.abs(other) / 10);
          expectSound(
            clearancesPicture([{ name: 'rod 1', finding }, { name: 'rod 2' }], { units, width }),
          );
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('the picture of a big end', () => {
  const crank = { stroke: cw.inch(3.25), rodLength: cw.inch(6) };
  const loads = cw.bigEndLoads({
    ...crank,
    bore: cw.inch(3),
    speed: cw.rpm(1800),
    pistonMass: cw.kilogram(0.45),
    smallEndMass: cw.kilogram(0.18),
    bigEndMass: cw.kilogram(0.42),
    gas: cw.gasTrace({ ...crank, compressionRatio: cw.ratio(6) }).readings,
  });
  const clearance = cw.inch(0.0017);
  const journal = { journal: cw.inch(1.625), length: cw.inch(1), clearance, loads };
  const orbit = cw.bigEndOrbit({ ...journal, viscosity: cw.millipascalSecond(15) });
  const draw = (width: number) =>
    expectSound(bigEndPicture({ name: 'rod 1', orbit, loads, clearance }, { ...inches, width }));

  it.each([320, 960])(
    'keeps the path inside the clearance circle, at its distances, %i wide',
    (width) => {
      if (orbit.outcome !== 'settled') throw new Error('it does not settle');
      const picture = draw(width);
      const [circle] = picture.all('clearance');
      const [cx, cy, r] = ['cx', 'cy', 'r'].map((name) =>
        circle ? numberOf(circle, name) : 0,
      ) as [number, number, number];
      const numbers = numbersIn(picture.all('orbit')[0]?.getAttribute('d') ?? '');
      const places = orbit.path.map(
        (_, i) => [numbers[2 * i] ?? 0, numbers[2 * i + 1] ?? 0] as const,
      );
      expect(numbers).toHaveLength(2 * orbit.path.length);
      for (const [i, [x, y]] of places.entries()) {
        // The film is what is left of the radial clearance.
        const film = (1 - Math.hypot(x - cx, y - cy) / r) * (clearance / 2);
        expect(Math.abs(film - (orbit.path[i]?.film ?? 0))).toBeLessThan(clearance / 2 / r);
      }
    },
  );

  it('says the thinnest film and its angle, and that loads are computed', () => {
    if (orbit.outcome !== 'settled') throw new Error('it does not settle');
    const { desc, texts } = draw(640);
    const film = cw.format(orbit.leastFilm.film, cw.microinch);
    expect(desc).toContain(
      `thinnest film ${film} at ${cw.valueIn(orbit.leastFilm.crankAngle, cw.degree).toFixed(0)}°`,
    );
    expect(texts.join(' ')).toContain('The loads are computed, not measured.');
  });

  it('tells films in millionths of an inch to an inch shop, in micrometres to a metric one', () => {
    if (orbit.outcome !== 'settled') throw new Error('it does not settle');
    const needed = cw.microinch(80);
    const textsIn = (units: 'inch' | 'metric') =>
      seen(bigEndPicture({ name: 'rod 1', orbit, loads, clearance, needed }, { units })).texts;
    expect(textsIn('inch')).toEqual(
      expect.arrayContaining(['thinnest film [µin]', 'needed: 80 µin']),
    );
    expect(textsIn('inch').join(' ')).not.toContain('µm');
    // 80 millionths of 25.4 mm are 2.03 µm.
    expect(textsIn('metric')).toEqual(
      expect.arrayContaining(['thinnest film [µm]', 'needed: 2.0 µm']),
    );
  });

  it.each([320, 480, 960])(
    'writes the thinnest film where no line crosses it, %i wide',
    (width) => {
      if (orbit.outcome !== 'settled') throw new Error('it does not settle');
      const film = cw.format(orbit.leastFilm.film, cw.microinch);
      for (const share of [0.1, 0.5, 0.9, 1, 1.1]) {
        const needed = (orbit.leastFilm.film * share) as cw.Length;
        const picture = seen(
          bigEndPicture({ name: 'rod 1', orbit, loads, clearance, needed }, { ...inches, width }),
        );
        const label = [...picture.root.getElementsByTagName('text')].find(
          (text) => text.textContent === film,
        );
        if (!label) throw new Error('no label');
        const [left, foot] = [numberOf(label, 'x'), numberOf(label, 'y')];
        // Letters of 12 pixels are about 7 wide.
        const right = left + 7 * film.length;
        const crosses = (y: number) => y > foot - 11 && y < foot + 2;
        expect(crosses(numberOf(picture.all('needed')[0] as never, 'y1'))).toBe(false);
        const numbers = numbersIn(picture.all('film')[0]?.getAttribute('d') ?? '');
        const under = numbers.filter(
          (x, i) => i % 2 === 0 && x > left && x < right && crosses(numbers[i + 1] ?? 0),
        );
        expect(under).toEqual([]);
      }
    },
  );

  it('tells how far round the thinnest film is from the greatest load', () => {
    if (orbit.outcome !== 'settled') throw new Error('it does not settle');
    const { desc } = draw(640);
    const [, most = '', least = ''] =
      /Greatest load .* at (\d+)°; thinnest film .* at (\d+)° past/.exec(desc) ?? [];
    const [, apart = ''] =
      /is thinnest (\d+)° of crank angle after the greatest load/.exec(desc) ?? [];
    expect(Math.abs(Number(least) - Number(most) - Number(apart))).toBeLessThanOrEqual(1);
    const before = { ...orbit, leastFilm: { ...orbit.leastFilm, crankAngle: cw.degree(700) } };
    expect(
      seen(bigEndPicture({ name: 'rod 1', orbit: before, loads, clearance }, inches)).desc,
    ).toContain(`is thinnest ${20 + Number(most)}° of crank angle before the greatest load`);
  });
});

describe('the picture of fuel in the sump', () => {
  const log = [
    { running: cw.hour(2) },
    { standing: cw.hour(10) },
    { drained: cw.litre(0.4) },
    { added: cw.litre(0.4) },
  ];
  const least = {
    oil: cw.litre(0.9),
    leak: { running: cw.mLPerHour(0), standing: cw.mLPerHour(6) },
    log,
  };
  const most = { ...least, fuel: cw.mL(30) };

  it('ends where the log of the sump ends, for the least and the most', () => {
    const picture = expectSound(fuelPicture({ least, most }, {}, inches));
    const [x, y] = [scaleOf(picture, 'x'), scaleOf(picture, 'y')];
    for (const [name, story] of [
      ['least', least],
      ['most', most],
    ] as const) {
      const [px = 0, py = 0] = numbersIn(picture.all(name)[0]?.getAttribute('d') ?? '').slice(-2);
      const { end } = cw.sumpLog(story);
      expect(Math.abs(x(px) - 12)).toBeLessThan(pixelOf(x));
      expect(Math.abs(y(py) - 100 * end.fraction)).toBeLessThan(pixelOf(y));
    }
    expect(picture.all('band')).toHaveLength(1);
  });

  it('shades running and standing each for as long as it lasted', () => {
    const picture = seen(fuelPicture(least, {}, inches));
    const x = scaleOf(picture, 'x');
    const spans = ['running', 'standing'].map((state) => {
      const [field] = picture.all(state);
      const left = field ? numberOf(field, 'x') : 0;
      return [x(left), x(left + (field ? numberOf(field, 'width') : 0))].map(Math.round);
    });
    expect(spans).toEqual([
      [0, 2],
      [2, 12],
    ]);
    expect(picture.all('band')).toEqual([]);
  });

  it('tells why its line is flat, rises or falls, in its description and in its key', () => {
    const picture = seen(fuelPicture({ least, most }, {}, inches));
    expect(picture.desc).toContain(
      'While the engine runs, no fuel leaks in and none is taken to evaporate, so the line is flat.',
    );
    expect(picture.desc).toContain(
      'While the engine stands, 6.0 mL/h of fuel leaks in and none is taken to evaporate, so the line rises.',
    );
    expect(picture.texts).toEqual(
      expect.arrayContaining(['running: no fuel leaks in', 'standing: 6.0 mL/h of fuel leaks in']),
    );
    const drying = {
      ...most,
      leak: { running: cw.mLPerHour(2), standing: cw.mLPerHour(0) },
      evaporation: cw.perHour(0.1),
    };
    const { desc } = seen(
      fuelPicture({ least: { ...drying, fuel: cw.mL(5) }, most: drying }, {}, inches),
    );
    expect(desc).toContain(
      'While the engine runs, 2.0 mL/h of fuel leaks in and 10.00 % of the fuel in the oil evaporates in an hour, so the line goes towards the share at which as much evaporates as leaks in.',
    );
    expect(desc).toContain(
      'While the engine stands, no fuel leaks in and 10.00 % of the fuel in the oil evaporates in an hour, so the line falls if there is fuel in the oil.',
    );
    const { desc: spread, texts } = seen(
      fuelPicture(
        {
          least: { ...least, leak: cw.mLPerHour(0), log: [{ standing: cw.hour(1) }] },
          most: { ...most, leak: cw.mLPerHour(9), log: [{ standing: cw.hour(1) }] },
        },
        {},
        inches,
      ),
    );
    expect(spread).toContain(
      '0.0 mL/h to 9.0 mL/h of fuel leaks in and none is taken to evaporate.',
    );
    expect(texts.join(' ')).not.toContain('running');
  });

  it('names both limits where no limit crosses the words', () => {
    // After a day most of it is fuel, so that 2.5 and 5 % lie close together at the foot of the scale.
    const full = { ...least, log: [{ standing: cw.hour(100) }] };
    const picture = seen(fuelPicture(full, {}, { ...inches, width: 340 }));
    const limits = picture.all('limit').map((line) => numberOf(line, 'y1'));
    expect(limits).toHaveLength(2);
    const named = [...picture.root.getElementsByTagName('text')].filter((text) =>
      /above/.test(text.textContent ?? ''),
    );
    expect(named.map((text) => text.textContent)).toEqual(
      expect.arrayContaining(['act above 2.5 vol%', 'do not run above 5.0 vol%']),
    );
    for (const text of named) {
      const y = numberOf(text, 'y');
      expect(limits.filter((at) => at > y - 12 && at < y + 3)).toEqual([]);
    }
    const dashes = picture.all('limit').map((line) => line.getAttribute('stroke-dasharray'));
    expect(new Set(dashes).size).toBe(2);
  });

  it('warns of the bad end: by the most that there may be', () => {
    // 30 mL of 930 is 3.2 %; 5 % is 47.4 mL, 17.4 mL more, which takes 2.9 h of standing after 2 h of running.
    const { desc } = seen(fuelPicture({ least, most }, {}, inches));
    const [, hours = ''] =
      /may be above 5.0 vol% within ([\d.]+) hours: do not run/.exec(desc) ?? [];
    expect(Number(hours)).toBeGreaterThanOrEqual(4.9);
    expect(Number(hours)).toBeLessThan(5.7);
    expect(
      seen(
        fuelPicture(
          least,
          { thresholds: { act: cw.percentByVolume(10), critical: cw.percentByVolume(20) } },
          inches,
        ),
      ).desc,
    ).toContain('stays at or below 20.0 vol%');
  });

  it('is sound for any story at any width', () => {
    const part = fc.double({ min: 0.01, max: 30, noNaN: true });
    fc.assert(
      fc.property(part, part, part, anyWidth, (hours, flow, fuel, width) => {
        const its = {
          ...least,
          fuel: cw.mL(fuel),
          leak: cw.mLPerHour(flow),
          log: [{ running: cw.hour(hours) }, ...log],
        };
        expectSound(fuelPicture(its, {}, { units: 'metric', width }));
      }),
      { numRuns: 30 },
    );
  });
});

describe('the picture of viscosity', () => {
  const line = [
    { temperature: cw.celsius(40), viscosity: cw.centistokes(100) },
    { temperature: cw.celsius(100), viscosity: cw.centistokes(11.1) },
  ] as const;

  it('draws an oil straight on the scales of ASTM D341, through what the library gives between', () => {
    const picture = expectSound(
      viscosityPicture({ oils: [{ name: 'SAE 30', line }] }, { units: 'metric' }),
    );
    const [known] = picture.all('known');
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = numbersIn(known?.getAttribute('d') ?? '');
    const ticks = (axis: 'x' | 'y') =>
      picture.all(`tick-${axis}`).map((tick) => ({
        at: numberOf(tick.getElementsByTagName('line')[0] as never, `${axis}1`),
        value: Number(tick.getElementsByTagName('text')[0]?.textContent),
      }));
    const twenty = ticks('y').find(({ value }) => value === 20)?.at ?? 0;
    // Where the drawn line passes the mark of 20 cSt, between the marks of two temperatures.
    const x = x1 + ((twenty - y1) * (x2 - x1)) / (y2 - y1);
    const temperatures = ticks('x');
    const before = temperatures.filter(({ at }) => at <= x).at(-1)?.value ?? 0;
    const after = temperatures.find(({ at }) => at > x)?.value ?? 0;
    const hotter = cw.viscosityAt(line, cw.celsius(after));
    expect(cw.viscosityAt(line, cw.celsius(before))).toBeGreaterThan(cw.centistokes(20));
    expect(hotter).toBeLessThan(cw.centistokes(20));
    expect(picture.all('taken-further')).toHaveLength(2);
  });

  it('is sound for any oil at any width', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 2000, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        anyUnits,
        anyWidth,
        (viscosity, share, units, width) => {
          const line = [
            { temperature: cw.celsius(40), viscosity: cw.centistokes(viscosity) },
            { temperature: cw.celsius(100), viscosity: cw.centistokes(viscosity * share) },
          ] as const;
          const picture = expectSound(
            viscosityPicture({ oils: [{ name: 'oil', line }] }, { units, width }),
          );
          expect(picture.all('tick-y').length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 40 },
    );
  });
});
