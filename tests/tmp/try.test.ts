import { it } from 'vitest';
import { readShed, triage } from 'crankwright/shed';
import { readSheet, inspect } from 'crankwright/sheet';
import { planBuilds } from 'crankwright/planning';
import { plainShed } from '../shed/sheds.js';
import { changed, exampleText, spoilt } from '../sheet/sheets.js';
const say = async (what: string, run: () => unknown) => {
  try { await run(); console.log(`--- ${what}: fine`); } catch (e) { console.log(`--- ${what}\n${(e as Error).name}: ${(e as Error).message.slice(0, 1500)}`); }
};
it('says', async () => {
  const shed = readShed(plainShed());
  const sheet = readSheet(exampleText('inch'));
  await say('shed to readSheet', () => readSheet(plainShed()));
  await say('sheet to readShed', () => readShed(exampleText('inch')));
  await say('Shed to inspect', () => inspect(shed as never));
  await say('Sheet to triage', () => triage(sheet as never));
  await say('Sheet to planBuilds', () => planBuilds(sheet as never));
  await say('Shed to readShed', () => readShed(shed));
  await say('raw shed to triage', () => triage(plainShed() as never));
  await say('raw sheet to inspect', () => inspect(JSON.parse(exampleText('inch'))));
  await say('Sheet to readSheet', () => readSheet(sheet));
  await say('text to inspect', () => inspect(exampleText('inch') as never));
  const j = JSON.parse(exampleText('inch')).rods[0].journal.readings;
  await say('one angle', () => readSheet(spoilt({ 'rods[0].journal.readings': j.filter((x: any) => x.angle === j[0].angle) })));
  await say('one station', () => readSheet(spoilt({ 'rods[0].journal.readings': j.filter((x: any) => x.station === j[0].station) })));
  await say('one reading', () => readSheet(spoilt({ 'rods[0].journal.readings': [j[0]] })));
  await say('180', () => readSheet(spoilt({ 'rods[0].journal.readings': j.map((x: any) => ({ ...x, angle: x.angle === j[0].angle ? x.angle : '180 deg' })) })));
  await say('10 off', () => readSheet(spoilt({ 'rods[0].journal.readings[1].angle': '80 deg' })));
  await say('10 close', () => readSheet(spoilt({ 'rods[0].journal.readings': j.map((x: any) => ({ ...x, angle: x.angle === j[0].angle ? x.angle : '10 deg' })) })));
  console.log(JSON.stringify(j));
  await say('domains', () => readSheet(spoilt({ 'rods[0].housingBore': '2.7506 in', 'shells[1].wall': '0.719 in', 'rods[1].housingBore': '53 in', 'rods[0].journal.readings[1].diameter': '16.046 in', 'cylinders[0].piston': '2.7 in', 'cylinders[0].rings[0].gap': '0.39 in', 'crankshaft.mainJournals.minimum': '2.1 in' })));
  await say('shed', () => readShed(changed(plainShed(), { 'rods[0].rods[0].housingBore': '2.9 in', 'shells[0].wall': '0.2 in', 'crankshafts[0].rodJournals[0].readings[0].diameter': '1.9 in', 'rods[1].rods[0].housingBore': undefined })));
});
