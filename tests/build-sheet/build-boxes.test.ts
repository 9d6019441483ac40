import { inch } from 'crankwright';
import { buildBoxes } from 'crankwright/build-sheet';
import { planBuilds } from 'crankwright/planning';
import { afterMachining, emptyBoxes, readShed, writeShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { randomShed } from '../planning/random-sheds.js';
import { plainShed } from '../shed/sheds.js';

const text = JSON.stringify(plainShed(), null, 2);
const shed = readShed(text);
const [first] = buildBoxes(await planBuilds(shed, { mustBuild: ['block A'], atMost: 1 }), shed);
if (!first) throw new Error('one engine is built');

describe('the boxes of any plan', () => {
  it('ask for every size of every engine once, and change nothing while they are empty', async () => {
    let [engines, unread] = [0, 0];
    for (const seed of [0, 3, 5, 7, 9, 12, 14]) {
      const random = randomShed(seed);
      const files = buildBoxes(await planBuilds(random), random);
      engines += files.length;
      for (const file of files) {
        const { boxes, takes, checks } = file;
        expect(new Set(boxes.map((box) => JSON.stringify(box))).size).toBe(boxes.length);
        const names = takes.map(({ name }) => name);
        for (const { part } of boxes) expect(names).toContain(part);
        const { cylinders, mains } = random.engine;
        // Oil in every bearing, the piston and the top ring of every cylinder; guides and end play where they are known.
        expect(checks.length).toBeGreaterThanOrEqual(mains + 3 * cylinders);
        // Each place and each check is named once, however many boxes it has.
        const places = new Set(boxes.map(({ part, feature }) => `${part}, ${feature}`));
        const asked = new Set(checks.map(({ what }) => what));
        expect(emptyBoxes(file)).toEqual([...places, ...asked]);
        unread += boxes.filter(({ station }) => station === '').length;
      }
    }
    expect(engines).toBeGreaterThan(3);
    // Each part of these was read before, so every box names its station.
    expect(unread).toBe(0);
  });
});

describe('the boxes of an engine', () => {
  it('ask for every size where it was read before', () => {
    const shaft = first.takes.find(({ name }) => name.startsWith('crankshaft'))?.name;
    const boxes = first.boxes.filter(({ part, feature }) => part === shaft && feature === 'rod 1');
    expect(boxes.map(({ station, angle }) => [station, angle])).toEqual([
      ['0.2500 in', '0 deg'],
      ['0.2500 in', '90 deg'],
      ['1.2500 in', '0 deg'],
      ['1.2500 in', '90 deg'],
    ]);
    expect(boxes[0]?.mayBe).toMatch(/^\d\.\d{4} to \d\.\d{4} in$/);
    expect(new Set(first.boxes.map((box) => JSON.stringify(box))).size).toBe(first.boxes.length);
  });

  it('change nothing in the shed while they are empty, and say so', () => {
    expect(writeShed(afterMachining(shed, first))).toBe(text);
    expect(emptyBoxes(first).length).toBeGreaterThan(5);
  });

  it('come back filled in as the record of an engine that is built: no plan takes its parts again', async () => {
    const boxes = first.boxes.map((box) =>
      box.part === 'block A' && box.feature.startsWith('cylinder')
        ? { ...box, reading: '3.0004 in' }
        : box,
    );
    const after = afterMachining(shed, { ...first, on: '2026-07', boxes, builtInto: 'block A' });
    const [block] = after.blocks ?? [];
    expect(block?.bores?.[0]?.readings?.[0]?.diameter).toBe(inch(3.0004));
    expect(block?.builtInto).toBe('block A');
    expect(block?.history?.map(({ what }) => what)).toEqual([
      'built into block A',
      'measured again',
    ]);
    const built = [after.crankshafts, after.shells, after.pistonSets].flatMap((parts) =>
      (parts ?? []).filter(({ builtInto }) => builtInto === 'block A'),
    );
    expect(built.length).toBeGreaterThan(3);
    expect(readShed(writeShed(after)).blocks).toEqual(after.blocks);
  });
});
