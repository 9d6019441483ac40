import {
  celsius,
  elasticConstants,
  fitOf,
  heatingLimit,
  MPa,
  meanExpansion,
  mm,
  pressFit,
  ratio,
  shrinkTemperature,
} from 'crankwright';
import { describe, expect, it } from 'vitest';

const steel = elasticConstants('steel');
const pin = { diameter: mm(20), shaft: steel, length: mm(25), friction: ratio(0.12) };

describe('a fit that is not known to hold is not said to', () => {
  it('a transition fit holds nothing for sure, though most pairs need a press', () => {
    const { kind, held } = pressFit({
      ...pin,
      diametralInterference: fitOf('20H7/n6').interference,
      hub: { ...steel, outside: mm(35) },
    });
    expect(kind).toBe('transition');
    expect(held?.torque.min).toBe(0);
  });

  it('a fit without strengths passes nothing, and one at the edge is judged by its tightest pair', () => {
    const fit = {
      ...pin,
      diametralInterference: { min: mm(0.01), max: mm(0.045) },
      hub: { ...steel, outside: mm(35) },
    };
    expect(pressFit(fit).findings).toEqual([]);
    // The loosest pair would pass: 207000 × 0.01 / 20 = 103 MPa; the tightest is at 466 MPa.
    const { findings } = pressFit({ ...fit, hub: { ...fit.hub, yieldStrength: MPa(350) } });
    expect(findings.map(({ verdict }) => verdict)).toEqual(['above']);
  });

  it('grey iron is judged by what tears it: it breaks where steel would yield', () => {
    const iron = { ...elasticConstants('grey iron'), outside: mm(35), tensileStrength: MPa(150) };
    const { findings } = pressFit({ ...pin, diametralInterference: mm(0.06), hub: iron });
    expect(findings).toMatchObject([{ feature: 'hub at its bore, tearing', verdict: 'above' }]);
  });
});

describe('a hub is not heated past what it can take without a word', () => {
  it('a case-hardened gear that needs 199 °C is over the rule of thumb, which says it is one', () => {
    const { finding } = shrinkTemperature({
      diameter: mm(40),
      diametralInterference: mm(0.04),
      handlingGap: mm(0.04),
      hub: meanExpansion('steel'),
      shaft: meanExpansion('steel'),
      shaftTemperature: celsius(20),
      heating: heatingLimit('case-hardened steel'),
    });
    expect(finding).toMatchObject({ verdict: 'above', basis: { kind: 'common practice' } });
  });
});
