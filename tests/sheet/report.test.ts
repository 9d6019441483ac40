import { RebuildInputError } from 'crankwright';
import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { exampleText, type Json, spoilt } from './sheets.js';

const reported = (changes: Readonly<Record<string, Json | undefined>> = {}) =>
  report(inspect(readSheet(spoilt(changes))));

describe('report', () => {
  const text = reported();
  /** The text with its line breaks undone, so that a sentence can be looked for. */
  const flowing = text.replace(/\s+/g, ' ');

  it('says what to do before it says why', () => {
    const headings = text.split('\n').filter((_, i, lines) => /^-+$/.test(lines[i + 1] ?? ''));
    expect(headings).toEqual([
      'INSPECTION: pump set, vertical twin',
      'WHAT TO DO',
      'HOW WELL IT WAS MEASURED',
      'MAIN JOURNALS',
      'ROD JOURNALS',
      'END PLAY',
      'CYLINDER 1',
      'CYLINDER 2',
      'BORING',
      'OIL',
      'WHO SET THE LIMITS',
      'BEFORE YOU ACT',
    ]);
  });

  it('names the standard shells on the ground journal as such', () => {
    expect(flowing).toContain(
      'rod 2, WRONG SHELLS: standard shells ("rod standard, hammered") on a journal ground 0.0200 in under: it will knock',
    );
  });

  it('tells the sizes to grind to, which the rods and mains do not share', () => {
    expect(flowing).toContain('grind the rod journals to 0.0300 in under: 1.5945 to 1.5950 in');
    expect(flowing).toContain('grind the main journals to 0.0100 in under: 1.9895 to 1.9900 in');
  });

  it('says who set every limit, and shows the cautions', () => {
    const marks = new Set(text.match(/\[\d+\]/g));
    const listed = text.slice(text.indexOf('WHO SET')).match(/^\[\d+\]/gm);
    expect([...marks].sort()).toEqual([...(listed ?? [])].sort());
    expect(flowing).toContain('Fuel vapour in a crankcase can ignite');
    expect(flowing).toContain("the maker's manual always wins. Keep what is scrap");
    expect(flowing).toContain(
      'If one is outside its limits, have it resized or replace the rod before you choose shells',
    );
  });

  it('fits the page, leaves no hole and no number that is none', () => {
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(96);
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|-0\.0+\b/);
    expect(text.endsWith('\n')).toBe(true);
  });

  it('tells a form as one along the length, and none that the micrometer cannot tell', () => {
    expect(text).toMatch(/^journal +smallest +largest +out-of-round +taper +along its length$/m);
    // By hand: the ends of rod 2 are 1.6040 and 1.60385 in in the mean, 0.00015 in apart.
    const rowBy = (expanded: string) =>
      /^rod 2 .*$/m.exec(reported({ instruments: { micrometer: expanded } }))?.[0];
    // Two readings to 0.0001 in differ by chance by 0.00014 in, and two to 0.0002 in by 0.00028 in.
    expect(rowBy('0.0001 in')).toMatch(/ tapered$/);
    expect(rowBy('0.0002 in')).toMatch(/ straight$/);
    expect(flowing).toContain('Along its length: tapered, taper 0.0069 in.');
  });

  it('prints in the units of the sheet, or in others when asked', () => {
    const metric = report(inspect(readSheet(exampleText('metric'))));
    expect(metric).toContain('41.733');
    expect(metric.slice(0, metric.indexOf('WHO SET'))).not.toMatch(/\d in\b/);
    const asked = report(inspect(readSheet(exampleText('inch'))), { units: 'metric' });
    expect(asked).toContain('40.500 to 40.513 mm');
    expect(() =>
      report(inspect(readSheet(exampleText('inch'))), { units: 'cubits' as never }),
    ).toThrow(RebuildInputError);
    expect(() => report(undefined as never)).toThrow(RebuildInputError);
  });

  it('says of an engine that nobody measured that nothing was measured', () => {
    const bare = report(inspect(readSheet({ version: 1, engine: 'e', units: 'metric' })));
    expect(bare).toContain(
      'Nothing was measured yet.\nNot measured, so not judged: mains; rods; end play; cylinders; valves; used oil; cracks; bend\n  and twist of the rods.',
    );
    expect(bare).not.toContain('OIL');
    expect(bare).not.toContain('housing');
    expect(bare).not.toContain('WHO SET');
  });
});

