import { buildSheet } from 'crankwright/build-sheet';
import { planBuilds, planReport } from 'crankwright/planning';
import { type Shed, triage, triageReport } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { block, eur, length, pistons, rings, single, span } from '../planning/single-shed.js';

/** A block, and pistons and rings for 20 over, by an engine of which no clearance is stated. */
const shedWith = (
  its: ReturnType<typeof block>,
  bores: Partial<Shed['engine']['bores']> = {},
  over = 200,
): Shed => ({
  ...single,
  engine: { ...single.engine, bores: { standard: span(30000, 30005), ...bores } },
  blocks: [its],
  pistonSets: [{ ...pistons('new piston', 29970 + over), oversize: length(over) }],
  ringSets: [{ ...rings(1), oversize: length(over) }],
  machining: [{ work: 'bore', shop: 'Smith', price: eur(60) }],
});

/** The single bore as largest at the top by so much. */
function tapered(by: number) {
  const its = block('worn block', 30003);
  const [bore] = its.bores;
  if (!bore) throw new Error('no bore');
  const readings = bore.readings.map((each, i) =>
    i < 2 ? { ...each, diameter: length(30003 + by) } : each,
  );
  return { ...its, bores: [{ ...bore, readings }] };
}

const all = async (shed: Shed) => {
  const plan = await planBuilds(shed);
  expect(plan.builds).toHaveLength(1);
  const job = plan.builds[0]?.jobs.find(({ work }) => work === 'bore');
  return {
    job,
    report: flowing(planReport(plan)),
    sheet: flowing(buildSheet(plan, { format: 'text' })),
    sorted: flowing(triageReport(triage(shed))),
  };
};

describe('boring that rules of thumb alone ask for', () => {
  // What the rule lets a worn 3 in bore be out of true: 0.001 of its diameter, 3 thou.
  it('is in doubt past what any limit of another engine lets stay', async () => {
    const { job, report, sheet, sorted } = await all(shedWith(tapered(35)));
    expect(job).toMatchObject({ byRule: true });
    expect(job?.inDoubt).toBeUndefined();
    const said = "only rules of thumb ask for it; find the maker's service limit before you bore";
    expect(report.split(`IN DOUBT: ${said}`)).toHaveLength(3);
    expect(report).toContain('IN DOUBT: worn block (bore and hone)');
    expect(sheet).toContain(`IN DOUBT: ${said}`);
    expect(sorted).toContain(`in doubt: ${said}`);
  });

  it('is in doubt for the step below that, as before', async () => {
    const { job } = await all(shedWith(tapered(25)));
    expect(job?.inDoubt).toBeDefined();
    expect(job?.byRule).toBeUndefined();
  });

  it('is sure where no piston could keep the stated clearance in the worn bore', async () => {
    // 2 to 4.5 thou leave 2.5 thou for the bore.
    const stated = { pistonClearance: span(20, 45) };
    const { job, report } = await all(shedWith(tapered(35), stated));
    expect(job?.byRule).toBeUndefined();
    expect(report).not.toContain('IN DOUBT');
  });

  it('is sure past a limit of this engine', async () => {
    const { job } = await all(shedWith(tapered(35), { shape: { service: { max: length(20) } } }));
    expect(job?.byRule).toBeUndefined();
    expect(job?.inDoubt).toBeUndefined();
  });
});

describe('a scored bore', () => {
  const scored = { ...block('scored block', 30003), faults: ['scored' as const] };

  it('is told beside its order, with what to find out before it goes out', async () => {
    const { job, report, sheet, sorted } = await all(shedWith(scored));
    expect(job?.faults).toEqual([{ fault: 'scored', places: ['cylinder 1'] }]);
    const said =
      'cylinder 1 is scored: find out how deep before it goes out; what is deeper than the cut on one side does not clean up at this step';
    expect(report.split(said)).toHaveLength(3);
    expect(sheet).toContain(said);
    expect(sorted).toContain('feel how deep the score is first');
  });

  it('is told of no bore that is only worn', async () => {
    const { job, report } = await all(shedWith(tapered(35)));
    expect(job?.faults).toBeUndefined();
    expect(report).not.toContain('scored');
  });
});

describe('the walls of a block that is bored', () => {
  const caution =
    'its cylinder walls were not measured; before it is bored past the first oversize';
  const withWall = (wall: number) => {
    const its = tapered(35);
    return { ...its, bores: its.bores.map((bore) => ({ ...bore, wall: length(wall) })) };
  };

  it('are asked for where it goes past the first oversize', async () => {
    const { report, sheet } = await all(shedWith(tapered(35)));
    expect(report).toContain(caution);
    expect(sheet).toContain(caution);
  });

  it('are not asked for at the first oversize, or where they were measured', async () => {
    expect((await all(shedWith(tapered(35), {}, 100))).report).not.toContain(caution);
    const measured = shedWith(withWall(2500), { leastWall: length(1500) });
    expect((await all(measured)).report).not.toContain(caution);
  });
});
