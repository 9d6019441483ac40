import type { Spread } from './spread.js';

/** What the library promises itself, and what was measured. */
export interface Target {
  readonly name: string;
  readonly measured: number;
  readonly atMost: number;
  readonly unit: string;
}

/** A section of the printed output. */
export interface Section {
  readonly title: string;
  /** The first row is the heading. */
  readonly rows: readonly (readonly string[])[];
  readonly targets: readonly Target[];
}

/** Prints a section as a table with its targets below; tells whether they are all met. */
export function printSection({ title, rows, targets }: Section): boolean {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => row[column]?.length ?? 0)),
  );
  console.log(`\n${title}\n`);
  for (const row of rows) {
    const cells = row.map((cell, column) =>
      column === 0 ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0),
    );
    console.log(`  ${cells.join('   ')}`);
  }
  if (targets.length > 0) console.log('');
  for (const { name, measured, atMost, unit } of targets) {
    const verdict = measured <= atMost ? 'ok    ' : 'MISSED';
    console.log(`  ${verdict}  ${name}: ${brief(measured)} ${unit}, at most ${atMost}`);
  }
  return targets.every(({ measured, atMost }) => measured <= atMost);
}

/** A ratio with the middle half of its measurements, as two cells. */
export function ratioCells({ median, lowerQuartile, upperQuartile }: Spread): [string, string] {
  return [`${brief(median)} ×`, `${brief(lowerQuartile)} … ${brief(upperQuartile)}`];
}

function brief(value: number): string {
  if (value >= 100 || Number.isInteger(value)) return value.toFixed(0);
  return value.toPrecision(3);
}
