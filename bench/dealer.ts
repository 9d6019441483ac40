import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Plan } from 'crankwright/planning';
import type { Section } from './report.js';
import { generatedShed } from './shed.js';

/** So many of each part. */
const OF = 500;
/** What the plan is given: the solver looks at the clock between its steps, and goes past it [s]. */
const TIME_LIMIT = 25;

interface Planned {
  readonly engines: number;
  readonly proof: Plan['proof'];
  /** From the shed to the plan [s]. */
  readonly seconds: number;
  /** The most memory that the process took [MB]. */
  readonly megabytes: number;
}

/** The plan of a dealer's shed, proven or with its gap, in a process of its own. */
export function planOfDealer(): Section {
  const { engines, proof, seconds, megabytes } = planned();
  const gap =
    proof.outcome === 'optimal'
      ? 'proven'
      : `${proof.stage}: found ${proof.found.toPrecision(3)}, at best ${proof.bound.toPrecision(3)}`;
  return {
    title: `a plan of ${OF} of each part, given ${TIME_LIMIT} s`,
    rows: [
      ['', 'engines', 'proof'],
      [`${OF} of each`, `${engines}`, gap],
    ],
    targets: [
      { name: 'time', measured: seconds, atMost: 60, unit: 's' },
      { name: 'memory', measured: megabytes, atMost: 1000, unit: 'MB' },
    ],
  };
}

function planned(): Planned {
  const script = `
    const { readFileSync } = await import('node:fs');
    const { planBuilds } = await import('crankwright/planning');
    const shed = JSON.parse(readFileSync(0, 'utf8'));
    const start = performance.now();
    const { builds, proof } = await planBuilds(shed, { timeLimit: ${TIME_LIMIT} });
    console.log(JSON.stringify({
      engines: builds.length,
      proof,
      seconds: (performance.now() - start) / 1000,
      megabytes: process.resourceUsage().maxRSS / 1024,
    }));`;
  const printed = execFileSync(process.execPath, ['--input-type=module', '-e', script], {
    cwd: fileURLToPath(new URL('..', import.meta.url)),
    input: JSON.stringify(generatedShed(OF, 1)),
    encoding: 'utf8',
  });
  return JSON.parse(printed) as Planned;
}
