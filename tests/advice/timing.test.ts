import {
  degree,
  describeTimingCard,
  inch,
  ratio,
  sparkSetting,
  teethOff,
  timingCard,
} from 'crankwright';
import { describe, expect, it } from 'vitest';

const magneto = { advance: degree(24), speedRatio: ratio(0.5) };
const gears = { within: degree(2), crankTeeth: 24, camTeeth: 48 };

describe('what a machinist would say of timing', () => {
  it('warns of a starting handle where nothing is known to hold the spark back', () => {
    // A coupling that nobody knows may be there or not; none at all is said with a lag of 0.
    const unknown = sparkSetting(magneto);
    expect(unknown.cautions).toEqual(['may kick back', 'starting spark not known']);
    expect(unknown.startingKnown).toBe(false);
    expect(sparkSetting({ ...magneto, lag: degree(0) }).cautions).toEqual(['kicks back']);
    const card = timingCard({ spark: magneto });
    expect(card.notKnown).toContain('spark, starting');
    expect(card.starting).toBeUndefined();
  });

  it('warns where the spark may be early by its error alone', () => {
    // Held back to just the top, and read to 2 degrees.
    const held = { ...magneto, lag: degree(12), within: degree(2) };
    const { finding, cautions } = sparkSetting(held);
    expect(finding.verdict).toBe('undecided');
    expect(cautions).toEqual(['may kick back']);
  });

  it('does not take a spark at the top for safe by its mean if the limit is crossed by a hair', () => {
    expect(sparkSetting({ ...magneto, lag: degree(11.9) }).cautions).toEqual(['kicks back']);
    expect(sparkSetting({ ...magneto, lag: degree(12.1) }).cautions).toEqual([]);
  });

  it('calls the rule for the starting spark a rule of thumb', () => {
    expect(sparkSetting(magneto).finding.basis.kind).toBe('common practice');
  });

  it('does not blame a tooth for one opening that lash could have moved', () => {
    // Late by 15 degrees, a whole tooth; ten thou too much lash does as much.
    const found = { inletOpens: { angle: degree(5), after: 'top' } } as const;
    const wanted = { inletOpens: { angle: degree(10), before: 'top' } } as const;
    expect(teethOff({ ...gears, found, wanted })).toMatchObject({
      outcome: 'undecided',
      because: 'lash not known',
      teeth: [1],
    });
    expect(teethOff({ ...gears, found, wanted, lashSet: true }).outcome).toBe('teeth off');
  });

  it('does not call a cam in mesh by one opening either', () => {
    // A tooth late and no lash at all reads like a cam in its place.
    const place = { inletOpens: { angle: degree(10), before: 'top' } } as const;
    expect(teethOff({ ...gears, found: place, wanted: place })).toMatchObject({
      outcome: 'undecided',
      because: 'lash not known',
    });
  });

  it('does not move a gear for a cam that is out by half a tooth', () => {
    const found = {
      inletOpens: { angle: degree(3), before: 'top' },
      inletCloses: { angle: degree(47), after: 'bottom' },
    } as const;
    const wanted = {
      inletOpens: { angle: degree(10), before: 'top' },
      inletCloses: { angle: degree(40), after: 'bottom' },
    } as const;
    expect(teethOff({ ...gears, found, wanted }).outcome).toBe('not a tooth');
  });

  it('puts the earthed magneto before everything else on the card, and the handle next', () => {
    const card = timingCard({ rimDiameter: inch(10), spark: magneto });
    const lines = describeTimingCard(card, { units: 'inch' });
    expect(lines[0]).toContain('magneto lead earthed');
    expect(lines[1]).toContain('throw the starting handle back');
  });
});
