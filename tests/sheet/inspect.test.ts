import { format, inch, mm, percentByVolume, quartUS, thou, valueIn } from 'crankwright';
import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { exampleText, type Json, spoilt } from './sheets.js';

const inspected = (changes: Readonly<Record<string, Json | undefined>> = {}) =>
  inspect(readSheet(spoilt(changes)));

describe('inspect on the pump set', () => {
  const found = inspected();

  it('sends rods and mains to different steps', () => {
    expect(found.rods?.plan).toMatchObject({ outcome: 'grind' });
    expect(found.mains?.plan).toMatchObject({ outcome: 'grind' });
    const steps = [found.rods?.plan, found.mains?.plan].map((plan) =>
      plan && plan.outcome !== 'none' ? format(plan.undersize, thou) : plan?.outcome,
    );
    expect(steps).toEqual(['30.0 thou', '10.0 thou']);
  });

  it('names standard shells on a journal ground 0.020 in under', () => {
    const rod2 = found.rods?.bearings[1];
    // By hand: 1.7510 - 2 * 0.0618 - 1.6033 = 0.0241 in at the loosest.
    expect(format(rod2?.fitted?.clearance.max as never, inch)).toBe('0.0241 in');
    expect(rod2?.fitted?.explanation.outcome).toBe('journal ground, shells not');
    const action = actionsFrom(found).find(({ kind }) => kind === 'wrong shells');
    expect(action).toMatchObject({ bearing: 'rod 2', shells: 'rod standard, hammered' });
    if (action?.kind !== 'wrong shells') throw new Error('no such action');
    expect(format(action.undersize, thou)).toBe('0.0 thou');
    expect(format(action.journalUndersize, thou)).toBe('20.0 thou');
  });

  it('gives every finished rod journal shells from the shelf, and says what the mains lack', () => {
    expect(found.rods?.bearings.map(({ shells }) => shells?.shell.name)).toEqual([
      'rod 30 under',
      'rod 30 under',
    ]);
    // By hand: 1.7506 - 2 * 0.0770 - 1.5950 = 0.0016 in; 1.7508 - 0.1540 - 1.5945 = 0.0023 in.
    const clearance = found.rods?.bearings[0]?.shells?.clearance;
    expect(format(clearance?.min as never, inch)).toBe('0.0016 in');
    expect(format(clearance?.max as never, inch)).toBe('0.0023 in');
    expect(found.mains?.bearings.map(({ shells }) => shells?.shell.name)).toEqual([
      'main 10 under',
      undefined,
    ]);
    expect(found.mains?.pairsToBuy).toBe(1);
  });

  it('finds the tapered bore, the tight ring and the diluted oil', () => {
    const [first, second] = found.cylinders;
    expect(second?.shape.form).toBe('tapered');
    // 1.9 thou of 3 allowed once worn; 6.9 and 8 are past the limits of another engine, which do not condemn it.
    expect(second?.findings.map(({ feature, grade }) => [feature, grade])).toEqual([
      ['out-of-round', 'serviceable'],
      ['taper', 'undecided'],
      ['wear', 'undecided'],
    ]);
    // The second ring opens from 0.0100 to 0.0122 in at the worn top, where 0.0120 in is the rule for new ones.
    expect(first?.rings.map(({ filing }) => filing.work)).toEqual(['file', 'wider than a new fit']);
    expect(first?.rings.map(({ widestAt }) => widestAt)).toEqual([inch(0.5), inch(0.5)]);
    expect(found.oil?.sample?.dilution?.stage).toBe('critical');
    expect(valueIn(found.oil?.sample?.fuel as never, percentByVolume)).toBeGreaterThan(5);
  });

  it('puts what wrecks the engine first', () => {
    expect(actionsFrom(found).map(({ kind }) => kind)).toEqual([
      'do not run',
      'stop the leak',
      'wrong shells',
      'crack test',
      'compare the housings',
      'buy shells',
      'grind',
      'grind',
      'fit shells',
      'fit shells',
      'fit shells',
      'bore',
    ]);
  });

  it('is plain data: JSON carries it, and the sheet is left as it was', () => {
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    const sheet = readSheet(exampleText('inch'));
    const before = structuredClone(sheet);
    expect(inspect(sheet)).toEqual(found);
    expect(sheet).toEqual(before);
  });
});

