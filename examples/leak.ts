// From drops a minute to the hours that are left, for a big end of the pump set.
import * as cw from 'crankwright';

const warm = { temperature: cw.celsius(40), viscosity: cw.centistokes(100) };
const hot = { temperature: cw.celsius(100), viscosity: cw.centistokes(11.1) };
const oil = { line: [warm, hot], density: cw.kilogramPerCubicMetre(885) } as const;
const sizes = { journal: cw.inch(1.5948), length: cw.inch(1), clearance: cw.thou(1.8) };
const running = { speed: cw.rpm(1500), load: cw.lbf(1500), inlet: cw.fahrenheit(180) };
const roughness = { journal: cw.micrometre(0.3), shell: cw.micrometre(0.5) };

const leak = cw.dripFlow({ drops: 6, time: cw.minute(1) });
const sump = { leak, oil: cw.quartUS(1) };
const bearing = { ...sizes, ...running, oil, roughness };
const { stand, until, setBy } = cw.safeHours({ sump, bearing });

const fuel = stand.outcome === 'stands' ? cw.format(stand.fraction, cw.percentByVolume) : 'none';
const time = until.reached ? cw.format(until.time, cw.hour) : 'for good';
console.log(
  `A leak of ${cw.format(leak, cw.mLPerHour)}: kept flooded, the film stands ${fuel} of fuel;`,
);
console.log(`${time} until the ${setBy} on fuel in oil. Stop, drain, and mend the needle valve.\n`);
