import { readFileSync } from 'node:fs';
import { readShed, type Shed } from 'crankwright/shed';

const text = (name: string) => readFileSync(`examples/${name}`, 'utf8');

/** The shed of the examples, with some fields changed or added. */
export const exampleShed = (changes: Readonly<Record<string, unknown>> = {}): Shed =>
  readShed(
    JSON.stringify({ ...JSON.parse(text('pump-set-shed.json')), ...changes }),
    text('pump-set-shed-readings.csv'),
  );