describe('inspect on other engines', () => {
  it('does not grind journals worn a little, and leaves fitted shells that are right', () => {
    const found = inspect(readSheet(exampleText('metric')));
    expect(found.rods?.plan.outcome).toBe('use as it is');
    expect(found.rods?.bearings.map(({ shells }) => shells?.shell.name)).toEqual([
      'rod 0.25 under',
      'rod 0.25 under',
    ]);
    const fit = actionsFrom(found).filter((action) => action.kind === 'fit shells');
    expect(fit.map(({ bearing }) => bearing)).toEqual(['pulley main', 'flywheel main']);
    expect(found.cylinders[0]?.piston?.finding).toBeUndefined();
  });

  it('plans a step to buy shells for where the shelf serves none, and says when none can', () => {
    const bought = inspected({ 'shells[2].pairs': 0 });
    expect(bought.rods?.plan).toMatchObject({ outcome: 'grind' });
    expect(bought.rods?.pairsToBuy).toBe(2);
    const lost = inspected({ 'crankshaft.rodJournals.minimum': '1.6000 in' });
    expect(lost.rods?.plan.outcome).toBe('none');
    expect(lost.rods?.bearings[0]?.matches).toEqual([]);
    expect(lost.rods?.pairsToBuy).toBe(0);
    expect(actionsFrom(lost)).toContainEqual({
      kind: 'no step serves',
      journals: 'rods',
      defeatedBy: [],
    });
  });

  it('passes every choice of the sheet on to the calculations', () => {
    const plan = (changes: Readonly<Record<string, Json>>) => inspected(changes).mains?.plan;
    const base = 'crankshaft.mainJournals';
    const available = (changes: Readonly<Record<string, Json>>) => {
      const cleans = plan(changes)?.because.find(({ kind }) => kind === 'cleans up');
      return cleans?.kind === 'cleans up' ? format(cleans.available, inch) : undefined;
    };
    // Pulley main: 1.9984 smallest, 0.0007 out-of-round, 0.0010 runout, 0.0010 allowance.
    expect(available({})).toBe('1.9957 in');
    expect(available({ [`${base}.wear`]: 'all round' })).toBe('1.9964 in');
    expect(available({ [`${base}.cleanUpAllowance`]: '0.002 in' })).toBe('1.9947 in');
    expect(available({ 'mains[0].journal.runout': '0 in' })).toBe('1.9967 in');
    expect(plan({ [`${base}.steps`]: ['standard', '20 under'] })).toMatchObject({
      outcome: 'grind',
    });
    expect(plan({ [`${base}.minimum`]: '1.99 in' })).toMatchObject({ outcome: 'none' });
    const loose = { [`${base}.sizeAllowance`]: '0.005 in', [`${base}.shape`]: { max: '0.005 in' } };
    const kept = inspected(loose);
    expect(kept.mains?.plan.outcome).toBe('use as it is');
    // Not ground, so the worn clearances count: 2.1263 - 0.1236 - 1.9976 = 0.0051 in.
    const worn = actionsFrom(kept).filter(({ kind }) => kind === 'wrong clearance');
    expect(worn).toHaveLength(2);
  });

  it('explains shells that are too small for their journal', () => {
    const found = inspected({ 'rods[0].fittedShells': 'rod 30 under' });
    const explanation = found.rods?.bearings[0]?.fitted?.explanation;
    expect(explanation?.outcome).toBe('shells undersize, journal not');
    const action = actionsFrom(found).find(({ kind }) => kind === 'wrong shells');
    if (action?.kind !== 'wrong shells') throw new Error('no such action');
    expect(format(action.journalUndersize, thou)).toBe('20.0 thou');
  });

  it('takes oil, leak, thresholds and fuel as the sheet gives them', () => {
    const measured = inspected({
      'oil.leak': { drops: '6 per minute', dropVolume: '0.02 mL' },
      'oil.thresholds': { act: '6 vol%', critical: '8 vol%', source: 'pump set manual' },
      'oil.fuelViscosity': '0.5 cSt',
      'oil.bearing': undefined,
    }).oil;
    expect(measured?.leak?.basis.kind).toBe('specified');
    // The most that a law finds is judged, and that is above the limit of 8 vol%.
    expect(measured?.sample?.dilution?.stage).toBe('critical');
    expect(measured?.sample?.dilution?.finding.basis).toEqual({
      kind: 'specified',
      by: 'pump set manual',
    });
    expect(measured?.sample?.fuelViscosity.basis.kind).toBe('specified');
    const dry = inspected({ 'oil.leak': { flow: '0 mL/h' }, 'oil.sample': undefined });
    expect(dry.oil?.leak?.left).toEqual({ known: false, because: 'no sample' });
    expect(actionsFrom(dry).map(({ kind }) => kind)).not.toContain('stop the leak');
    const some = inspected({ 'oil.sample.viscosity': '285 cSt' });
    expect(actionsFrom(some)[0]?.kind).toBe('change the oil');
  });

  it('judges the film of the bearing in the oil as it is, and what fuel it stands', () => {
    const { film, sample, leak } = inspected({}).oil ?? {};
    expect(film?.now.film.outcome).toBe('floats');
    expect(film?.finding.regime).toBe('full');
    expect(sample?.hot?.clean.grades.grades).toEqual(['30']);
    expect(sample?.hot?.now.viscosity).toBeLessThan(sample?.hot?.clean.viscosity ?? 0);
    const { span } = sample?.byLaw ?? {};
    expect(span?.min).toBeLessThanOrEqual(sample?.fuel ?? 0);
    expect(span?.max).toBeGreaterThan(sample?.fuel ?? 1);
    // Already past the limit of 5 %, so that no time is left.
    const none = { setBy: 'limit', until: { reached: true, time: 0 } };
    expect(leak?.left).toMatchObject({ known: true, running: none, standing: none });
  });

  it('counts the hours that are left from the most fuel that can be in it, at the most of the leak', () => {
    const some = inspected({
      'oil.sample.viscosity': '335 cSt',
      'oil.thresholds': { act: '2.5 vol%', critical: '5 vol%' },
      'oil.bearing': undefined,
    }).oil;
    const left = some?.leak?.left;
    if (!left?.known || !left.running.until.reached) throw new Error('unknown');
    expect(left.running.setBy).toBe('limit');
    const fuel = some?.sample?.byLaw?.span.max ?? Number.NaN;
    const sump = quartUS(1);
    const missing = (sump * 0.05) / 0.95 - (sump * fuel) / (1 - fuel);
    // 6 drops a minute of 0.05 mL.
    const flow = (6 * 0.05e-6) / 60;
    expect(left.running.until.time).toBeCloseTo(missing / flow, 3);
  });

  it('ends the time at the viscosity that may be lost, where that comes before the fuel limit', () => {
    const left = inspected({ 'oil.sample.viscosity': '335 cSt', 'oil.bearing': undefined }).oil
      ?.leak?.left;
    if (!left?.known) throw new Error('unknown');
    expect(left.standing.setBy).toBe('viscosity');
    // A fifth of the viscosity of 341.8 cSt is lost at 1.3 to 1.4 vol% by ASTM D7152.
    expect(left.standing.fraction).toBeGreaterThan(0.012);
    expect(left.standing.fraction).toBeLessThan(0.014);
    // A limit that hardly any oil reaches ends nothing.
    const slack = { act: '50 %', critical: '99 %' };
    const loose = inspected({ 'oil.bearing': undefined, 'oil.thinning': slack }).oil?.leak?.left;
    expect(loose?.known && loose.standing.setBy).toBe('limit');
  });

  it('says that a film is too thin, first of all', () => {
    const steady = { 'oil.sample': undefined, 'oil.bearing.bigEnd': undefined };
    const thin = inspected({ ...steady, 'oil.bearing.load': '6000 lbf' });
    expect(thin.oil?.tolerance?.asGiven.outcome).toBe('too thin when clean');
    const [first] = actionsFrom(thin);
    expect(first?.kind).toBe('thin film');
    expect(first && describeAction(first, { units: 'inch' })[0]).toMatch(
      /^DO NOT RUN: the oil film at rod 2 is \d\d µin, \d\.\d times the roughness; a full film takes 3\.0 times/,
    );
    for (const bigEnd of [{}, { 'oil.bearing.bigEnd': undefined }]) {
      const still = inspected({ 'oil.sample': undefined, 'oil.bearing.speed': '0 rpm', ...bigEnd });
      expect(report(still).replace(/\s+/g, ' ')).toMatch(
        /no film, as it stands still|none: it stands still/,
      );
      expect(actionsFrom(still)[0]?.kind).toBe('thin film');
    }
  });

  it('says nothing of hot oil whose fuel is known cold only, nor of a sump full of fuel', () => {
    const cold = inspected({ 'oil.fuelViscosity': '0.6 cSt', 'oil.bearing': undefined });
    expect(cold.oil?.sample?.hot).toBeUndefined();
    expect(report(cold)).toContain(
      'Viscosity now: 130.0 cSt at 68.0 °F, against 341.8 cSt for clean oil; it has lost 62 % of its',
    );
    const flooded = inspected({ 'oil.sample.viscosity': '0.55 cSt', 'oil.bearing': undefined });
    expect(flooded.oil?.leak?.left).toMatchObject({
      running: { until: { reached: true, time: 0 } },
    });
  });

  it('takes the film at the least that it tolerates, with the doubts that the sheet gives', () => {
    const sure = { inlet: '0 ΔK', length: '0 %', roughness: '0 %', clearance: '0 %', load: '0 %' };
    const oil = inspected({
      'oil.sample.viscosity': '335 cSt',
      'oil.bearing.filmRatio': 4,
      'oil.doubt': sure,
      'oil.thresholds': { act: '2.5 vol%', critical: '5 vol%' },
    }).oil;
    const { left } = oil?.leak ?? {};
    if (!left?.known) throw new Error('unknown');
    expect(left.running).toMatchObject({ setBy: 'film', fraction: oil?.tolerance?.span.min });
    expect(oil?.tolerance?.basis).toEqual({ kind: 'specified' });
    expect(inspected({}).oil?.tolerance?.span.min).toBe(0);
  });

  it('judges by the film ratio that the sheet asks for', () => {
    const regime = (filmRatio: number) =>
      inspected({ 'oil.bearing.filmRatio': filmRatio }).oil?.film?.finding;
    // The film is between three and four times the roughness.
    expect(regime(3)?.regime).toBe('full');
    expect(regime(4)?.regime).toBe('mixed');
    expect(regime(4)?.finding.basis).toEqual({ kind: 'specified' });
    expect(regime(0.5)?.thresholds).toEqual({ mixed: 0.5, full: 0.5 });
  });

  it('takes a fuel that is not petrol by its own line', () => {
    const paraffin = {
      line: [
        { temperature: '20 °C', viscosity: '2.2 cSt' },
        { temperature: '100 °C', viscosity: '0.8 cSt' },
      ],
      density: '805 kg/m³',
    };
    const found = inspected({ 'oil.fuel': paraffin, 'oil.sample.temperature': '104 °F' }).oil;
    expect(found?.sample?.fuelViscosity.basis.kind).toBe('specified');
    expect(found?.sample?.fuelViscosity.span.max).toBeLessThan(2.2e-6);
    // More of a thicker fuel thins as much.
    const petrol = inspected({}).oil?.sample?.fuel ?? 1;
    expect(inspected({ 'oil.fuel': paraffin }).oil?.sample?.fuel).toBeGreaterThan(petrol);
  });

  it('judges pistons and rings where the bore is good', () => {
    const found = inspected({
      bores: undefined,
      'cylinders[0].piston': '2.9900 in',
      'cylinders[0].rings[1].gap': '0.020 in',
      'cylinderLimits.ringGap': { max: '0.015 in', min: '0.009 in' },
    });
    const work = actionsFrom(found).filter((action) => 'cylinder' in action);
    expect(work.map(({ kind }) => kind)).toEqual(['wrong piston', 'ring', 'ring', 'rebore']);
  });

  it('inspects only what was measured', () => {
    const bare = inspect(readSheet({ version: 1, engine: 'e', units: 'inch' }));
    const howRead = { within: [], undescribed: [], notAt20C: [], ovalHidden: [] };
    expect(bare).toEqual({
      engine: 'e',
      units: 'inch',
      happened: [],
      cylinders: [],
      valves: [],
      howRead,
      unsettled: [],
    });
    expect(actionsFrom(bare)).toEqual([]);
    const noShelf = inspected({
      shells: undefined,
      'rods[0].fittedShells': undefined,
      'rods[1].fittedShells': undefined,
      'mains[0].fittedShells': undefined,
      'mains[1].fittedShells': undefined,
    });
    expect(noShelf.rods?.bearings[0]?.matches).toEqual([]);
    expect(noShelf.rods?.pairsToBuy).toBe(2);
  });
});

