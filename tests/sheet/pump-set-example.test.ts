import { readFileSync } from 'node:fs';
import { actionsFrom, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { root } from '../support/repo.js';
import { changed, type Json } from './sheets.js';

const example = (changes: Readonly<Record<string, Json | undefined>> = {}) =>
  inspect(
    readSheet(
      changed(JSON.parse(readFileSync(`${root}/examples/pump-set-inch.json`, 'utf8')), changes),
    ),
  );
const inspection = example();
const flowing = report(inspection).replace(/\s+/g, ' ');

describe('the example of the pump set', () => {
  it('names the reading to take again, and decides nothing on it', () => {
    expect(flowing).toContain(
      'cylinder 1: read this one again, at station 2.0000 in, angle 0 deg: 3.0105 in; the others say 3.0004 in; nothing is decided on it before that',
    );
    expect(actionsFrom(inspection).map(({ kind }) => kind)).not.toContain('bore');
    expect(flowing).toContain('Decision: none, as a reading does not fit the others.');
    // Nor are the figures of its station printed.
    expect(flowing).toContain('2.0000 read again 3.5000 3.0003 0.0002');
  });

  it('tells what to bore to as soon as the reading is taken again', () => {
    const again = example({ 'cylinders[0].bore.readings[3].diameter': '3.0005 in' });
    expect(actionsFrom(again).map(({ kind }) => kind)).toContain('bore');
  });

  it('shows an undecided clearance, and what settles it', () => {
    // By hand: √(0.2² + (2 · 0.1)² + 0.1²) = 0.3 thou, and a little for the warmth; 2.5 thou is 0.3 from 2.8.
    expect(flowing).toMatch(
      /rod 2, once it is ground, with "rod 30 under": measure it again; oil clearance 0\.00250 in ± 0\.0003[01] in: undecided/,
    );
    expect(flowing).toMatch(/settled by an uncertainty of 0\.00030? in or less.* bore gauge/);
  });

  it('asks for better readings of a ground journal only once it is to be ground', () => {
    const all = actionsFrom(inspection);
    const ground = all.findIndex((each) => each.kind === 'grind' && each.journals === 'rods');
    const again = all.findIndex((each) => each.kind === 'measure again' && each.onceGround);
    expect(ground).toBeGreaterThan(-1);
    expect(again).toBeGreaterThan(ground);
  });

  it('says how well each instrument measures, and which nobody described', () => {
    expect(flowing).toContain('micrometer 0.0001 in, bore gauge 0.0002 in, wall gauge 0.0001 in');
    expect(flowing).not.toContain('Nobody said');
    const without = report(example({ 'instruments.wallGauge': undefined })).replace(/\s+/g, ' ');
    expect(without).toContain(
      'Nobody said how well these measure, so their readings count as exact, which none is: wall gauge.',
    );
  });

  it('is read at two angles, which may hide an oval, and says so', () => {
    expect(flowing).toContain('read at 0, 60 and 120°: pulley main');
  });
});
