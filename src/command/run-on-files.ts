import { buildSheet } from '../build-sheet/index.js';
import {
  chancesReport,
  type EngineChances,
  engineChances,
  type Plan,
  planBuilds,
  planReport,
} from '../planning/index.js';
import { planPage, reportPage, triagePage } from '../plots/index.js';
import { RebuildInputError } from '../quantities/index.js';
import { complaintOf } from '../quantities/internal.js';
import { fileKind, readJson } from '../reading/index.js';
import {
  readShed,
  type Shed,
  shedSchema,
  triage,
  triageReport,
  workSchema,
} from '../shed/index.js';
import { inspect, readSheet, report, sheetSchema } from '../sheet/index.js';
import { leftWaiting } from '../sheet/internal.js';
import { DONE, NOT_PROVEN } from './exit-codes.js';
import { refuseForgotten } from './forgotten-readings.js';
import { guardFile } from './guard-file.js';
import type { Io } from './io.js';
import { makeNew } from './make-new.js';
import { progressLine } from './progress.js';
import { readSource } from './read-source.js';
import { boxesText, differences, recordWork } from './record.js';
import type { Request, Source } from './request.js';
import { deliver, refuseThere } from './write-file.js';
import { WrongCommand } from './wrong-command.js';

/** The schema of each kind of file. */
const SCHEMAS = { sheet: sheetSchema, shed: shedSchema, work: workSchema } as const;

/** A request that reads or makes files of ours. */
type FileRequest = Exclude<
  Request,
  { readonly command: 'help' | 'version' | 'calc' | 'repl' | 'worksheet' }
>;

/** Does what is asked of files. */
export async function runOnFiles(request: FileRequest, io: Io): Promise<number> {
  switch (request.command) {
    case 'schema':
      await io.print(json(SCHEMAS[request.of]()));
      return DONE;
    case 'new':
      await makeNew(request, io);
      return DONE;
    case 'done':
      await recordWork(request, io);
      return DONE;
    case 'diff':
      await io.print(await differences(request, io));
      return DONE;
    case 'report':
      await refuseThere(placeOf(request), io);
      await hand(await reportText(request, io), request, io);
      return DONE;
    case 'plan': {
      await refuseThere(placeOf(request), io);
      const { plan, shed } = await makePlan(request, io);
      const { page, chances } = request;
      if (page) {
        await hand(await pageOf(plan, shed, request), request, io);
      } else {
        await io.print(planText(plan, shed, request));
        if (chances) await io.print(await chancesText(shed, request));
      }
      return plan.proof.outcome === 'optimal' ? DONE : NOT_PROVEN;
    }
  }
}

/** Prints what was asked for, or writes the page. */
const hand = (text: string, source: Source, io: Io): Promise<void> =>
  deliver(text, placeOf(source), io);

/** Where a page is written to: nowhere if it is printed. */
const placeOf = ({ page }: Source) => (page === undefined || page.output === '-' ? {} : page);

type Asked<C extends Request['command']> = Extract<Request, { readonly command: C }>;

async function reportText(request: Asked<'report'>, io: Io): Promise<string> {
  const { text, readings } = await readSource(request, io);
  const { units, output, why = false, page } = request;
  const value = rawOf(text);
  if (isShed(value, text)) {
    guardFile('shed', request.file, text);
    await refuseForgotten(request, value, io);
    const sorted = triage(readShed(text, readings, { today: io.today }));
    if (page) return triagePage(sorted, { units: units ?? sorted.units, why });
    return output === 'json'
      ? json(sorted)
      : triageReport(sorted, { units: units ?? sorted.units, why });
  }
  if (readings !== undefined) {
    throw new WrongCommand('--readings is for a shed, but this file is an inspection sheet');
  }
  guardFile('sheet', request.file, text);
  for (const each of leftWaiting(value)) io.complain(`crankwright: ${each}\n`);
  const sheet = readSheet(text);
  if (page) return reportPage(sheet, { units: units ?? sheet.units, why });
  const inspection = inspect(sheet);
  if (output === 'json') return json(inspection);
  return report(inspection, { units: units ?? inspection.units, why });
}

/** The value in a file; undefined if it is not JSON. */
const rawOf = (text: string): unknown => readJson(text, 'sheet').value;

/** Whether the file is a shed: only a shed file has the field `shed`. Of text that is not JSON, what it says counts. */
const isShed = (value: unknown, text: string): boolean =>
  value === undefined
    ? /"shed"\s*:/.test(text)
    : (typeof value === 'object' && value !== null && Object.hasOwn(value, 'shed')) ||
      fileKind(value) === 'shed';

/** The command-line options for the plan options that are checked against the shed. */
const TYPED: Readonly<Record<string, string>> = {
  reserved: '--reserve',
  mustBuild: '--must-build',
  mostPerEngine: '--most-per-engine',
};

interface Planned {
  readonly shed: Shed;
  readonly plan: Plan;
}

async function makePlan({ options, ...source }: Asked<'plan'>, io: Io): Promise<Planned> {
  const { text, readings } = await readSource(source, io);
  guardFile('shed', source.file, text);
  await refuseForgotten(source, rawOf(text), io);
  const shed = readShed(text, readings, { today: io.today });
  const line = progressLine(io);
  try {
    return { shed, plan: await planBuilds(shed, { ...options, onProgress: line.show }) };
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    // An unknown name or another currency came from the command line, not from the file.
    const [, option = ''] = /^options\.(\w+)/.exec(error.parameter) ?? [];
    const typed = TYPED[option];
    if (typed === undefined) throw error;
    throw new WrongCommand(`${typed}: ${complaintOf(error)}. ${error.hint}`);
  } finally {
    line.erase();
  }
}

/** The chances that belong to a plan, with the options that they share with it. */
function chancesOf(shed: Shed, { options }: Asked<'plan'>): Promise<EngineChances> {
  const { atMost, buying, reserved, timeLimit } = options;
  return engineChances(shed, {
    ...(atMost !== undefined && { atMost }),
    ...(buying !== undefined && { buying }),
    ...(reserved !== undefined && { reserved }),
    ...(timeLimit !== undefined && { timeLimit }),
  });
}

async function chancesText(shed: Shed, request: Asked<'plan'>): Promise<string> {
  const { units = shed.units } = request;
  return `\n${chancesReport(await chancesOf(shed, request), { units })}`;
}

/** The plan as a web page, with the chances if they are wanted. */
async function pageOf(plan: Plan, shed: Shed, request: Asked<'plan'>): Promise<string> {
  const { units = plan.units, why = false, chances } = request;
  return planPage(plan, { units, why }, chances && (await chancesOf(shed, request)));
}

function planText(
  plan: Plan,
  shed: Shed,
  { output, units = plan.units, why = false, boxes = '' }: Asked<'plan'>,
): string {
  switch (output) {
    case 'json':
      return json(plan);
    case 'text':
      return planReport(plan, { units, why });
    case 'build sheet':
      return buildSheet(plan, { units, format: 'text' });
    case 'build sheet in Markdown':
      return buildSheet(plan, { units, format: 'markdown' });
    case 'boxes':
      return boxesText(plan, shed, boxes);
  }
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