describe('inspect where sizes contradict each other', () => {
  const good = (diameter: string) =>
    Object.fromEntries(
      [0, 1, 2, 3].flatMap((reading) =>
        [0, 1].map((rod) => [`rods[${rod}].journal.readings[${reading}].diameter`, diameter]),
      ),
    );

  it('leaves good journals alone whatever shells the shelf has', () => {
    const found = inspected({
      ...good('1.6248 in'),
      'rods[0].fittedShells': 'rod standard, hammered',
      'shells[0].pairs': 1,
    });
    expect(found.rods?.plan).toMatchObject({ outcome: 'use as it is', undersize: 0 });
    expect(found.rods?.pairsToBuy).toBe(1);
  });

  it('does not call a journal ground that measures standard, nor fit shells of another undersize', () => {
    // An oversize housing leaves 0.020 in too much: the journal is not to blame.
    const found = inspected({
      ...good('1.6248 in'),
      'rods[1].housingBore': '1.7710 in',
      'shells[0].pairs': 2,
    });
    expect(found.rods?.bearings[1]?.fitted?.agrees).toBe(false);
    const kinds = actionsFrom(found).map((action) => [
      action.kind,
      'bearing' in action ? action.bearing : '',
    ]);
    expect(kinds).toContainEqual(['check sizes', 'rod 2']);
    expect(
      kinds.filter(([kind, bearing]) => kind === 'wrong shells' && bearing === 'rod 2'),
    ).toEqual([]);
    expect(found.rods?.bearings[1]?.shells).toBeUndefined();
  });

  it('asks to measure again where shells fit that are stamped for another journal', () => {
    // Stamped 20 under with a standard wall, on a standard journal that is not to be ground.
    const found = inspected({ ...good('1.6248 in'), 'shells[1].wall': '0.0618 in' });
    const action = actionsFrom(found).find(({ kind }) => kind === 'check sizes');
    expect(action).toMatchObject({ bearing: 'rod 1' });
  });

  it('says of thickened oil only that fuel cannot be told from it', () => {
    const found = inspected({ 'oil.sample.viscosity': '400 cSt' });
    expect(found.oil?.sample?.dilution).toBeUndefined();
    expect(actionsFrom(found).map(({ kind }) => kind)).not.toContain('do not run');
  });
});

