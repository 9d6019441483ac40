import {
  celsius,
  coldPistonClearance,
  hotPistonClearance,
  inch,
  leastColdRingGap,
  MPa,
  meanExpansion,
  mm,
  pinFit,
  recommendedRingGap,
  ringBackClearance,
  ringFilingNeeded,
  ringGapHot,
  ringLeakArea,
  ringSideClearance,
  ringTension,
  squareMm,
  thou,
} from 'crankwright';
import { describe, expect, it } from 'vitest';

const iron = meanExpansion('grey iron');
const alloy = meanExpansion('cast piston alloy');
const at = (expansion: typeof iron, least: number, most = least) => ({
  expansion,
  temperature: { min: celsius(least), max: celsius(most) },
});

describe('a piston of another metal', () => {
  const bore = inch(3);
  const old = { bore, piston: inch(2.998), warmBore: at(iron, 100, 120) };

  it('seizes in aluminium at the clearance that iron ran with', () => {
    // At the tightest iron takes up 3 * (11.4e-6 * 120 - 10.4e-6 * 80) = 1.6 of its 2 thou, and the alloy with 21.5e-6 takes 5.2.
    const kept = hotPistonClearance({ ...old, warmPiston: at(iron, 120, 140) });
    expect(kept.findings).toEqual([]);
    const { findings } = hotPistonClearance({ ...old, warmPiston: at(alloy, 120, 140) });
    expect(findings.map(({ verdict }) => verdict)).toEqual(['below']);
  });

  it('that does not seize is not called good: no limit says how loose it may be', () => {
    const loose = { ...old, piston: inch(2.95), warmPiston: at(alloy, 120, 150) };
    expect(hotPistonClearance(loose).findings).toEqual([]);
  });

  it('needs most while its bore is still cold, and not in the warmest engine', () => {
    const fit = { bore, hotClearance: thou(1) };
    const settled = coldPistonClearance({
      ...fit,
      warmBore: at(iron, 100),
      warmPiston: at(alloy, 180),
    });
    const starting = coldPistonClearance({
      ...fit,
      warmBore: at(iron, 30),
      warmPiston: at(alloy, 150),
    });
    expect(starting.clearance.max).toBeGreaterThan(settled.clearance.max);
  });
});

describe('a ring gapped by the rule of thumb', () => {
  const bore = inch(3);
  const { limits } = recommendedRingGap(bore);
  const gap = limits.min ?? thou(0);

  it('passes the rule and still butts where it runs much hotter than its bore', () => {
    expect(ringFilingNeeded({ gap, measuredIn: bore }).work).toBe('fit as it is');
    const ring = { gap, measuredIn: bore, warmBore: at(iron, 80) };
    const { findings } = ringGapHot({ ...ring, warmRing: at(iron, 150, 220) });
    expect(findings.map(({ feature, verdict }) => `${feature}: ${verdict}`)).toEqual([
      'ring gap when warm: below',
    ]);
    expect(ringGapHot({ ...ring, warmRing: at(iron, 130, 140) }).findings).toEqual([]);
  });

  it('needs more than the rule leaves for such a ring, at its tight end', () => {
    const { gap: least } = leastColdRingGap({
      bore,
      warmBore: at(iron, 80),
      warmRing: at(iron, 150, 220),
    });
    expect(least.max).toBeGreaterThan(limits.max ?? 0);
    expect(least.min).toBeLessThan(gap);
  });
});

