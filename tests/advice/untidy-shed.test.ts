import { readFileSync } from 'node:fs';
import { planBuilds, planReport } from 'crankwright/planning';
import { readShed, triage, triageReport, writeShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';

// The shed as it is: four cores in four states, two crankshafts ground years ago, a home-made bearing, a later block that
// supersedes the early ones, one that is frost-cracked, three magnetos of which one is cracked, a block without readings.

const text = readFileSync('examples/untidy-shed.json', 'utf8');
const shed = readShed(text);

const flowing = (page: string): string => page.replace(/\s+/g, ' ');

type Given = Record<string, never> & { crankshafts: never[]; blocks: never[]; shells: never[] };

/** The shed after a second look, with readings put in place of what was not known. */
function afterLook(rodJournal: readonly string[], wall: string) {
  const given = JSON.parse(text) as Given;
  const named = (section: 'crankshafts' | 'blocks' | 'shells', name: string) =>
    given[section].find((part: { name: string }) => part.name === name) as unknown as Record<
      string,
      unknown
    >;
  const table = (diameters: readonly string[], stations: readonly string[]) => ({
    angles: ['0 deg', '60 deg', '120 deg'],
    stations,
    diameters: [diameters, diameters],
  });
  named('crankshafts', 'crankshaft 2')['rodJournals'] = ['rod 1', 'rod 2'].map((name) => ({
    name,
    readings: table(rodJournal, ['0.25 in', '1.00 in']),
  }));
  named('blocks', 'block G')['bores'] = ['cylinder 1', 'cylinder 2'].map((name) => ({
    name,
    readings: table(['3.0004 in', '3.0003 in', '3.0004 in'], ['0.50 in', '3.00 in']),
  }));
  named('shells', 'rod shells 20')['wall'] = wall;
  return readShed(given);
}

describe('an untidy shed', () => {
  it('is read, and given back as it was written', () => {
    expect(writeShed(shed)).toBe(text);
    const { parts, cores } = triage(shed);
    const of = (name: string) => parts.find((part) => part.name === name)?.disposition;
    expect(cores.map(({ condition }) => condition?.is)).toEqual([
      'ran',
      'turns',
      'seized',
      'not seen',
    ]);
    expect(of('block F')).toBe('not as it is');
    expect(of('magneto 3')).toBe('scrap');
    for (const name of ['block G', 'crankshaft 2', 'crankshaft 3', 'rod shells 20']) {
      expect(of(name), name).toBe('undecided');
    }
    const report = flowing(triageReport(triage(shed)));
    expect(report).toContain('rod 1: reads 1.6047 in so far; still to read: a second angle at');
    expect(report).toContain('core A: it ran (2024-06); should hold: block, crankshaft, rods');
    // Core B lacks its magneto, and core C its head.
    expect(cores[1]?.holds).not.toContain('magneto');
    expect(cores[2]?.holds).not.toContain('head');
  });

  it('makes one engine that is proven, whatever is asked for, and names the three things to measure for a second', async () => {
    for (const atMost of [1, 2, 3]) {
      const plan = await planBuilds(shed, { atMost });
      expect(plan.builds.map(({ name }) => name)).toEqual(['block E']);
      expect(plan.mayBe?.engines).toBe(atMost === 1 ? undefined : atMost);
      // What was not measured, what is home-made where there is better, and what is cracked is in none of them.
      const names = plan.builds.flatMap(({ parts }) => parts.map(({ name }) => name));
      for (const name of ['block G', 'crankshaft 2', 'bronze rod shells', 'magneto 3']) {
        expect(names).not.toContain(name);
      }
    }
    const plan = await planBuilds(shed);
    expect(plan.proof).toEqual({ outcome: 'optimal' });
    const [first] = plan.measureFirst;
    expect(first?.mayBring).toEqual({ kind: 'one more engine', engines: 2 });
    expect(
      first?.parts.map(({ name, measure }) => [
        name,
        ...measure.map((each) => [each.what, each.with]),
      ]),
    ).toEqual([
      ['block G', ['bores', 'boreGauge']],
      ['crankshaft 2', ['rod journals', 'micrometer']],
      ['rod shells 20', ['walls', 'wallGauge']],
    ]);
    expect(flowing(planReport(plan))).toContain(
      'For one more engine, measure first: block G, crankshaft 2, rod shells 20.',
    );
  });

  it('makes the second engine once those turn out good, as it said it might', async () => {
    // 1.7507 - 2 * 0.0720 - 1.6047 = 0.0020 in.
    const plan = await planBuilds(afterLook(['1.6047 in', '1.6048 in', '1.6047 in'], '0.0720 in'));
    expect(plan.builds.map(({ name }) => name).sort()).toEqual(['block E', 'block G']);
    // Two magnetos are sound: a third engine lacks one, or takes a core apart.
    expect(plan.mayBe?.engines).toBeGreaterThan(2);
    expect(plan.measureFirst[0]?.parts.some(({ core }) => core !== undefined)).toBe(true);
  });

  it('makes no second engine if the shells turn out to be standard ones in the wrong paper', async () => {
    // 1.7507 - 2 * 0.0620 - 1.6047 = 0.0220 in: far outside.
    const good = ['1.6047 in', '1.6048 in', '1.6047 in'];
    const plan = await planBuilds(afterLook(good, '0.0620 in'));
    expect(plan.builds.map(({ name }) => name)).toEqual(['block E']);
  });
});
