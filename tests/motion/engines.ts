import {
  type BigEndEngine,
  bigEndLoads,
  gasTrace,
  inch,
  kilogram,
  metre,
  type Ratio,
  radianPerSecond,
  ratio,
  rpm,
} from 'crankwright';
import fc from 'fast-check';

const crank = { stroke: inch(3.25), rodLength: inch(6) };

/** The invented pump set: a vertical twin for irrigation, petrol, 1800 rpm. */
export const pumpSet: BigEndEngine = {
  ...crank,
  bore: inch(3),
  speed: rpm(1800),
  pistonMass: kilogram(0.45),
  smallEndMass: kilogram(0.18),
  bigEndMass: kilogram(0.42),
  gas: gasTrace({ ...crank, compressionRatio: ratio(6) }).readings,
};
export const pumpSetLoads = bigEndLoads(pumpSet);

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Cranks of small engines, with rods of 1.2 to 2.5 strokes. */
export const anyCrank = fc
  .record({ stroke: share(0.03, 0.2), rod: share(1.2, 2.5) })
  .map(({ stroke, rod }) => ({ stroke: metre(stroke), rodLength: metre(stroke * rod) }));

/** Small engines of any sort, by what a cylinder of their size weighs. */
export const anyEngine = fc
  .record({
    crank: anyCrank,
    square: share(0.7, 1.3),
    weight: share(300, 1200),
    pistonSpeed: share(0.5, 14),
    compression: share(4, 12),
  })
  .map(({ crank, square, weight, pistonSpeed, compression }): BigEndEngine => {
    const bore = crank.stroke * square;
    const mass = weight * bore ** 3;
    return {
      ...crank,
      bore: metre(bore),
      speed: radianPerSecond((Math.PI * pistonSpeed) / crank.stroke),
      pistonMass: kilogram(mass),
      smallEndMass: kilogram(0.3 * mass),
      bigEndMass: kilogram(0.7 * mass),
      gas: gasTrace({ ...crank, compressionRatio: compression as Ratio, places: 360 }).readings,
    };
  });
