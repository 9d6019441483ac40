import { inch, type Length, ratio } from 'crankwright';
import { triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { partsOfCore, withCoreParts } from '../../src/shed/core-parts.js';
import type { Core } from '../../src/shed/part.js';
import type { Shed } from '../../src/shed/shed.js';
import { single } from '../planning/single-shed.js';
import { needing } from '../support/needing.js';

const standard = { min: inch(1.9995), max: inch(2) };
const bare: Shed = {
  version: 1,
  shed: 'bare',
  units: 'inch',
  engine: {
    ...single.engine,
    cylinders: 2,
    mains: 3,
    mainJournals: { standard },
    endPlay: { min: inch(0.005) as Length },
    alsoNeeds: [...needing('head', 'valve set', 'magneto'), { part: 'valve spring', count: 4 }],
  },
};
const core: Core = { name: 'core A' };
const namesOf = (of: Core, shed: Shed) =>
  partsOfCore(of, shed).map(({ part }) => part.name.replace(` of ${of.name}`, ''));

describe('a core', () => {
  it('holds one of every part that an engine needs, in the number it needs', () => {
    expect(namesOf(core, bare)).toEqual([
      'block',
      'crankshaft',
      'rods',
      'piston set',
      'ring set',
      'rod shells',
      'main shells',
      'thrust washer',
      'head',
      'valve set',
      'magneto',
      'valve spring',
    ]);
    const parts = partsOfCore(core, bare).map(({ part }) => part);
    expect(parts.find(({ name }) => name.startsWith('valve spring'))).toMatchObject({ count: 4 });
    expect(parts.find(({ name }) => name.startsWith('main shells'))).toMatchObject({ pairs: 3 });
  });

  it('holds no more than its engine has: no main shells, no washers, no head', () => {
    const { endPlay: _, mainJournals: __, ...engine } = bare.engine;
    const small = { ...bare, engine: { ...engine, mains: 0, alsoNeeds: [] } };
    expect(namesOf(core, small)).toEqual([
      'block',
      'crankshaft',
      'rods',
      'piston set',
      'ring set',
      'rod shells',
    ]);
  });

  it('holds neither what it lacks, by section, word or kind, nor what is listed as from it', () => {
    const lacks = ['heads', 'piston set', 'magneto', 'shells'];
    const taken: Shed = {
      ...bare,
      crankshafts: [{ name: 'crankshaft 7', from: 'core A' }],
      rods: [{ name: 'rods 7', from: 'core B' }],
      otherParts: [{ name: 'springs', kind: 'valve spring', from: 'core A' }],
    };
    expect(namesOf({ ...core, lacks }, taken)).toEqual([
      'block',
      'rods',
      'ring set',
      'thrust washer',
      'valve set',
    ]);
    const listed: Shed = { ...bare, shells: [{ name: 'shells 7', fits: 'rods', from: 'core A' }] };
    expect(namesOf(core, listed)).toContain('main shells');
    expect(namesOf(core, listed)).not.toContain('rod shells');
  });

  it('hands what its owner knows on to its parts', () => {
    const known: Core = {
      ...core,
      interchange: ['early'],
      condition: { is: 'ran' },
      odds: ratio(0.9),
      reserved: 'for a friend',
      builtInto: 'engine 1',
    };
    const { name: from, ...others } = known;
    for (const { part } of partsOfCore(known, bare))
      expect(part).toMatchObject({ from, ...others });
  });

  it('adds its parts to those of the shed, each with the core it is in', () => {
    expect(withCoreParts(bare)).toEqual({ shed: bare, inCore: new Map() });
    const { shed, inCore } = withCoreParts({ ...bare, cores: [core], heads: [{ name: 'head 1' }] });
    expect(shed.heads?.map(({ name }) => name)).toEqual(['head 1', 'head of core A']);
    expect(inCore.get('head of core A')).toBe(core);
    expect(inCore.size).toBe(12);
  });

  it('that threw a rod has what is listed as from it crack-tested, as it is told of the core alone', () => {
    const cores: readonly Core[] = [{ ...core, happened: ['thrown rod'] }];
    const blocks = [{ name: 'block 7', from: 'core A' }];
    const testsIn = (shed: Shed) => triage(shed).parts[0]?.tests.map(({ test }) => test);
    expect(testsIn({ ...bare, blocks, cores })).toEqual(['crack test']);
    expect(testsIn({ ...bare, blocks, cores: [core] })).toEqual([]);
    expect(triage({ ...bare, cores }).cores).toMatchObject([{ happened: ['thrown rod'] }]);
  });
});
