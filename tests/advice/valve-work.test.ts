import {
  celsius,
  clearanceFromRock,
  type EngineMaterial,
  inch,
  type Length,
  lashGrowth,
  lbf,
  meanExpansion,
  perSecond,
  ratio,
  rpm,
  describe as say,
  seatFindings,
  springSurge,
  springTest,
  stemToGrind,
  thou,
} from 'crankwright';
import { describe, expect, it } from 'vitest';

const piece = (length: Length, of: EngineMaterial, degrees: number) => ({
  length,
  expansion: meanExpansion(of),
  temperature: celsius(degrees),
});

describe('what a machinist would say of valves', () => {
  it('does not scrap a valve by the margin of another engine', () => {
    const { margin } = seatFindings({ margin: inch(0.01) });
    expect(margin?.grade).toBe('undecided');
    expect(margin && say(margin, { units: 'inch' })[0]).toContain('another engine');
  });

  it('does not pass a guide by a rock that a bell-mouth may hide', () => {
    // Worn evenly it has 4.8 thou, bell-mouthed up to 6.9.
    const { finding } = clearanceFromRock({
      rock: thou(12),
      guideLength: inch(2),
      overhang: inch(1.5),
      limits: { max: thou(5) },
    });
    expect(finding?.verdict).toBe('undecided');
  });

  it('does not grind a stem past its least length, nor say that it stays long enough where nobody looked', () => {
    const wanted = { min: thou(7), max: thou(9) };
    const short = { lash: thou(1), wanted, length: inch(3.903), leastLength: inch(3.9) };
    expect(stemToGrind(short).outcome).toBe('stem too short');
    const unknown = stemToGrind({ lash: thou(1), wanted, length: inch(3.903) });
    expect(unknown).toMatchObject({ leastLength: 'not known' });
  });

  it('counts on an exhaust valve that grows more than mild steel would', () => {
    const of = (steel: EngineMaterial) =>
      lashGrowth({
        carrier: [piece(inch(4), 'grey iron', 100)],
        train: [piece(inch(4), steel, 250)],
      }).growth.min;
    expect(of('austenitic valve steel')).toBeLessThan(of('steel') - thou(5));
  });

  it('does not condemn a spring by the loss of another engine, nor by a rule of thumb on surge', () => {
    const { closed } = springTest({
      closed: { height: inch(1.095), force: lbf(15), specified: lbf(19) },
      open: { height: inch(0.88), force: lbf(38) },
    });
    expect(closed).toMatchObject({ verdict: 'above', grade: 'undecided' });
    const { finding } = springSurge({ surgeFrequency: perSecond(250), camSpeed: rpm(900) });
    expect(finding.verdict).toBe('below');
    expect(finding).not.toHaveProperty('grade');
    expect(say(finding, { units: 'metric' })[0]).toContain('common practice');
    const own = { surgeFrequency: perSecond(250), camSpeed: rpm(900), limits: { min: ratio(11) } };
    expect(springSurge(own).finding.verdict).toBe('within');
  });
});
