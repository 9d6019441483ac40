// One plain run: the big end of the pump set at full load, healthy and 0.020 in loose.
import {
  type BigEndOrbit,
  bigEndLoads,
  bigEndOrbit,
  degree,
  format,
  gasTrace,
  inch,
  kilogram,
  kilonewton,
  type Length,
  micrometre,
  millipascalSecond,
  percent,
  ratio,
  rpm,
} from 'crankwright';

const crank = { stroke: inch(3.25), rodLength: inch(6) };
const loads = bigEndLoads({
  ...crank,
  bore: inch(3),
  speed: rpm(1800),
  pistonMass: kilogram(0.45),
  smallEndMass: kilogram(0.18),
  bigEndMass: kilogram(0.42),
  gas: gasTrace({ ...crank, compressionRatio: ratio(6) }).readings,
});

const run = (clearance: Length): BigEndOrbit =>
  bigEndOrbit({
    journal: inch(1.625),
    length: inch(1),
    clearance,
    // SAE 30 at 80 °C.
    viscosity: millipascalSecond(15),
    loads,
    thinnerThan: micrometre(8),
  });

function tell(orbit: BigEndOrbit): readonly string[] {
  if (orbit.outcome !== 'settled') return [orbit.outcome];
  const { leastFilm, greatestApproach, shareThinner } = orbit;
  return [
    format(leastFilm.film, micrometre),
    `${format(leastFilm.crankAngle, degree, 0)} past firing top`,
    `${format(leastFilm.onShell, degree, 0)} from the rod`,
    shareThinner === undefined ? '' : format(shareThinner, percent, 0),
    `${(greatestApproach.speed * 1000).toFixed(1)} mm/s`,
  ];
}

const healthy = tell(run(inch(0.0017)));
const loose = tell(run(inch(0.02)));
const [atTop] = loads.loads;

console.log('one plain run, kept flooded');
if (atTop) console.log(`1800 rpm, ${format(atTop.along, kilonewton, 1)} at firing top`);
console.log(`${'clearance'.padEnd(20)}${'0.0017 in'.padEnd(24)}0.0200 in`);
['least film', 'when', 'where on the shell', 'time below 8 µm', 'fastest approach'].forEach(
  (row, i) => {
    console.log(`${row.padEnd(20)}${(healthy[i] ?? '').padEnd(24)}${loose[i] ?? ''}`);
  },
);
