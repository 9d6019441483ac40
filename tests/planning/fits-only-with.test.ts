import { planBuilds, planReport } from 'crankwright/planning';
import type { Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { block, single, two, withEngine } from './single-shed.js';

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
