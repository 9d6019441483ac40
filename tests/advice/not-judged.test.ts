import { buildSheet } from 'crankwright/build-sheet';
import { planBuilds, planReport } from 'crankwright/planning';
import {
  describePart,
  FileError,
  readShed,
  type Shed,
  triage,
  triageReport,
} from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { single, two } from '../planning/single-shed.js';
import { spoiltShed } from '../shed/sheds.js';
import type { Json } from '../sheet/sheets.js';

// The plain shed has two donors. Head A was measured, guides and face; of head B the face alone.

type Changes = Readonly<Record<string, Json | undefined>>;
const read = (changes: Changes) => readShed(spoiltShed(changes));
const short = { units: 'inch', why: false } as const;

function said(name: string, changes: Changes, wording: Parameters<typeof describePart>[1] = short) {
  const part = triage(read(changes)).parts.find((each) => each.name === name);
  if (!part) throw new Error(`the shed has no ${name}`);
  return describePart(part, wording);
}

/** The lines of the first engine of the plan of a shed, as flowing text. */
async function firstEngine(shed: Shed): Promise<string> {
  const page = planReport(await planBuilds(shed), short);
  return flowing(/ENGINE 1: [\s\S]*?(?=\n\n)/.exec(page)?.[0] ?? '');
}

