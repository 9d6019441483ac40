// Prints the bench report of the pump set's inspection sheet, how long its leak may
// last, how a big end runs, and then what the pump set's shed makes: which engines, of which
// parts, at what cost.
import { readFileSync } from 'node:fs';
import { planBuilds, planReport } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { inspect, readSheet, report } from 'crankwright/sheet';

const read = (name: string) => readFileSync(new URL(name, import.meta.url), 'utf8');

const sheet = readSheet(read('./pump-set-inch.json'));
const shed = readShed(read('./pump-set-shed.json'), read('./pump-set-shed-readings.csv'));

console.log(report(inspect(sheet)));
await import('./leak.js');
await import('./big-end.js');
console.log('');
console.log(planReport(await planBuilds(shed)));
