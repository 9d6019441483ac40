import { planBuilds, planReport } from 'crankwright/planning';
import { type Shed, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { needing } from '../support/needing.js';
import { tries } from '../support/tries.js';
import { bruteForce } from './brute-force.js';
import type { Shed as Full } from './full.js';
import { withHidden, without, withoutSizes } from './hidden-parts.js';
import { block, crankshaft, length, single, span, two, withEngine } from './single-shed.js';
import { variedShed } from './varied-sheds.js';

const magneto = (name: string, ...onlyWith: readonly string[]) => ({
  name,
  kind: 'magneto',
  ...(onlyWith.length > 0 && { onlyWith }),
});

/** Two of everything, of which block B is built in already, and a magneto that is for it alone. */
const shed: Shed = {
  ...single,
  ...two,
  ...withEngine({ alsoNeeds: [{ part: 'magneto', count: 1 }] }),
  blocks: [block('block A', 30003), { ...block('block B', 30003), builtInto: 'the launch' }],
  otherParts: [magneto('magneto 1'), magneto('magneto 2', 'block B')],
};

describe('a spare that fits only with a part that is not there', () => {
  it('is said to, where the next engine lacks one of its kind', async () => {
    const plan = await planBuilds(shed);
    expect(plan.nextEngine?.lacks.map(({ section, kind }) => kind ?? section)).toEqual([
      'blocks',
      'magneto',
    ]);
    expect(plan.leftOver.find(({ name }) => name === 'magneto 2')).toMatchObject({
      why: 'spare',
      onlyWith: ['block B'],
    });
    const page = planReport(plan).replace(/\s+/g, ' ');
    expect(page).toContain('magneto 2 (magneto; fits only with block B)');
    expect(page).toContain(
      'One more engine needs: 1 block; 1 magneto. Of what is left over, magneto 2 will not do: it fits only with block B.',
    );
  });

  it('is not spoken of where none of its kind is lacking', async () => {
    const more = [...(shed.otherParts ?? []), magneto('magneto 3')];
    const page = planReport(await planBuilds({ ...shed, otherParts: more }));
    expect(page).not.toContain('will not do');
  });
});

/** Two of everything; the head that goes with valves 1 fits only with crankshaft 1, and valves 1 only with crankshaft 2. */
const crossed: Shed = {
  ...single,
  ...two,
  ...withEngine({
    guideClearance: span(10, 20),
    alsoNeeds: needing('head', 'valve set'),
  }),
  crankshafts: [crankshaft('crankshaft 1', 16248), crankshaft('crankshaft 2', 16248)],
  heads: [
    { name: 'head 1', guideBore: length(3115), onlyWith: ['crankshaft 1'] },
    { name: 'head 2', guideBore: length(3215) },
  ],
  valveSets: [
    { name: 'valves 1', stem: length(3100), onlyWith: ['crankshaft 2'] },
    { name: 'valves 2', stem: length(3200) },
  ],
};

describe('what there may be of parts that fit only with others', () => {
  it('has them together in one engine, as trying everything does', async () => {
    expect(bruteForce(crossed).engines).toBe(1);
    const whole = await planBuilds(crossed);
    expect(whole.builds).toHaveLength(1);
    const shed = withoutSizes(crossed as Full, new Set(['crankshaft 2']));
    const plan = await planBuilds(shed);
    expect(plan.proof).toEqual({ outcome: 'optimal' });
    expect(plan.builds).toHaveLength(1);
    // Whatever crankshaft 2 measures, head 1 and valves 1 cannot be in one engine.
    expect(plan.mayBe).toBeUndefined();
    expect(plan.measureFirst.map(({ mayBring }) => mayBring.kind)).not.toContain('one more engine');
  });

  it('lacks what makes up for a part that cannot come along, and nothing less', async () => {
    const plan = await planBuilds(crossed);
    // A second engine needs one valve set for head 1, or one head for valves 1; a valve set is the easier to get.
    expect(plan.nextEngine).toEqual({
      lacks: [{ section: 'valveSets', count: 1 }],
      alternatives: [],
    });
    const asHard = await planBuilds({ ...crossed, hardToGet: { heads: 3, valveSets: 3 } });
    expect(asHard.nextEngine?.alternatives).toHaveLength(1);
  });

  it('is the best by trying everything', async () => {
    let mated = 0;
    for (const seed of [...[26, 39], ...many(tries(0, 60))]) {
      const full = variedShed(seed);
      if (triage(full).parts.some(({ disposition }) => disposition === 'undecided')) continue;
      const { shed, hidden } = withHidden(full, seed, 2);
      mated += Number(JSON.stringify(shed).includes('onlyWith'));
      const plan = await planBuilds(shed);
      const only = (known: readonly string[]) =>
        without(
          shed,
          hidden.filter((name) => !known.includes(name)),
        );
      const choices = [[], ...hidden.map((name) => [name]), hidden];
      const engines = choices.map((some) => bruteForce(only(some)).engines);
      const [proven = 0] = engines;
      expect(plan.builds.length, `seed ${seed}`).toBe(proven);
      expect(plan.mayBe?.engines ?? proven, `seed ${seed}`).toBe(Math.max(...engines));
      const fewest = choices[engines.findIndex((each) => each > proven)]?.length;
      const named = plan.measureFirst.find(({ mayBring }) => mayBring.kind === 'one more engine');
      expect(named?.parts.length, `seed ${seed}`).toBe(fewest);
    }
    expect(mated).toBeGreaterThan(0);
  }, 240_000);
});

const many = (count: number) => Array.from({ length: count }, (_, seed) => seed);
