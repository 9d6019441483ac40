import {
  type Angle,
  type BigEndEngine,
  bigEndLoads,
  degree,
  type GasReading,
  type GaugePressure,
  kilogram,
  kPaGauge,
  type PinLoad,
  pistonMotion,
  rpm,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { anyEngine, pumpSet, pumpSetLoads } from './engines.js';

/** The same engine with nothing above its pistons. */
const idle = (engine: BigEndEngine): BigEndEngine => ({
  ...engine,
  gas: engine.gas.map((reading) => ({ ...reading, gauge: 0 as GaugePressure })),
});
const area = ({ bore }: BigEndEngine) => (Math.PI / 4) * bore ** 2;
const moved = (engine: BigEndEngine, crankAngle: Angle) => {
  const { stroke, rodLength, speed } = engine;
  return pistonMotion({ stroke, rodLength, speed, crankAngle });
};
const pairs = (engine: BigEndEngine) => {
  const { loads } = bigEndLoads(engine);
  return engine.gas.map((reading, i) => ({ reading, load: loads[i] as (typeof loads)[number] }));
};

describe('bigEndLoads', () => {
  it('moves piston and rod as their masses ask: the forces along the cylinder add up', () => {
    fc.assert(
      fc.property(anyEngine, (engine) => {
        for (const { reading, load } of pairs(engine)) {
          const { acceleration } = moved(engine, reading.crankAngle);
          const up = load.along * Math.cos(load.rodAngle) + load.across * Math.sin(load.rodAngle);
          const pin = (engine.stroke / 2) * engine.speed ** 2 * Math.cos(reading.crankAngle);
          const asked =
            reading.gauge * area(engine) -
            (engine.pistonMass + engine.smallEndMass) * acceleration -
            engine.bigEndMass * pin;
          expect(Math.abs(up - asked)).toBeLessThan(
            1e-9 * (Math.abs(asked) + Math.abs(load.along)),
          );
        }
      }),
      { numRuns: 30 },
    );
  });

  it('turns the crank with the power that gas and masses give: virtual work', () => {
    fc.assert(
      fc.property(anyEngine, (engine) => {
        for (const { reading, load } of pairs(engine)) {
          const { velocity, acceleration } = moved(engine, reading.crankAngle);
          const masses = (engine.pistonMass + engine.smallEndMass) * acceleration;
          const power = (reading.gauge * area(engine) - masses) * velocity;
          const most = (Math.abs(reading.gauge * area(engine)) + Math.abs(masses)) * engine.stroke;
          expect(Math.abs(load.torque - power / engine.speed)).toBeLessThan(1e-9 * most);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('turns the crank with the moment that its forces have about it', () => {
    for (const { crankAngle, along, across, rodAngle, torque } of pumpSetLoads.loads) {
      // The rod pushes back on the pin; seen from the rod the throw points at the angle between them.
      const lever = (pumpSet.stroke / 2) * Math.sin(crankAngle + rodAngle);
      const height = (pumpSet.stroke / 2) * Math.cos(crankAngle + rodAngle);
      expect(lever * along - height * across).toBeCloseTo(torque, 9);
    }
  });

  it('gives the work of the gas, and no more', () => {
    fc.assert(
      fc.property(anyEngine, (engine) => {
        const work = engine.gas.reduce((sum, { crankAngle, gauge }) => {
          const { velocity } = moved(engine, crankAngle);
          return sum + gauge * area(engine) * (velocity / engine.speed);
        }, 0);
        const mean = work / engine.gas.length;
        expect(bigEndLoads(engine).meanTorque / mean).toBeCloseTo(1, 9);
      }),
      { numRuns: 30 },
    );
  });

  it('takes as much from the masses as it gives them', () => {
    fc.assert(
      fc.property(anyEngine, (engine) => {
        const { loads, meanTorque } = bigEndLoads(idle(engine));
        const most = Math.max(...loads.map(({ torque }) => Math.abs(torque)));
        expect(most).toBeGreaterThan(0);
        expect(Math.abs(meanTorque)).toBeLessThan(1e-9 * most);
      }),
      { numRuns: 30 },
    );
  });

  it('pulls on the cap at the top of the gas exchange, with all that moves', () => {
    const { loads } = bigEndLoads(idle(pumpSet));
    const top = loads[360] as PinLoad;
    const r = pumpSet.stroke / 2;
    const upAndDown = (pumpSet.pistonMass + pumpSet.smallEndMass) * (1 + r / pumpSet.rodLength);
    const pull = (upAndDown + pumpSet.bigEndMass) * r * pumpSet.speed ** 2;
    expect(top.along / -pull).toBeCloseTo(1, 12);
    expect(top.across).toBeCloseTo(0, 9);
  });

  it('carries the gas alone where nothing moves or nothing weighs anything', () => {
    const still = bigEndLoads({ ...pumpSet, speed: rpm(0) });
    const light = bigEndLoads({
      ...pumpSet,
      pistonMass: kilogram(0),
      smallEndMass: kilogram(0),
      bigEndMass: kilogram(0),
    });
    still.loads.forEach((load, i) => {
      const gas = (pumpSet.gas[i] as GasReading).gauge * area(pumpSet);
      expect(load.along * Math.cos(load.rodAngle)).toBeCloseTo(gas, 6);
      expect(load.across).toBeCloseTo(0, 12);
      expect(light.loads[i]?.along).toBeCloseTo(load.along, 6);
    });
  });

  it('weighs each reading by its share of the cycle', () => {
    // Every second reading left out over the first turn: the mean must not lean to the second.
    const thinned = pumpSet.gas.filter((_, i) => i >= 360 || i % 2 === 0);
    const { meanTorque } = bigEndLoads({ ...pumpSet, gas: thinned });
    expect(meanTorque / pumpSetLoads.meanTorque).toBeCloseTo(1, 2);
  });
});

describe('bigEndLoads refuses', () => {
  const gas = (angles: readonly number[]) =>
    angles.map((angle) => ({ crankAngle: degree(angle), gauge: kPaGauge(0) }));
  const even = Array.from({ length: 24 }, (_, i) => 30 * i);
  const refused = (angles: readonly number[]) =>
    refusal(() => bigEndLoads({ ...pumpSet, gas: gas(angles) })).parameter;

  it('readings that do not go once around', () => {
    expect(() => bigEndLoads({ ...pumpSet, gas: gas(even) })).not.toThrow();
    expect(refused(even.slice(0, 23))).toBe('gas');
    expect(refused([...even.slice(1), 15])).toBe('gas[23].crankAngle');
    expect(refused([0, ...even])).toBe('gas[1].crankAngle');
    expect(refused([...even, 720])).toBe('gas[24].crankAngle');
    expect(refused([...even, 719.999])).toBe('gas');
    expect(refused([-1, ...even.slice(1)])).toBe('gas[0].crankAngle');
    // A gap of 31 degrees within, and over the end.
    expect(refused([0, 31, ...even.slice(2), 45.5].sort((a, b) => a - b))).toBe(
      'gas[1].crankAngle',
    );
    const late = Array.from({ length: 30 }, (_, i) => 23 * i);
    expect(refused(late)).toBe('gas');
  });

  it('a reading that is none', () => {
    const wrong = [...gas(even.slice(0, 23)), null] as unknown as BigEndEngine['gas'];
    expect(refusal(() => bigEndLoads({ ...pumpSet, gas: wrong })).parameter).toBe('gas[23]');
    const vacuum = gas(even).map((reading) => ({ ...reading, gauge: kPaGauge(-120) }));
    expect(refusal(() => bigEndLoads({ ...pumpSet, gas: vacuum })).parameter).toBe('gas[0].gauge');
  });
});
