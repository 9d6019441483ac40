import { planBuilds, planReport } from 'crankwright/planning';
import { describePart, readShed, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { spoiltShed } from '../shed/sheds.js';
import type { Json } from '../sheet/sheets.js';

type Changes = Readonly<Record<string, Json | undefined>>;
// The plain shed has two donors. Crankshaft B and the rods B1 and B2 are from donor B.
const partOf = (name: string, changes: Changes) => {
  const part = triage(readShed(spoiltShed(changes))).parts.find((each) => each.name === name);
  if (part === undefined) throw new Error(`no ${name}`);
  return part;
};
const said = (name: string, changes: Changes) =>
  describePart(partOf(name, changes), { units: 'inch' });
const all = (name: string, changes: Changes) => said(name, changes).join('\n');
const planned = async (changes: Changes) => {
  const plan = await planBuilds(readShed(spoiltShed(changes)));
  return { plan, page: flowing(planReport(plan)) };
};
const usedIn = ({ builds }: Awaited<ReturnType<typeof planned>>['plan']) =>
  builds.flatMap(({ parts }) => parts.map(({ name }) => name));

const sound = { for: 'cracks', how: 'magnetic particles', found: 'none' };
const hard = { for: 'softening', how: 'hardness tester', found: 'none' };

describe('a donor whose bearing seized', () => {
  const seized = {
    'crankshafts[1].happened': ['seized bearing'],
  };

  it('has every rod undecided until it is told which one it was', () => {
    for (const rod of ['rod B1', 'rod B2']) {
      const [first, ...others] = said(rod, seized);
      expect(first).toBe(`${rod}, from donor B: undecided until it is known which bearing seized`);
      expect(others.join('\n')).toContain('find out which bearing seized: that rod is scrap');
    }
    expect(all('rods A', seized)).not.toContain('which bearing seized');
  });

  it('has no rod of it used by a plan, which says why', async () => {
    const { plan, page } = await planned(seized);
    expect(usedIn(plan)).not.toContain('rod B1');
    expect(page).toContain('Undecided until it is known which bearing seized: rod B1');
  });

  it('has the others used once it is told: that one is scrap', () => {
    const told = { 'rods[1].happened': ['seized bearing'] };
    expect(said('rod B1', told)[0]).toBe('rod B1, from donor B: scrap: seized bearing');
    // The shed says that rod B2 was bent, and was tested for cracks since.
    expect(said('rod B2', told)[0]).toBe('rod B2, from donor B: use after straightening');
  });

  it('has a rod used whose tests for heat and for cracks are both listed', () => {
    const one = { ...seized, 'rods[1].tested': sound };
    expect(partOf('rod B1', one).disposition).toBe('undecided');
    const both = { ...seized, 'rods[1].tested': [sound, hard] };
    expect(partOf('rod B1', both).disposition).toBe('use as it is');
    expect(all('rod B1', both)).toContain('which bearing seized is not told');
  });

  it('never has the rod of the bearing cleared by a crack test alone: heat softened it', () => {
    const own = (tested: Json) =>
      partOf('rod B1', { 'rods[1].happened': ['seized bearing'], 'rods[1].tested': tested });
    expect(own(sound).disposition).toBe('scrap');
    expect(own([sound, hard]).disposition).toBe('use as it is');
  });

  it('has the journal of that bearing tested for softening, whatever the crack test said', async () => {
    const words = 'test the journal of the bearing that seized for softening';
    expect(all('crankshaft B', seized)).toContain(words);
    expect(all('crankshaft B', { ...seized, 'crankshafts[1].tested': sound })).toContain(words);
    expect(
      all('crankshaft B', { ...seized, 'crankshafts[1].tested': [sound, hard] }),
    ).not.toContain(words);
    expect(all('crankshaft A', seized)).not.toContain(words);
  });
});

describe('a crankshaft and its runout', () => {
  const read = (runout: string) => ({ 'crankshafts[0].mainJournals[1].runout': runout });

  it('that reads far out of true is undecided, though nobody called it bent', async () => {
    const [first, ...others] = said('crankshaft A', read('0.0150 in'));
    expect(first).toBe(
      'crankshaft A, from donor A: undecided until it is straightened and measured',
    );
    const text = others.join('\n');
    expect(text).toContain(
      'flywheel main: runout 0.0150 in: 0.0130 in above the limit of 0.0020 in (common practice',
    );
    expect(text).toContain('have it straightened and read again before you use it');
    const { plan } = await planned(read('0.0150 in'));
    expect(usedIn(plan)).not.toContain('crankshaft A');
  });

  it('that reads no more than the rule of thumb is not', () => {
    expect(partOf('crankshaft A', read('0.0020 in')).disposition).toBe('use as it is');
    expect(partOf('crankshaft A', read('0.0021 in')).disposition).toBe('undecided');
  });

  it('that was not read is not called straight', () => {
    expect(all('crankshaft A', {})).toContain('not measured: runout (bend)');
    expect(all('crankshaft A', read('0.0005 in'))).not.toContain('not judged for bend');
  });
});

describe('a housing just outside its limits', () => {
  // The limits of the shed: 1.7506 to 1.7510 in.
  const surer = 'no bore gauge in a home shop is surer than that: measure it again';
  it.each([
    ['1.7512 in', true],
    ['1.7513 in', false],
    ['1.7504 in', true],
    ['1.7503 in', false],
  ])('at %s', (housingBore, doubted) => {
    const text = all('rod B1', { 'rods[1].rods[0].housingBore': housingBore });
    expect(text).toContain('resize it');
    expect(text.includes(surer)).toBe(doubted);
  });
});

describe('words that keep a part from the grinder or the shop', () => {
  it('asks which journal is scored', () => {
    const text = all('crankshaft A', { 'crankshafts[0].faults': ['scored'] });
    expect(text).toContain(
      'name the journal; if a fingernail does not catch in it, polish it instead, measure it',
    );
    const named = all('crankshaft A', { 'crankshafts[0].rodJournals[0].faults': ['scored'] });
    expect(named).not.toContain('name the journal');
  });

  it('knows no depth of a skim', () => {
    const text = all('head B', { 'heads[1].faults': ['bent'] });
    expect(text).toContain(
      'no depth limit of the skim is known here: check the compression, valve-to-piston and piston-to-head clearance after it',
    );
  });

  it('knows cracks that are no job for stitching', () => {
    const text = all('block A', {
      'blocks[0].faults': ['cracked'],
      machining: [{ work: 'stitch', shop: 'the mender', price: '150 EUR' }],
    });
    expect(text).toContain('a crack in a main web or into a bore is no job for stitching');
  });
});

describe('what a plan says of doubtful parts', () => {
  it('cautions of a rod that was straightened', async () => {
    const { plan, page } = await planned({
      'rods[0].faults': ['bent'],
      'rods[0].tested': sound,
      'rods[1].faults': ['cracked'],
    });
    expect(usedIn(plan)).toContain('rods A');
    expect(page).toContain('Caution: rods A: a broken rod goes through the block');
  });

  it('says so of a rod that only tests cleared of heat, and has it checked for a bend', async () => {
    const hot = {
      'rods[0].faults': ['overheated'],
      'rods[0].tested': [sound, hard],
      'rods[1].faults': ['cracked'],
    };
    const bend = 'check it for bend and twist before use';
    expect(all('rods A', hot)).toContain(bend);
    expect(all('rods A', hot)).toContain('a broken rod goes through the block');
    const { plan, page } = await planned(hot);
    expect(usedIn(plan)).toContain('rods A');
    expect(page).toContain(`rods A: ${bend}: it would be scrap, but your tests cleared it of heat`);
    expect(page).toContain('Caution: rods A: a broken rod goes through the block');
  });

  it('says of every part left over what is wrong with it, and that it was not tested', async () => {
    const { page } = await planned({
      'blocks[1].faults': ['frost-cracked'],
      machining: [{ work: 'weld', shop: 'the mender', price: '9000 EUR' }],
    });
    expect(page).toContain(
      'block B (block; frost-cracked; needs boring and honing; not crack-tested)',
    );
    expect(page).toContain(
      'crankshaft B (crankshaft; scored; needs grinding rod journals; not crack-tested)',
    );
  });
});
