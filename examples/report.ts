// Prints the bench report of an inspection sheet: by default the pump set's,
// or of the sheet named, e.g. `npm start -- examples/pump-set-metric.json`.
import { readFileSync } from 'node:fs';
import { inspect, readSheet, report } from 'crankwright/shelf';

const file = process.argv[2] ?? new URL('./pump-set-inch.json', import.meta.url);
try {
  process.stdout.write(report(inspect(readSheet(readFileSync(file, 'utf8')))));
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
