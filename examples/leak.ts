// From drops a minute to the hours that are left, for a big end of the pump set. Every span counts at its bad end.
import * as cw from 'crankwright';

const warm = { temperature: cw.celsius(40), viscosity: cw.centistokes(100) };
const hot = { temperature: cw.celsius(100), viscosity: cw.centistokes(11.1) };
const oil = { line: [warm, hot], density: cw.kilogramPerCubicMetre(885) } as const;
const sizes = { journal: cw.inch(1.5948), length: cw.inch(1), clearance: cw.thou(1.8) };
const running = { speed: cw.rpm(1500), load: cw.lbf(1500), inlet: cw.fahrenheit(180) };
const roughness = { journal: cw.micrometre(0.3), shell: cw.micrometre(0.5) };
const bearing = { ...sizes, ...running, oil, roughness };

// The oil was just changed, so there is no fuel in it yet.
const leak = cw.dripFlow({ drops: 6, time: cw.minute(1) });
const sump = { leak, oil: cw.quartUS(1), fuel: cw.mL(0) };
const { stand, standing, setBy } = cw.safeHours({ sump, bearing });

const vol = (fraction: cw.VolumeFraction) => cw.format(fraction, cw.percentByVolume);
const flow = `${cw.format(leak.min, cw.mLPerHour)} to ${cw.format(leak.max, cw.mLPerHour)}`;
const time = standing.reached ? cw.format(standing.time, cw.hour) : 'no end';
console.log(
  `A leak of ${flow}. Kept flooded, the film tolerates ${vol(stand.span.min)} to ${vol(stand.span.max)}`,
);
console.log('of fuel. It hangs on:');
for (const { driver, span } of stand.drivers) {
  console.log(`  ${driver.padEnd(10)} ${vol(span.min)} to ${vol(span.max)}`);
}
console.log(`Time that can be promised at the bad end: ${time}, set by the ${setBy}.`);
const full = cw.hydraulicLockHours({ clearanceVolume: cw.mL(60), leak: leak.max });
console.log(
  `A cylinder with 60 mL above its piston can be flooded in ${cw.format(full, cw.hour)}.`,
);
console.log('Shut the fuel cock, drain, and mend the needle valve.\n');