describe('a part of which nothing was judged', () => {
  const magneto = (more: Json = {}): Changes => ({
    otherParts: [{ name: 'magneto 1', kind: 'magneto', ...(more as object) }],
  });

  it.each([
    [
      'head A',
      { 'heads[0].flatness': undefined, 'heads[0].guideBore': undefined },
      'head A, from donor A: no fault is listed; not measured: face (flatness), guides',
    ],
    [
      // A guide is judged with the stem that comes to run in it, and says nothing of the face.
      'head A',
      { 'heads[0].flatness': undefined },
      'head A, from donor A: no fault is listed; not measured: face (flatness)',
    ],
    [
      'rings 20 over',
      {},
      'rings 20 over: no fault is listed; not measured: ring gaps, ring side clearance',
    ],
    ['valves new', {}, 'valves new: no fault is listed; not measured: margin'],
    ['magneto 1', magneto(), 'magneto 1 (magneto): not tested'],
  ])('%s is not called good to use', (name, changes, line) => {
    const lines = said(name, changes);
    expect(lines).toEqual([line]);
    const full = said(name, changes, { units: 'inch', why: true }).join('; ');
    expect(full).not.toContain('use as it is');
    expect(full).toContain(line.replace(/^.*(no fault is listed|not tested).*$/, '$1'));
  });

  it('keeps the word for what was judged, and says beside it what was not', () => {
    expect(said('head A', { 'heads[0].guideBore': undefined })).toEqual([
      'head A, from donor A: use as it is; face within limits (specified); not measured: guides',
    ]);
    expect(said('head A', {})).toEqual([
      'head A, from donor A: use as it is; face within limits (specified)',
    ]);
    expect(said('head B', {}).join()).toContain('not measured: guides');
  });

  it('is counted as such in the triage', () => {
    // Both sets of rings, and both of valves, whose margin was not measured.
    const text = triageReport(triage(read({})));
    // The first column counts those to use as they are, the last those of which nothing was judged.
    expect(text).toMatch(/nothing( judged)?$/m);
    expect(text).toMatch(/^ring sets +0 .* 3$/m);
    expect(text).toMatch(/^valve sets +0 .* 2$/m);
    expect(flowing(text)).toContain('look them over before you count on them');
  });

  it('does not ask twice for the margin that refacing leaves', () => {
    const lines = said('valves A', { 'valveSets[0].faults': ['pitted'] });
    expect(lines.filter((line) => line.includes('margin'))).toHaveLength(2);
    expect(lines.join()).not.toContain('not measured: margin');
  });

  it('carries what its owner says of it', () => {
    const stated = { condition: { is: 'turns', on: '2024-06' }, notes: ['weak spark', 'no cap'] };
    expect(said('magneto 1', magneto(stated))).toEqual([
      'magneto 1 (magneto): not tested; owner: it turns (2024-06); "weak spark / no cap"',
    ]);
    expect(said('block B', { 'blocks[1].notes': 'came with\na trailer' }).at(-1)).toBe(
      'owner: "came with a trailer"',
    );
    const long = said('magneto 1', magneto({ notes: 'word '.repeat(300) }))[0] ?? '';
    expect(long.length).toBeLessThan(200);
    expect(long).toMatch(/word …"$/);
    const scrap = { faults: ['cracked'], notes: 'kept for its coil' };
    expect(said('magneto 1', magneto(scrap)).at(-1)).toBe('owner: "kept for its coil"');
  });
});

describe('a measured feature without a limit', () => {
  const NO_LIMIT = "no limit is stated: compare with the maker's manual";

  it('is told with its reading: a warped head', () => {
    // 0.020 in under the straight edge is bad on any small engine, but by whose limit?
    const warped = { 'engine.headFlatness': undefined, 'heads[0].flatness': '0.020 in' };
    expect(said('head A', warped)).toEqual([
      `head A, from donor A: no fault is listed; face 0.0200 in: ${NO_LIMIT}`,
    ]);
  });

  it.each([
    ['head A', { 'engine.guideClearance': undefined }, 'guides 0.3145 in'],
    ['valves A', { 'engine.guideClearance': undefined }, 'stems 0.3125 to 0.3126 in'],
    ['valves A', { 'valveSets[0].margin': '0.040 in' }, 'margin 0.0400 in'],
    ['rods A', { 'engine.rodHousing': undefined }, 'big ends 1.7507 to 1.7508 in'],
    ['block A', { 'engine.endPlay': undefined }, 'thrust width (end play) 2.3000 in'],
    ['crankshaft A', { 'engine.endPlay': undefined }, 'thrust width (end play) 2.5000 in'],
    [
      'pistons A',
      { 'engine.bores.pistonClearance': undefined },
      'diameters (piston clearance) 2.9967 to 2.9968 in',
    ],
    ['washers 0.096', { 'engine.endPlay': undefined }, 'thickness (end play) 0.0960 in'],
  ])('%s with %o', (name, changes, reading) => {
    const all = said(name, changes).join('; ');
    expect(all).toContain(reading);
    expect(all).toContain(NO_LIMIT);
    expect(said(name, {}).join('; ')).not.toContain(reading);
  });

  it('lists several of a part before the one remark', () => {
    const none = { 'engine.headFlatness': undefined, 'engine.guideClearance': undefined };
    expect(said('head A', none)[0]).toContain(`face 0.0020 in, guides 0.3145 in: ${NO_LIMIT}`);
  });
});

describe('an engine of the plan', () => {
  it('says once what of its parts was not measured', async () => {
    const shed = read({
      'heads[0].guideBore': undefined,
      heads: [{ name: 'head A' }],
      otherParts: [{ name: 'magneto 1', kind: 'magneto' }],
      'engine.alsoNeeds': ['head', 'valve set', 'magneto'],
    });
    const engine = await firstEngine(shed);
    const [line = ''] = /Not measured, so not judged: [^.]*\./.exec(engine) ?? [];
    expect(line).toContain('head A (face, guides)');
    expect(line).toContain('crankshaft A (runout)');
    expect(line).toContain('rings standard (ring side clearance)');
    expect(line).toContain('magneto 1 (not tested)');
    expect(line).toMatch(/valves (A|new) \(margin\)/);
    expect(engine).not.toContain('Guide clearance');
    expect(engine.match(/so not judged/g)).toHaveLength(1);
  });

  it('names readings without a limit once, and why end play is not planned', async () => {
    const none = { 'engine.headFlatness': undefined, 'engine.endPlay': undefined };
    const engine = await firstEngine(
      read({ ...none, heads: [{ name: 'H', flatness: '0.02 in' }] }),
    );
    expect(engine).toContain(
      "Not judged, as no limit is stated; compare with the maker's manual: H (face 0.0200 in).",
    );
    expect(engine).toContain('End play: not planned, as no limit is stated.');
    expect(engine).not.toContain('thrust width');
    const open = await firstEngine(read({ 'crankshafts[0].thrustWidth': undefined }));
    expect(open).toContain(
      'End play: not planned, as the thrust width of these was not measured: crankshaft A.',
    );
    expect(open.match(/thrust width/g)).toHaveLength(1);
  });

  it('names every part that was not crack-tested, those to be tested first apart', async () => {
    const engine = await firstEngine(read({}));
    expect(engine).toContain('Crack-test first: crankshaft A.');
    expect(engine).toContain('Not crack-tested: block A, rod B1, head A.');
    const tested = { for: 'cracks', how: 'dye', found: 'none' };
    expect(await firstEngine(read({ 'rods[1].tested': tested }))).toContain(
      'Not crack-tested: block A, head A.',
    );
  });

  it('is of the group of its block, also where it is built of what fits an older one', async () => {
    const { blocks: [block] = [], ...rest } = { ...single, ...two };
    if (!block) throw new Error('the fixture has no block');
    const late = { ...block, interchange: ['late'], supersedes: ['early'] };
    const shaft = (two.crankshafts ?? single.crankshafts ?? []).slice(0, 1);
    const crankshafts = shaft.map((each) => ({ ...each, interchange: ['early'] }));
    const of = (shed: Partial<Shed>) => firstEngine({ ...single, ...rest, ...shed } as Shed);
    expect(await of({ blocks: [late], crankshafts })).toContain(
      'Interchange: late, which takes parts of early too.',
    );
    const plan = await planBuilds({ ...single, ...rest, blocks: [late], crankshafts });
    expect(buildSheet(plan)).toContain('Interchange: late, which takes parts of early too.');
    expect(await of({ blocks: [late], crankshafts: shaft })).toContain(
      'Interchange: late, which takes parts of early too.',
    );
    expect(await of({ blocks: [block], crankshafts })).toContain('Interchange: early.');
    expect(await of({ blocks: [{ ...block, interchange: ['early'] }] })).toContain(
      'Interchange: early.',
    );
  });
});

describe('a journal that was read at one angle', () => {
  const rod1 = (...angles: readonly number[]): Changes => ({
    'crankshafts[0].rodJournals[0].readings': angles.flatMap((angle) =>
      ['0.25 in', '1.25 in'].map((station) => ({
        station,
        angle: `${angle} deg`,
        diameter: '1.6248 in',
      })),
    ),
  });
  const page = (changes: Changes, why: boolean) =>
    flowing(triageReport(triage(read(changes)), { units: 'inch', why }));
  const ONE = 'These were read at one angle, where an oval is not seen; read them again 90° away';

  it('shows no oval, and is not said to be read at angles that may hide one', () => {
    const text = page(rod1(0), true);
    expect(text).toContain(`${ONE}, or better at 60 and 120° from there: crankshaft A (rod 1).`);
    expect(text).toMatch(
      /may hide all of an oval.*crankshaft A \(pulley main, flywheel main, rod 2\)/,
    );
    expect(page(rod1(0), false)).toContain('from there: crankshaft A (rod 1).');
  });

  it('is so too where it was read half a turn away', () => {
    expect(page(rod1(0, 180), true)).toContain(ONE);
    expect(page(rod1(0, 90), true)).not.toContain(ONE);
  });
});

describe('a message about the one place of a part that has its name', () => {
  it('says the name once', () => {
    const bad = spoiltShed({ 'rods[2].rods[0].housingBore': '1.75' });
    const message = (() => {
      try {
        readShed(bad);
      } catch (error) {
        if (error instanceof FileError) return error.message;
      }
      return '';
    })();
    expect(message).toContain('rod B2');
    expect(message).not.toContain('rod B2 of rod B2');
    expect(() => readShed(spoiltShed({ 'rods[0].rods[0].housingBore': '1.75' }))).toThrow(
      'rod A1 of rods A',
    );
  });
});