describe('inspect at its boundaries', () => {
  const rods = (diameter: string) =>
    Object.fromEntries(
      [0, 1, 2, 3].map((i) => [`rods[0].journal.readings[${i}].diameter`, diameter]),
    );

  it('takes a journal for an undersize up to 2.5 thou from the middle of its span', () => {
    // The middle of 20 under is 1.60475 in.
    const undersize = (diameter: string) => inspected(rods(diameter)).rods?.bearings[0]?.undersize;
    expect(format(undersize('1.6023 in') as never, thou)).toBe('20.0 thou');
    expect(undersize('1.6022 in')).toBeUndefined();
  });

  it('explains the tight end of a clearance where that is the worse', () => {
    // 1.7490 - 2 * 0.0719 - 1.6048 = 0.0004 in at the tightest, 0.0024 in at the loosest.
    const found = inspected({ 'rods[0].housingBore': { min: '1.7490 in', max: '1.7508 in' } });
    const fitted = found.rods?.bearings[0]?.fitted;
    expect(format(fitted?.explanation.finding.value as never, inch)).toBe('0.0004 in');
    expect(fitted?.explanation.outcome).toBe('too tight, unexplained');
  });

  it('matches shells to a journal that is left as it is by its readings, not by its new size', () => {
    const found = inspect(readSheet(exampleText('metric')));
    // 45.252 - 2 * 1.735 - 41.738 = 0.044 mm, and - 41.733 = 0.049 mm.
    const { min, max } = found.rods?.bearings[0]?.shells?.clearance ?? {};
    expect([min, max].map((size) => format(size as never, mm))).toEqual(['0.044 mm', '0.049 mm']);
  });

  it('limits the taper of a worn bore by the stroke, its wear and out-of-round by the bore', () => {
    const [first] = inspected({ 'bores.stroke': '4.0 in' }).cylinders;
    // 0.001 of 3.0000 in; 0.0005 of 4 in; 0.001 of 3.0000 in.
    expect(
      first?.findings.map(({ service, limits }) =>
        format((service?.limits ?? limits).max as never, inch),
      ),
    ).toEqual(['0.0030 in', '0.0020 in', '0.0030 in']);
    const [own] = inspected({ 'cylinderLimits.outOfRound': { max: '0.0009 in' } }).cylinders;
    expect(own?.findings[0]).toMatchObject({
      limits: { max: inch(0.0009) },
      basis: { kind: 'specified' },
    });
    const [unknown] = inspected({ 'bores.stroke': undefined }).cylinders;
    expect(unknown?.findings[1]?.service).toBeUndefined();
  });

  it('takes petrol’s default viscosity from 15 to 25 °C', () => {
    const at = (temperature: string) => () => inspected({ 'oil.sample.temperature': temperature });
    expect(at('25 °C')).not.toThrow();
    expect(at('15 °C')).not.toThrow();
    expect(at('25.1 °C')).toThrow(/Only petrol from 15 to 25 °C has a default/);
    expect(at('14.9 °C')).toThrow(/Only petrol from 15 to 25 °C has a default/);
  });

  it('takes oil up to 5 % thicker than clean for clean', () => {
    // Clean oil is 341.8 cSt at 68 °F: 358.9 cSt is 5 % more.
    const kinds = (viscosity: string) =>
      actionsFrom(inspected({ 'oil.sample.viscosity': viscosity })).map(({ kind }) => kind);
    expect(inspected({ 'oil.sample.viscosity': '358 cSt' }).oil?.sample?.dilution?.stage).toBe(
      'normal',
    );
    expect(kinds('358 cSt')).not.toContain('thick oil');
    expect(kinds('360 cSt').slice(0, 2)).toEqual(['unknown oil', 'thick oil']);
  });

  it('does not grind a good standard journal because standard was not named among the steps', () => {
    const steps = { 'crankshaft.rodJournals.steps': ['10 under', '20 under'] };
    const good = Object.fromEntries(
      [0, 1].flatMap((rod) =>
        [0, 1, 2, 3].map((i) => [`rods[${rod}].journal.readings[${i}].diameter`, '1.6248 in']),
      ),
    );
    expect(inspected({ ...steps, ...good }).rods?.plan).toMatchObject({
      outcome: 'use as it is',
      undersize: 0,
    });
  });
});
