import { buildBoxes } from '../build-sheet/index.js';
import { describePlanDifference, diffPlans, type Plan, planBuilds } from '../planning/index.js';
import { didYouMean } from '../reading/index.js';
import {
  afterMachining,
  describeShedDifference,
  diffSheds,
  emptyBoxes,
  outsideLimits,
  readShed,
  type Shed,
  writeShed,
} from '../shed/index.js';
import { printedFile, READ_AGAIN, unreadBefore } from '../shed/internal.js';
import { guardFile } from './guard-file.js';
import type { Io } from './io.js';
import { progressLine } from './progress.js';
import { readSource } from './read-source.js';
import type { DiffRequest, DoneRequest } from './record-request.js';
import { deliver } from './write-file.js';
import { WrongCommand } from './wrong-command.js';

/** Puts what came back into a shed file, and prints or writes the new one. */
export async function recordWork(
  { file, work, readings, output, force }: DoneRequest,
  io: Io,
): Promise<void> {
  const shed = await readSource({ file, ...(readings !== undefined && { readings }) }, io);
  const { text } = await readSource({ file: work }, io);
  guardFile('shed', file, shed.text);
  guardFile('work', work, text);
  const { today } = io;
  const was = readShed(shed.text, shed.readings, { today });
  const after = writeShed(afterMachining(was, text, { today }));
  await deliver(after, { ...(output !== undefined && { output }), force }, io);
  const outside = outsideLimits(text);
  if (outside.length > 0) {
    const lines = outside.map((each) => `crankwright: outside its limits: ${each}\n`).join('');
    const todo = outside.some((each) => each.endsWith(READ_AGAIN))
      ? 'read again what is told to be; plan again only with the sizes that stand'
      : 'plan again with these sizes';
    io.complain(`${lines}crankwright: do not assemble: ${todo}; nothing is marked as built\n`);
  }
  const empty = emptyBoxes(text);
  if (empty.length > 0) io.complain(`crankwright: not filled in: ${empty.join('; ')}\n`);
  if (readings !== undefined) {
    io.complain(
      `crankwright: the readings of ${readings} are in the new shed file; leave --readings out from now on\n`,
    );
    return;
  }
  const unread = unreadBefore(was, text);
  if (unread.length > 0) {
    io.complain(
      `crankwright: the shed file has no readings of ${unread.join('; ')}; if a CSV has them, they are of before this work and are void: take their rows out\n`,
    );
  }
}

/** The boxes of one engine of a plan, to fill in. It is told by its block, or by its number as the plan prints it. */
export function boxesText(plan: Plan, shed: Shed, engine: string): string {
  const all = buildBoxes(plan, shed);
  const [, number] = /^(?:engine\s+)?(\d{1,4})$/i.exec(engine.trim()) ?? [];
  const found = all.find((each) => each.engine === engine) ?? all[Number(number) - 1];
  if (found) return printedFile(found);
  const names = all.map((each) => each.engine);
  const question = didYouMean(engine, names);
  const told = names.map((name, i) => `engine ${i + 1} (${name})`).join(', ');
  const built = names.length === 0 ? 'the plan builds none' : `the plan builds ${told}`;
  throw new WrongCommand(
    `--boxes: "${engine}" is not an engine of the plan; ${question ? `${question} ` : ''}${built}`,
  );
}

/** What differs between two shed files, and what it changed in the plan. */
export async function differences(request: DiffRequest, io: Io): Promise<string> {
  const { older, newer, oldReadings, readings, units, json } = request;
  const files = [
    { file: older, ...(oldReadings !== undefined && { readings: oldReadings }) },
    { file: newer, ...(readings !== undefined && { readings }) },
  ];
  const [was, is] = await Promise.all(
    files.map(async (source) => {
      const texts = await readSource(source, io);
      guardFile('shed', source.file, texts.text);
      return readShed(texts.text, texts.readings, { today: io.today });
    }),
  );
  if (was === undefined || is === undefined) return '';
  const line = progressLine(io);
  const plan = (shed: typeof is) => planBuilds(shed, { onProgress: line.show });
  try {
    const shed = diffSheds(was, is);
    const plans = diffPlans(await plan(was), await plan(is));
    if (json) return `${JSON.stringify({ shed, plan: plans }, null, 2)}\n`;
    const wording = { units: units ?? is.units };
    const changes = describeShedDifference(shed, wording);
    const lines = [
      ...(changes.length === 0 ? ['Nothing differs in the shed.'] : changes),
      '',
      ...describePlanDifference(plans, wording),
    ];
    return `${lines.join('\n')}\n`;
  } finally {
    line.erase();
  }
}
