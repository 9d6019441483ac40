import type { Length } from 'crankwright';
import { type PlanOptions, planBuilds } from 'crankwright/planning';
import type { Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/shed/part.js';
import { SECTIONS, type Section } from '../../src/shed/sections.js';
import { bruteBest, bruteForce } from './brute-force.js';
import { randomShed } from './random-sheds.js';
import { reached, reachedInAll } from './reached.js';
import { variedShed } from './varied-sheds.js';

/** Seeds from 0 on. */
const seeds = (count: number) => Array.from({ length: count }, (_, seed) => seed);

/** The currency of a shed's prices. */
function currencyOf({ machining = [], toBuy = {} }: Shed): string {
  const offers = Object.values(toBuy).flatMap(
    (all: readonly { price: { currency: string } }[]) => all,
  );
  return [...machining, ...offers][0]?.price.currency ?? 'EUR';
}

describe('a plan', () => {
  it('is the best by trying everything: in engines, cost, every margin in turn, work and origins', async () => {
    const engines = new Map<number, number>();
    const all = seeds(60);
    for (const seed of all) {
      const shed = randomShed(seed);
      const best = bruteBest(shed);
      const plan = await planBuilds(shed);
      expect(plan.proof, `seed ${seed}`).toEqual({ outcome: 'optimal' });
      expect(reachedInAll(plan), `seed ${seed}`).toEqual(best);
      if (best.engines > 0) expect(plan.compared, `seed ${seed}`).toContain('least work');
      engines.set(best.engines, (engines.get(best.engines) ?? 0) + 1);
    }
    // The sheds are worth trying: many build something, some build more than one.
    expect(engines.get(0)).toBeLessThan(0.65 * all.length);
    expect((engines.get(2) ?? 0) + (engines.get(3) ?? 0)).toBeGreaterThan(0.1 * all.length);
  }, 240_000);

  it('is the best with other parts, supersession, parts that fit only with others, and parts to make', async () => {
    const seen = { engines: 0, others: 0, made: 0, mated: 0 };
    for (const seed of seeds(60)) {
      const shed = variedShed(seed);
      const plan = await planBuilds(shed);
      expect(plan.proof, `seed ${seed}`).toEqual({ outcome: 'optimal' });
      expect(reachedInAll(plan), `seed ${seed}`).toEqual(bruteBest(shed));
      const fussy = SECTIONS.flatMap((section): readonly Part[] => shed[section] ?? []);
      for (const { parts } of plan.builds) {
        const names = parts.map(({ name }) => name);
        const mates = fussy.filter(({ name, onlyWith }) => onlyWith && names.includes(name));
        seen.mated += mates.length;
        expect(mates.every(({ onlyWith }) => onlyWith?.some((mate) => names.includes(mate)))).toBe(
          true,
        );
        seen.others += parts.filter(({ kind }) => kind !== undefined).length;
      }
      seen.engines += plan.builds.length;
      seen.made += plan.toMake.length;
    }
    // Each of them matters in some sheds; in the first ones only some do.
    expect(seen.engines).toBeGreaterThan(0);
    for (const count of Object.values(seen)) expect(count).toBeGreaterThanOrEqual(5);
  }, 240_000);

  it('is the best within what is to be heeded', async () => {
    for (const seed of seeds(50)) {
      const shed = randomShed(seed);
      const currency = currencyOf(shed);
      const options: PlanOptions = [
        { mostPerEngine: { amount: 20 + seed, currency } },
        { buying: false },
        { atMost: 1 },
        { mostPerEngine: { amount: 60, currency }, atMost: 2, buying: seed % 8 === 3 },
        { reserved: shed.crankshafts?.slice(0, 1).map(({ name }) => name) ?? [] },
      ][seed % 5] as PlanOptions;
      const plan = await planBuilds(shed, options);
      expect(reached(plan), `seed ${seed}`).toEqual(bruteForce(shed, options));
    }
  }, 240_000);

  it('is the best by trying everything, of clearances that hold with the chance asked for', async () => {
    const engines: number[] = [];
    for (const seed of seeds(60)) {
      const { shed, holdsWith } = measuredShed(seed);
      const plan = await planBuilds(shed, { holdsWith });
      expect(plan.proof, `seed ${seed}`).toEqual({ outcome: 'optimal' });
      expect(reached(plan), `seed ${seed}`).toEqual(bruteForce(shed, { holdsWith }));
      engines.push(plan.builds.length);
    }
    // Some build something in spite of their instruments.
    expect(engines.filter((count) => count > 0).length).toBeGreaterThan(0.2 * engines.length);
  }, 240_000);

  it('makes no more engines with worse instruments', async () => {
    for (const seed of seeds(40)) {
      const counts: number[] = [];
      for (const worse of [1, 1.5, 2.5, 5]) {
        const { shed, holdsWith } = measuredShed(seed, worse);
        counts.push((await planBuilds(shed, { holdsWith })).builds.length);
      }
      expect(counts, `seed ${seed}`).toEqual([...counts].sort((a, b) => b - a));
    }
  }, 120_000);

  it('makes no fewer engines of more parts, of whatever section', async () => {
    for (const seed of seeds(50)) {
      const shed = randomShed(seed);
      const before = (await planBuilds(shed)).builds.length;
      const section = SECTIONS[seed % SECTIONS.length] as Section;
      const parts: readonly { readonly name: string }[] = shed[section] ?? [];
      const more = { ...shed, [section]: [...parts, ...renamed(parts)] };
      const after = (await planBuilds(more)).builds.length;
      expect(after, `seed ${seed}, ${section}`).toBeGreaterThanOrEqual(before);
    }
  }, 120_000);

  it('is no other when the parts are called otherwise and lie in another order', async () => {
    for (const seed of seeds(40)) {
      const shed = randomShed(seed);
      const turned = Object.fromEntries(
        Object.entries(shed).map(([section, parts]) => [
          section,
          Array.isArray(parts) && section !== 'machining' ? renamed(parts).reverse() : parts,
        ]),
      ) as unknown as Shed;
      expect(reached(await planBuilds(turned)), `seed ${seed}`).toEqual(
        reached(await planBuilds(shed)),
      );
    }
  }, 120_000);
});

/** A random shed whose instruments are described, and a chance to hold with. */
function measuredShed(seed: number, worse = 1) {
  const shed = randomShed(seed);
  // Tenths of a thou, or 2.5 µm: what a micrometer and a bore gauge of the trade are good for.
  const grain = shed.units === 'inch' ? 2.54e-6 : 2.5e-6;
  const within = (grains: number) => ({ within: (worse * grains * grain) as Length });
  const instruments = {
    micrometer: within(1 + (seed % 2)),
    boreGauge: within(1 + (seed % 3)),
    wallGauge: within(0.5 + (seed % 2)),
    depthGauge: within(5 + (seed % 4)),
  };
  return { shed: { ...shed, instruments }, holdsWith: [0.6, 0.9, 0.95, 0.99][seed % 4] as number };
}

/** The same parts under other names. */
function renamed<P extends { readonly name: string }>(parts: readonly P[] | undefined): P[] {
  return (parts ?? []).map((part, i) => ({ ...part, name: `other ${i} ${part.name}` }));
}
