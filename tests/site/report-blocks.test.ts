import { readFileSync } from 'node:fs';
import { readShed, triage, triageReport } from 'crankwright/shed';
import { inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { blocksOf } from '../../site/report-blocks.js';
import { bare } from './bare.js';

const example = (name: string) => readFileSync(`examples/${name}`, 'utf8');
const shed = readShed(example('pump-set-shed.json'), example('pump-set-shed-readings.csv'));

/** All that blocks say. */
const wordsIn = (text: string): string =>
  blocksOf(text)
    .map((block) => {
      if (block.kind === 'page break') return '';
      if (block.kind === 'table') return [block.heading, ...block.rows].flat().join(' ');
      return 'items' in block ? block.items.join(' ') : block.text;
    })
    .join(' ');

describe('the blocks of a report', () => {
  it.each([
    ['a sheet in inches', () => report(inspect(readSheet(example('pump-set-inch.json'))))],
    ['a sheet in millimetres', () => report(inspect(readSheet(example('pump-set-metric.json'))))],
    ['a shed', () => triageReport(triage(shed))],
    ['an untidy shed', () => triageReport(triage(readShed(example('untidy-shed.json'))))],
  ])('say what the text of %s says', (_, textOf) => {
    const text = textOf();
    expect(bare(wordsIn(text))).toBe(bare(text));
  });

  it('put wrapped lines together, and leave what is set in and boxes apart', () => {
    const long = `pulley main is not shown to be true enough: ${'as it may be inside the limit or not '.repeat(1)}of this`;
    const text = `PLAN: it\n--------\n${long.padEnd(95, 'x')}\n  wrapped words\n 1. [ ] a task\n10. [ ] another\nDecision: grind\n  for this\n  for that\n`;
    expect(blocksOf(text).slice(1)).toEqual([
      { kind: 'paragraph', text: `${long.padEnd(95, 'x')} wrapped words` },
      { kind: 'checks', items: ['1. a task', '10. another'] },
      { kind: 'paragraph', text: 'Decision: grind' },
      { kind: 'list', items: ['for this', 'for that'] },
    ]);
  });

  it('read a table, whose wide cells go on below', () => {
    const text =
      'A\n-\n\njournal   housing    shells   clearance\nrod 1     long       10       0.0019 to 0.0023\n          name\nrod 2     short      10       0.0020\n';
    expect(blocksOf(text).at(-1)).toEqual({
      kind: 'table',
      heading: ['journal', 'housing', 'shells', 'clearance'],
      rows: [
        ['rod 1', 'long name', '10', '0.0019 to 0.0023'],
        ['rod 2', 'short', '10', '0.0020'],
      ],
      left: 2,
    });
  });
});
