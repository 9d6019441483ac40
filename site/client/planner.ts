import { buildSheetBlocks } from '../../src/build-sheet/build-sheet.js';
import { buildSheet } from '../../src/build-sheet/index.js';
import { planBuilds, planReport } from '../../src/planning/index.js';
import { planPage, reportPage, triagePage } from '../../src/plots/index.js';
import { fileKind, readJson } from '../../src/reading/index.js';
import { readShed, triage, triageReport } from '../../src/shed/index.js';
import { inspect, readSheet, report } from '../../src/sheet/index.js';
import type { Asked, Paper, Told } from '../planner-words.js';
import { isRefusal } from '../reading.js';

// The worker of the page for your own parts: it reads, reports and plans, so that the page never stands still.

/** The solver stands beside this file. Bundlers do not follow a name in a variable. */
const SOLVER = './highs.mjs';

addEventListener('message', ({ data }: MessageEvent<Asked>) => void answer(data));

async function answer(asked: Asked): Promise<void> {
  try {
    const isSheet = fileKind(readJson(asked.text, 'sheet').value) === 'sheet';
    if (isSheet) tell({ told: 'done', of: 'sheet', papers: [sheetPaper(asked)] });
    else tell({ told: 'done', of: 'shed', papers: await shedPapers(asked) });
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    tell({ told: 'refused', message: isRefusal(error) ? message : `This page failed: ${message}` });
  }
}

function sheetPaper({ text, units, why }: Asked): Paper {
  const sheet = readSheet(text);
  const wording = { units: units ?? sheet.units, why };
  return pagePaper('Report', report(inspect(sheet), wording), reportPage(sheet, wording));
}

async function shedPapers(asked: Asked): Promise<readonly Paper[]> {
  const { ask, text, readings, today, why, atMost, buying } = asked;
  const shed = readShed(text, readings, { today });
  const wording = { units: asked.units ?? shed.units, why };
  if (ask === 'report') {
    const sorted = triage(shed);
    return [pagePaper('Report', triageReport(sorted, wording), triagePage(sorted, wording))];
  }
  tell({ told: 'progress', stage: 'loading the solver', elapsed: 0 });
  const { default: start } = (await import(SOLVER)) as typeof import('highs');
  const plan = await planBuilds(shed, {
    solver: await start(),
    buying,
    ...(atMost !== undefined && { atMost }),
    onProgress: ({ stage, elapsed }) => tell({ told: 'progress', stage, elapsed }),
  });
  return [
    pagePaper('Plan', planReport(plan, wording), planPage(plan, wording)),
    {
      title: 'Build sheet',
      text: buildSheet(plan, { units: wording.units, format: 'text' }),
      shown: { as: 'blocks', blocks: buildSheetBlocks(plan, wording.units) },
    },
  ];
}

const pagePaper = (title: string, text: string, page: string): Paper => ({
  title,
  text,
  shown: { as: 'page', page },
});

const tell = (told: Told): void => postMessage(told);
