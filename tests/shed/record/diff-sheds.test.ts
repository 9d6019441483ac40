import { inch } from 'crankwright';
import {
  afterMachining,
  describeShedDifference,
  diffSheds,
  readShed,
  type Shed,
} from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { frozen } from '../../fuzz/hostile.js';
import { plainShed, spoiltShed } from '../sheds.js';

const shed = frozen(readShed(plainShed()));
const told = (newer: Shed, older = shed) =>
  describeShedDifference(diffSheds(older, newer), { units: 'inch' });
const [head, ...heads] = shed.heads ?? [];
const [rod] = shed.rods ?? [];
if (!head || !rod) throw new Error('the plain shed has heads and rods');

describe('two files of one shed', () => {
  it('that hold the same differ in nothing, however they are written', () => {
    const typed = readShed(JSON.stringify(plainShed()));
    expect(diffSheds(shed, typed)).toEqual({ parts: [], cores: [], fields: [] });
  });

  it.each<[string, Shed, readonly string[]]>([
    [
      'a part that came and one that is gone',
      { ...shed, heads: [...heads, { name: 'head C' }] },
      ['head A (head) is gone.', 'head C (head) came.'],
    ],
    [
      'a part under another name',
      { ...shed, heads: [{ ...head, name: 'the good head' }, ...heads] },
      ['the good head (head): it was called head A.'],
    ],
    [
      'a fault that came',
      { ...shed, heads: [{ ...head, faults: ['frost-cracked'] }, ...heads] },
      ['head A (head): found frost-cracked.'],
    ],
    [
      'what was read again, by less than anything is cut',
      { ...shed, heads: [{ ...head, flatness: inch(0.0021) }, ...heads] },
      ['head A (head): flatness was read again.'],
    ],
    [
      'another count',
      readShed(spoiltShed({ 'thrustWashers[0].count': 3 })),
      ['washers 0.096 (thrust washer): there were 4, now 3.'],
    ],
    [
      'a note',
      { ...shed, heads: [{ ...head, notes: ['top shelf'] }, ...heads] },
      ['head A (head): changed in the file: notes.'],
    ],
    [
      'a limit of the engine',
      readShed(spoiltShed({ 'engine.rodJournals.minimum': '1.5950 in' })),
      ['Changed in the file: engine.rodJournals.minimum.'],
    ],
  ])('with %s say so', (_, newer, sentences) => {
    expect(told(newer)).toEqual(sentences);
  });

  it('tell what was measured that was not known, and the other way round', () => {
    const unknown = readShed(spoiltShed({ 'rods[0].rods[0].housingBore': undefined }));
    expect(told(shed, unknown)).toEqual(['rods A (rod): rod A1 was measured.']);
    expect(told(unknown)).toEqual(['rods A (rod): rod A1 must be measured again.']);
  });

  it('tell of a list without readings that they are not known', () => {
    const [block] = shed.blocks ?? [];
    const bores = block?.bores?.map((bore) => ({ ...bore, readings: [] }));
    const none = {
      ...shed,
      blocks: [{ ...block, bores }, ...(shed.blocks ?? []).slice(1)],
    } as Shed;
    expect(told(none)).toEqual(['block A (block): cylinder 1, cylinder 2 must be measured again.']);
  });

  it('tell what was ground, from which size to which', () => {
    const readings = ['0.25 in', '1.25 in'].flatMap((station) =>
      ['0 deg', '90 deg'].map((angle) => ({ station, angle, diameter: '1.6048 in' })),
    );
    const after = afterMachining(shed, {
      version: 1,
      on: '2026-05',
      parts: [
        {
          name: 'crankshaft B',
          done: [{ work: 'grind rod journals', step: '20 under', places: ['rod 1'] }],
          rodJournals: [{ name: 'rod 1', readings, repaired: ['scored'] }],
        },
      ],
    });
    expect(told(after)).toEqual([
      'crankshaft B (crankshaft): done: grind rod journals rod 1 to 20 under (2026-05); rod 1 was cut from 1.6209 to 1.6221 in to 1.6048 in; no longer scored.',
    ]);
  });
});

describe('engines not taken apart', () => {
  const core = (name: string, more: object = {}) => ({ name, ...more });
  const { heads: _, ...headless } = shed;
  const withCores = (cores: readonly object[], more: object = {}): Shed =>
    ({ ...headless, cores, ...more }) as Shed;
  const seized = { condition: { is: 'seized', on: '2026-05-01' } };

  it.each<[string, Shed, Shed, readonly string[]]>([
    [
      'one that came and one that is gone',
      withCores([core('donor 1')]),
      withCores([core('donor 2')]),
      ['donor 1 (engine not taken apart) is gone.', 'donor 2 (engine not taken apart) came.'],
    ],
    [
      'one that was taken apart, with the parts that came out of it',
      withCores([core('donor 1')]),
      withCores([], { heads: [{ name: 'head X', from: 'donor 1' }, { name: 'head Y' }] }),
      [
        'head X (head) came.',
        'head Y (head) came.',
        'donor 1 was taken apart: head X came out of it.',
      ],
    ],
    [
      'one that parts were taken off',
      withCores([core('donor 1')]),
      withCores([core('donor 1')], { heads: [{ name: 'head X', from: 'donor 1' }] }),
      ['head X (head) came.', 'donor 1 (engine not taken apart): head X was taken off it.'],
    ],
    [
      'one whose parts were there before: it is gone, and nobody says where to',
      withCores([core('donor 1')], { heads: [{ name: 'head X', from: 'donor 1' }] }),
      withCores([], { heads: [{ name: 'head X', from: 'donor 1' }] }),
      ['donor 1 (engine not taken apart) is gone.'],
    ],
    [
      'one in another condition',
      withCores([core('donor 1', { condition: { is: 'turns' } })]),
      withCores([core('donor 1', seized)]),
      ['donor 1 (engine not taken apart): its condition was "turns", now "seized" (2026-05-01).'],
    ],
    [
      'one whose condition was not known',
      withCores([core('donor 1')]),
      withCores([core('donor 1', { ...seized, notes: ['under the bench'] })]),
      [
        'donor 1 (engine not taken apart): its condition was not known, now "seized" (2026-05-01); changed in the file: notes.',
      ],
    ],
    [
      'one that something was done to',
      withCores([core('donor 1')]),
      withCores([core('donor 1', { history: [{ what: 'soaked in oil', on: '2026-06' }] })]),
      ['donor 1 (engine not taken apart): done: soaked in oil (2026-06).'],
    ],
    [
      'the same in another order',
      withCores([core('donor 1'), core('donor 2')]),
      withCores([core('donor 2'), core('donor 1')]),
      [],
    ],
  ])('tell of %s', (__, older, newer, sentences) => {
    expect(told(newer, older)).toEqual(sentences);
  });
});
