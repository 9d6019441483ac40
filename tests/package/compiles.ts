import { type Packed, run, tsc, write } from './packed.js';

const use = `import { convert, inch, newtonMetre, oilClearance, type Length } from 'crankwright';
import { type Plan, planBuilds } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { inspect, readSheet } from 'crankwright/sheet';
import { cards } from 'crankwright/teaching';
const sizes = { housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125) };
export const clearance: Length = oilClearance(sizes);
export const smallest: Length | undefined = inspect(readSheet('{}')).rods?.bearings[0]?.shape.smallest;
export const plan: Promise<Plan> = planBuilds(readShed('{}'), { atMost: 2 });
export const source: string = cards.oilClearance.source;
// @ts-expect-error a torque is not a length
oilClearance({ ...sizes, journal: newtonMetre(20) });
// @ts-expect-error inches are no kilograms
convert(1, 'in', 'kg');
// @ts-expect-error a bare number has no unit
oilClearance({ ...sizes, journal: 2.125 });
`;

/** A way in which TypeScript finds packages. */
export type Resolution = 'nodenext' | 'bundler';

/** Compiles files in the project, strictly; fails with what the compiler printed. */
function compile(
  packed: Packed,
  resolution: Resolution,
  files: Readonly<Record<string, string>>,
): void {
  const compilerOptions = {
    strict: true,
    noUncheckedIndexedAccess: true,
    exactOptionalPropertyTypes: true,
    noEmit: true,
    target: 'es2022',
    module: resolution === 'nodenext' ? 'nodenext' : 'esnext',
    moduleResolution: resolution,
    types: [],
  };
  const names = Object.keys(files);
  for (const [name, text] of Object.entries(files)) write(packed.project, name, text);
  const config = `tsconfig-${names[0]}-${resolution}.json`;
  write(packed.project, config, JSON.stringify({ compilerOptions, files: names }));
  run('node', [tsc, '-p', config], packed.project);
}

/** Compiles what every user writes, and what must not compile; together with more files, to start one compiler. */
export const compiles = (
  packed: Packed,
  resolution: Resolution,
  more: Readonly<Record<string, string>> = {},
) => compile(packed, resolution, { 'use.ts': use, ...more });