describe('report of a bore that is to be machined', () => {
  it('does not judge piston and rings in the worn bore', () => {
    const text = reported();
    const worn = text.slice(text.indexOf('\nCYLINDER 2'), text.indexOf('\nOIL'));
    expect(worn).toContain('piston: clearance 0.0044 to 0.0116 in over the travel\n');
    expect(worn).toContain(
      'top ring: gap 0.0112 to 0.0303 in over the travel, widest at station 0.5000 in\n',
    );
    expect(worn).toContain('In the worn bore now:');
    const bare = reported({ 'cylinders[1].piston': undefined, 'cylinders[1].rings': undefined });
    expect(bare).not.toContain('In the worn bore now:');
  });
});

describe('report of the oil', () => {
  it('sees no fuel where the sample is no thinner than clean oil', () => {
    expect(reported({ 'oil.sample.viscosity': '342 cSt' })).toContain(
      'Fuel now: the viscosity shows none, fuel taken as',
    );
  });

  it('tells the story line by line, with the caution', () => {
    const text = reported().replace(/\s+/g, ' ');
    const story = text.slice(text.indexOf(' OIL '), text.indexOf('WHO SET'));
    const beginnings = [
      'Fuel now',
      'Viscosity now',
      'Is it fuel',
      'Film',
      'Bearing',
      'Fuel the film tolerates',
      'Time left running',
      'Time left standing with the fuel cock open',
      'The leak',
      'At every stop',
      'What to do',
    ];
    const places = beginnings.map((words) => story.indexOf(` ${words}: `));
    expect(Math.min(...places)).toBeGreaterThan(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(story).toContain(
      'at most, by the log-mean with weathered petrol, fuel in oil 16.6 vol%',
    );
    expect(story).toContain('at least, by ASTM D7152 with fresh petrol, 5.7 vol%');
    expect(story).toContain('it has lost 62 % of its viscosity, above the 20 % at which');
    expect(story).toMatch(
      /none to \d+\.\d vol% under a steady .*, not one figure: \d\.\d vol% by ASTM D7152/,
    );
    expect(story).toContain(
      '7.1 cSt now, SAE 12, 16 or 20, and 11.1 cSt clean, SAE 30: it has left its grade.',
    );
    expect(story).toContain('at rod 2');
    expect(story).toContain('Time left running: none, already past the fuel limit.');
    expect(story).toContain('The leak: 6.5 to 18.0 mL/h while it stands');
    expect(story).toContain('do not run the engine, drain the oil, mend the needle valve');
    expect(story).toContain('keep flames and switches away, and ventilate');
  });

  it('has nothing to do where the oil is clean and nothing leaks', () => {
    const text = reported({
      'oil.sample.viscosity': '342 cSt',
      'oil.leak': undefined,
      'oil.bearing': undefined,
    });
    expect(text).toContain('What to do: no action needed for what was measured.\n');
    expect(text).not.toContain('Film:');
    expect(text).not.toContain('Time left');
  });

  it('says that it took a density, and when a leak comes to nothing', () => {
    const text = reported({
      'oil.density': undefined,
      'oil.leak': { flow: '0 mL/h' },
      'oil.bearing.load': '0 lbf',
      'oil.sample.viscosity': '300 cSt',
    }).replace(/\s+/g, ' ');
    expect(text).toContain('Its density is taken by a rule of thumb [');
    expect(text).toContain('oil of 880 kg/m³ at 15 °C');
    expect(text).toContain('Time left: no leak was measured (0 flow).');
    expect(text).toContain(
      'Fuel the film tolerates: any amount that was tried, at this light load.',
    );
  });

  it('says that it took clean oil where no used oil was measured, and does not tell the time left', () => {
    const text = reported({ 'oil.sample': undefined }).replace(/\s+/g, ' ');
    expect(text).toContain('No used oil was measured, so this holds for clean oil only.');
    expect(text).toContain(
      'Time left: unknown, as no used oil was measured, and oil that was not measured is not clean;',
    );
    const thick = reported({ 'oil.sample.viscosity': '400 cSt' }).replace(/\s+/g, ' ');
    expect(thick).toContain('This holds for clean oil, not for the thickened sample.');
    expect(thick).toContain('Time left: unknown, as the sample does not show what fuel is in it;');
    expect(reported().replace(/\s+/g, ' ')).not.toContain('holds for clean oil');
  });

  it('tells the time that is left, and what ends it', () => {
    const left = (changes: Readonly<Record<string, Json | undefined>>) =>
      /Time left running: ([^.]*(?:\.\d h)?[^.]*)\./.exec(
        reported({ 'oil.sample.viscosity': '335 cSt', ...changes }).replace(/\s+/g, ' '),
      )?.[1];
    const easy = { 'oil.bearing.load': '200 lbf' };
    expect(left(easy)).toMatch(/^\d\.\d h until the limit on lost viscosity$/);
    const own = { ...easy, 'oil.thresholds': { act: '2.5 vol%', critical: '5 vol%' } };
    expect(left(own)).toMatch(/^\d\.\d h until the fuel limit$/);
    const known = { length: '0 %', roughness: '0 %', clearance: '0 %', load: '0 %' };
    const sure = { 'oil.doubt': { ...known, inlet: '0 ΔK' }, 'oil.bearing.filmRatio': 4 };
    expect(left({ ...sure, 'oil.thresholds': { act: '2.5 vol%', critical: '5 vol%' } })).toMatch(
      /h until the film may be too thin$/,
    );
    // The film is full by the numbers as given, and none by what is in doubt of them.
    expect(left({})).toMatch(/^none that can be promised: within what is in doubt of the bearing/);
    expect(left({ 'oil.bearing.load': '6000 lbf' })).toBe(
      'none, even without a leak: the film is too thin in clean oil',
    );
    const boils = { 'oil.leak': { flow: '2 mL/h', evaporation: '1 per hour' } };
    expect(left({ ...easy, ...boils })).toBe('no end, if the numbers of the sheet hold');
  });

  it('tells what the engine leaks while it runs, if the sheet says', () => {
    const leak = { flow: '18 mL/h', running: '0 mL/h', clearanceVolume: '90 mL' };
    const text = reported({ 'oil.leak': leak }).replace(/\s+/g, ' ');
    expect(text).toContain('18.0 mL/h while it stands');
    expect(text).toContain('and 0.0 mL/h while it runs; no fuel is taken to evaporate.');
    expect(text).toContain('a cylinder can be flooded after 5.0 h');
  });

  it('says of thin oil what to do, and that fuel is not the only cause', () => {
    const act = reported({ 'oil.sample.viscosity': '300 cSt' }).replace(/\s+/g, ' ');
    expect(act).toContain(
      'change the oil and find out why it is thin, fuel, a wrong grade or age;',
    );
    expect(act).toContain('Stage at the upper end, by the log-mean with weathered petrol: normal.');
    const limits = {
      'oil.thresholds': { act: '20 vol%', critical: '30 vol%' },
      'oil.thinning': { act: '5 %', critical: '40 %', source: 'the laboratory' },
    };
    const own = reported({ ...limits }).replace(/\s+/g, ' ');
    expect(own).toContain('DO NOT RUN: drain the oil and find out why it is thin');
    expect(own).toContain('specified by the laboratory');
  });

  it('names oil without a grade as thinner or thicker', () => {
    const oil = (at104: string, at212: string, sample: string) =>
      reported({
        'oil.line[0].viscosity': at104,
        'oil.line[1].viscosity': at212,
        'oil.sample.viscosity': sample,
      }).replace(/\s+/g, ' ');
    expect(oil('10 cSt', '2.5 cSt', '19 cSt')).toContain('clean, thinner than SAE 8.');
    expect(oil('600 cSt', '35 cSt', '2500 cSt')).toContain('clean, thicker than SAE 60.');
  });

  it('says nothing of fuel where the oil has thickened', () => {
    const thick = reported({ 'oil.sample.viscosity': '400 cSt' }).replace(/\s+/g, ' ');
    expect(thick).toContain(
      '2. [ ] change the oil: it is thicker than clean oil, 400.00 cSt against 341.80 cSt; it has aged, is another grade, has water or coolant in it',
    );
    expect(thick).not.toContain('Stage by');
    expect(thick).toContain('Fuel now: unknown, as the sample is thicker than clean oil.');
    expect(thick).toContain('What to do: change the oil');
  });
});

describe('describeAction', () => {
  const said = (changes: Readonly<Record<string, Json | undefined>>) =>
    actionsFrom(inspect(readSheet(spoilt(changes)))).flatMap((action) =>
      describeAction(action, { units: 'inch' }),
    );

  it.each<[string, Readonly<Record<string, Json | undefined>>, RegExp]>([
    [
      'change the oil',
      { 'oil.sample.viscosity': '285 cSt' },
      /^change the oil and find the leak; /,
    ],
    [
      'no step serves',
      { 'crankshaft.rodJournals.minimum': '1.6 in' },
      /^no undersize saves the rod journals: find another crankshaft/,
    ],
    [
      'defeated by a journal',
      { 'crankshaft.rodJournals.steps': ['20 under'] },
      /^no undersize saves the rod journals \(rod 2\): /,
    ],
    [
      'undersize shells on a standard journal',
      {
        'mains[0].fittedShells': 'main 10 under',
      },
      /^pulley main, WRONG SHELLS: 0.0100 in under shells \("main 10 under"\) on a standard journal: it cannot turn/,
    ],
    ['buy both pairs', { 'shells[2].pairs': 0 }, /^get 2 pairs of shells for the rod journals/],
    [
      'wrong clearance',
      {
        'crankshaft.mainJournals.sizeAllowance': '0.005 in',
        'crankshaft.mainJournals.shape': { max: '0.005 in' },
      },
      /^flywheel main: read journal, housing and shell walls again; if they stand, check the housing bore against the manual, then the stamp on the shells, and only then fit other shells or grind the journal; oil clearance 0.0051 in/,
    ],
    [
      'wrong piston',
      { 'cylinders[0].piston': '2.99 in' },
      /^cylinder 1: measure piston and bore again; if they stand, fit another piston, or bore to another size; /,
    ],
    [
      'ring too open',
      {
        'cylinders[0].rings[1].gap': '0.02 in',
        'cylinderLimits.ringGap': { min: '0.009 in', max: '0.015 in' },
      },
      /^cylinder 1: read the gap again first; second ring: use another ring, as this one is worn or not made for this bore; ring gap at the smallest bore 0.0200 in: 0.0050 in above/,
    ],
    [
      // The bore opens it by π times 0.7 thou from 10.0 thou: 12.2 at its worn top. From 9.8 it is 12.0.
      'ring too open at the worn end of the bore',
      { 'cylinderLimits.ringGap': { min: '0.009 in', max: '0.012 in' } },
      /^cylinder 1: read the gap again first; second ring: the bore is worn, not the ring; ring gap at the largest bore 0.0122 in: 0.0002 in above the limit of 0.0120 in \(specified\); a ring with a gap of 0.0090 to 0.0098 in at the smallest bore stays within its limits$/,
    ],
    [
      'ring that no other mends',
      { 'cylinderLimits.ringGap': { min: '0.009 in', max: '0.0105 in' } },
      /^cylinder 1: read the gap again first; second ring: the bore is worn, .*; bore or sleeve the cylinder, or go by the maker's wear limit$/,
    ],
    [
      'ring that must be filed in a bore that is worn',
      { 'cylinderLimits.ringGap': { min: '0.009 in', max: '0.0105 in' } },
      /^cylinder 1: read the gap again first; top ring: file 0.0030 to 0.0045 in off its ends, a little at a time, and try it in the bore; ring gap at the smallest bore 0.0060 in: 0.0030 in below the limit of 0.0090 in \(specified\); once filed, ring gap at the largest bore 0.0112 in: 0.0007 in above the limit of 0.0105 in \(specified\): the bore is worn$/,
    ],
    [
      'file without a most',
      { 'cylinderLimits.ringGap': { min: '0.009 in' } },
      /^cylinder 1: read the gap again first; top ring: file 0.0030 in off its ends/,
    ],
  ])('%s', (_, plainly, sentence) => {
    const changes = { bores: undefined, ...plainly };
    expect(
      said(changes).some((text) => sentence.test(text)),
      said(changes).join('\n'),
    ).toBe(true);
  });
});
