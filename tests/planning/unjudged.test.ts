import { type BuildPart, planReport } from 'crankwright/planning';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { twoEngines } from './plans.js';

const SAID = 'Proven by the sizes that were measured; not judged at all:';
const withParts = (...more: readonly BuildPart[]) => {
  const [first, ...others] = twoEngines.builds;
  if (first === undefined) throw new Error('no engine');
  const builds = [{ ...first, parts: [...first.parts, ...more] }, ...others];
  return flowing(planReport({ ...twoEngines, builds }));
};
const part = (name: string, more: Partial<BuildPart>): BuildPart => ({
  ...{ section: 'otherParts', name, count: 1, bought: false },
  ...more,
});

describe('parts that no size decides', () => {
  it('are named beside what is proven', () => {
    const text = withParts(
      part('magneto 1', { notJudged: [{ why: 'not tested' }] }),
      part('head 1', {
        section: 'heads',
        notJudged: [
          { why: 'not measured', what: 'face' },
          { why: 'not measured', what: 'guides' },
        ],
      }),
      part('rings', {
        section: 'ringSets',
        notJudged: [
          { why: 'not measured', what: 'ring gaps' },
          { why: 'not measured', what: 'ring side clearance' },
        ],
      }),
      part('head 2', { section: 'heads', notJudged: [{ why: 'not measured', what: 'guides' }] }),
    );
    expect(text).toContain(`${SAID} magneto 1; head 1; rings.`);
  });

  it('are named once with their number where every engine takes one of them', () => {
    const rings = part('rings', {
      section: 'ringSets',
      notJudged: [
        { why: 'not measured', what: 'ring gaps' },
        { why: 'not measured', what: 'ring side clearance' },
      ],
    });
    const magnetos = part('magneto', { count: 2, notJudged: [{ why: 'not tested' }] });
    const builds = twoEngines.builds.map((build) => ({
      ...build,
      parts: [...build.parts, rings, magnetos],
    }));
    expect(flowing(planReport({ ...twoEngines, builds }))).toContain(
      `${SAID} 2 × rings; 4 × magneto.`,
    );
  });

  it('are not spoken of where there are none', () => {
    expect(withParts()).not.toContain(SAID);
  });
});
