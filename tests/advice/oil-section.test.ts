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