describe('a ring in a worn piston', () => {
  it('is judged by the widest place of its groove, and by no rule where the maker is silent', () => {
    const read = {
      grooveWidths: [mm(2.05), mm(2.06), mm(2.12)],
      ringWidths: [mm(1.99), mm(1.99)],
    };
    expect(ringSideClearance(read).findings).toEqual([]);
    const { findings } = ringSideClearance({ ...read, service: { limits: { max: mm(0.1) } } });
    expect(findings.map(({ grade }) => grade)).toEqual(['worn out']);
  });

  it('is in doubt where the readings are no better than what is left to the limit', () => {
    const { findings } = ringSideClearance({
      grooveWidths: [mm(2.08)],
      ringWidths: [mm(1.985)],
      limits: { max: mm(0.1) },
      uncertainty: mm(0.01),
    });
    expect(findings.map(({ verdict }) => verdict)).toEqual(['undecided']);
  });

  it('of another engine wedges its piston though it sinks into the groove on the bench', () => {
    // The groove is 3.7 mm deep and takes a ring of 3.6 mm; in the bore the piston leans by 0.4 mm before the skirt stops it.
    const { radialClearance, findings } = ringBackClearance({
      bore: mm(80),
      radialThickness: mm(3.6),
      land: mm(79.9),
      depth: mm(3.7),
      pistonClearance: mm(0.4),
    });
    expect(radialClearance.min).toBeGreaterThan(0);
    expect(findings.map(({ feature, verdict }) => `${feature}: ${verdict}`)).toEqual([
      'ring back clearance against the wall: below',
    ]);
  });

  it('that has lost a third of its spring has lost a third of its force, whatever its iron', () => {
    const ring = {
      bore: mm(80),
      closedGap: mm(0.4),
      radialThickness: mm(3.3),
      width: mm(2.5),
      elasticity: { min: MPa(80_000), max: MPa(160_000) },
    };
    const fresh = ringTension({ ...ring, freeGap: mm(9.4) });
    const tired = ringTension({ ...ring, freeGap: mm(6.4) });
    for (const end of ['min', 'max'] as const) {
      expect(tired.tangentialForce[end] / fresh.tangentialForce[end]).toBeCloseTo(2 / 3, 9);
    }
    // What is not known of the iron is as wide as a factor of two: no force is promised.
    expect(fresh.tangentialForce.max / fresh.tangentialForce.min).toBeCloseTo(2, 9);
  });
});

describe('a leak past rings', () => {
  it('of sound rings is far smaller than the orifice of a tester, so that a bad reading has another cause', () => {
    const ring = { gap: thou(12), landClearance: thou(20) };
    const { area } = ringLeakArea({ rings: [ring, ring] });
    // AC 43.13-1B, 8-14: an orifice of 0.040 in for bores under 5 in.
    const orifice = (Math.PI / 4) * inch(0.04) ** 2;
    expect(area.max).toBeLessThan(orifice / 10);
    expect(area.max).toBeGreaterThan(squareMm(0.01));
  });
});

describe('a piston pin', () => {
  const pin = mm(20);
  const steel = meanExpansion('steel');

  it('that goes into cold bosses by force is neither condemned nor passed until the temperatures are known', () => {
    const cold = pinFit({ joint: 'floating', pin, bore: mm(19.995) });
    expect(cold.findings).toEqual([]);
    expect(cold.missing).toEqual(['limits', 'warmPin', 'warmBore']);
    const warm = pinFit({
      joint: 'floating',
      pin,
      bore: mm(19.995),
      warmPin: at(steel, 100, 130),
      warmBore: at(alloy, 120, 150),
    });
    expect(warm.warmClearance?.min).toBeGreaterThan(0);
    expect(warm.findings).toEqual([]);
  });

  it('in a bushing that closes on it somewhere is found, though most of the bushing is free', () => {
    const { findings } = pinFit({
      joint: 'bushing',
      pin: { min: mm(19.99), max: pin },
      bore: { min: mm(19.998), max: mm(20.02) },
    });
    expect(findings.map(({ verdict }) => verdict)).toEqual(['below']);
  });

  it('with little room in bronze is closed on when warm, and of a wall not known nothing is said', () => {
    const warm = { warmPin: at(steel, 150), warmBore: at(steel, 120) };
    const fit = { joint: 'bushing', pin, bore: mm(20.008), ...warm } as const;
    const blind = pinFit(fit);
    expect(blind.findings).toEqual([]);
    expect(blind.missing).toContain('bushingWall');
    const known = { bushingWall: mm(2), warmBushing: at(meanExpansion('bronze'), 130) };
    // At the tightest 8 + 24008 * 11.2e-4 - 4000 * 18e-6 * 110 - 20000 * 12.1e-6 * 130 = -4.5 µm.
    expect(pinFit({ ...fit, ...known }).findings.map(({ feature }) => feature)).toEqual([
      'pin clearance when warm',
    ]);
  });

  it('that is to be pressed is not held at the ends of a tolerance that just touch', () => {
    // TM 5-4210-220-12, 4-28.3: hole 0.5615 to 0.5618 in, pin 0.5618 to 0.5620 in: measured parts are chosen for each other.
    const pressed = (hole: number, size: number) =>
      pinFit({ joint: 'press', pin: inch(size), bore: inch(hole) }).findings.length;
    expect(pressed(0.5618, 0.5618)).toBe(1);
    expect(pressed(0.5616, 0.5619)).toBe(0);
  });

  it('of which nothing was measured gives no clearance to believe', () => {
    const { clearance, missing } = pinFit({ joint: 'bushing', bore: mm(20.02) });
    expect(clearance).toBeUndefined();
    expect(missing).toContain('pin');
  });
});
