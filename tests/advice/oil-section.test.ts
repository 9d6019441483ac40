import { inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { describeFuelSpan } from '../../src/sheet/describe-sample.js';
import { type Json, spoilt } from '../sheet/sheets.js';

type Changes = Readonly<Record<string, Json | undefined>>;
const inspected = (changes: Changes) => inspect(readSheet(spoilt(changes)));
/** One line of the section on oil. */
const line = (changes: Changes, beginning: string) => {
  const text = report(inspected(changes)).replace(/\n {2,}/g, ' ');
  return text.split('\n').find((each) => each.startsWith(`${beginning}: `)) ?? '';
};

/** A big end in clean oil; its gas was not measured, so its loads are in doubt. */
const CLEAN: Changes = { 'oil.sample': undefined, 'oil.leak': undefined };
const checkOf = (changes: Changes, name: string) =>
  inspected(changes).oil?.film?.acceptance.checks.find(({ check }) => check === name);

describe('a peak pressure 1 % within its limit, under loads that nobody measured', () => {
  it('is too near to tell, and does not hold', () => {
    const bearing = line(CLEAN, 'Bearing');
    expect(bearing).toMatch(
      /Too near to tell: peak pressure 1724\.0 psi: within the limit of 1740\.5 psi \[\d+\], but 215[45]\.\d psi at the most.*, as the load is in doubt by 25 % \[\d+\]/,
    );
    expect(bearing.slice(bearing.indexOf('These hold'))).not.toContain('peak pressure');
    expect(checkOf(CLEAN, 'peak pressure')?.outcome).toBe('unknown');
  });
  it('goes by the doubt that the caller states', () => {
    const sure = { ...CLEAN, 'oil.doubt': { load: '0.5 %' } };
    expect(checkOf(sure, 'peak pressure')?.outcome).toBe('holds');
    expect(line(sure, 'Bearing')).not.toContain('Too near to tell');
    expect(line({ ...CLEAN, 'oil.doubt': { load: '10 %' } }, 'Bearing')).toMatch(
      /as the load is in doubt by 10 % \[\d+\]/,
    );
  });
  it('alone withholds acceptance', () => {
    const rest = {
      ...CLEAN,
      'oil.bearing.largestParticle': 'no filter',
      'oil.bearing.supply': { by: 'pump', measured: '400 mL/min' },
    };
    expect(inspected(rest).oil?.film?.acceptance.outcome).toBe('undecided');
    expect(line(rest, 'Bearing')).toMatch(/^Bearing: rod 2 is not accepted yet\. Too near to tell/);
    const sure = inspected({ ...rest, 'oil.doubt': { load: '0.5 %' } });
    expect(sure.oil?.film?.acceptance.outcome).toBe('accepted');
  });
});

describe('an old engine without a filter', () => {
  const unfiltered = { ...CLEAN, 'oil.bearing.largestParticle': 'no filter' };
  it('is told what to do, and what soft metal does with dirt', () => {
    expect(line(unfiltered, 'Bearing')).toMatch(
      /With care: film over particles \(give a filter; until then, change the oil often and clean the sump/,
    );
    expect(line(unfiltered, 'Bearing')).toContain(
      'soft metal embeds what is smaller than it is thick',
    );
  });
  it('with a splash has its level checked', () => {
    expect(line(unfiltered, 'Bearing')).toMatch(/oil supply \(give [^)]*; check the level\)/);
  });
});

describe('a sheet with a steady load and the parts of a big end', () => {
  it('says which load film and bearing were judged under', () => {
    const only =
      'the steady 1500.0 lbf of the sheet is used only for the fuel that the film tolerates';
    for (const beginning of ['Film', 'Bearing']) {
      expect(line(CLEAN, beginning)).toContain('by the loads of the cycle');
      expect(line(CLEAN, beginning)).toContain(only);
    }
  });
  it('does not call a film full without more, where its pressure fails', () => {
    const heavy = { ...CLEAN, 'oil.bearing.load': '8000 lbf' };
    expect(checkOf(heavy, 'peak pressure')?.outcome).toBe('fails');
    expect(line(heavy, 'Film')).toContain(
      'full film, but only at the loads computed, and its peak pressure fails',
    );
    expect(line(heavy, 'Film')).toContain(
      'the steady 8000.0 lbf of the sheet is more than the cycle has',
    );
  });
});

describe('how hot the film becomes', () => {
  it('is judged at the hottest that the report prints', () => {
    const printed = [...line({}, 'Film').matchAll(/([\d.]+) °F on its way out/g)].map((each) =>
      Number(each[1]),
    );
    const judged = Number(/film temperature ([\d.]+) °F/.exec(line({}, 'Bearing'))?.[1]);
    expect(printed.length).toBe(2);
    expect(judged).toBeGreaterThanOrEqual(Math.max(...printed));
  });
  it('is held to the limit of the metal, which is no running temperature', () => {
    expect(line({}, 'Bearing')).toMatch(
      /within the limit of 302\.0 °F \[\d+\], the limit of the metal, not a running temperature/,
    );
  });
  it('is warned of from 250 °F', () => {
    const warm = { ...CLEAN, 'oil.bearing.inlet': '245 °F' };
    expect(line(warm, 'Bearing')).toMatch(
      /not a running temperature; above 250\.0 °F, the hottest that oil should become/,
    );
    expect(line(CLEAN, 'Bearing')).not.toContain('250.0 °F');
  });
});

describe('the fuel that a film tolerates', () => {
  // Surfaces as rough as these stay in touch whichever number is moved alone.
  const hopeless = {
    'oil.bearing.load': '4000 lbf',
    'oil.bearing.roughness': { journal: '3 µm', shell: '3 µm' },
  };
  it('is none whatever is moved, where every doubt leaves none', () => {
    const tolerated = line(hopeless, 'Fuel the film tolerates');
    expect(tolerated).toMatch(/none under a steady 4000\.0 lbf.*, whatever is moved/);
    expect(tolerated).not.toContain('hangs on');
    expect(tolerated).not.toContain('(none)');
  });
  it('hangs on nothing where the caller leaves nothing in doubt but the blending law', () => {
    const sure = { inlet: '0 Δ°F', length: '0 %', roughness: '0 %', clearance: '0 %', load: '0 %' };
    const tolerated = line({ 'oil.doubt': sure }, 'Fuel the film tolerates');
    expect(tolerated).toContain('It hangs on the blending law (');
    expect(tolerated).not.toMatch(/the load \(|the clearance \(/);
  });
  it('names the doubt of a length as it is computed: a share multiplies and divides by 1 + d', () => {
    expect(report(inspected({})).replace(/\s+/g, ' ')).toContain(
      'an effective length to 25 % (down to 80 %)',
    );
  });
});

describe('what to do with fuel in the oil', () => {
  it('shuts the cock and lets the engine use up the bowl', () => {
    expect(line({}, 'At every stop')).toContain(
      'shut the fuel cock and let the engine run until it stops.',
    );
  });
  it('speaks of an engine that may be in pieces', () => {
    expect(line({}, 'What to do')).toMatch(/^What to do: do not run the engine, drain the oil/);
  });
});

describe('the fuel in the oil, in few words', () => {
  it('is a span, and only fuel if it is fuel, with its limit and who set it', () => {
    const sample = inspected({}).oil?.sample;
    expect(sample && describeFuelSpan(sample, { units: 'inch' })).toMatch(
      /^5\.7 to 16\.6 vol% of fuel, if it is fuel; the limit is 5\.0 vol% \(common practice: /,
    );
  });
});

describe('a sample thicker than clean oil', () => {
  it('may have water, coolant or soot in it besides', () => {
    expect(line({ 'oil.sample.viscosity': '500 cSt' }, 'Viscosity now')).toContain(
      'it has aged, is another grade, has water or coolant in it (milky), or soot',
    );
  });
});
