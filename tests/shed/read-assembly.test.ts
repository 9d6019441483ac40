import { readShed, writeShed } from 'crankwright/shed';
import { FileError, readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import type { Json } from '../sheet/sheets.js';
import { changed } from '../sheet/sheets.js';
import { plainAssembly } from './assemblies.js';
import { dataOf, shedProblems, spoiltShed } from './sheds.js';

type Changes = Readonly<Record<string, Json | undefined>>;

const shedWith = (changes: Changes = {}) =>
  spoiltShed({
    'engine.bores.stroke': '3.25 in',
    'engine.assembly': changed(plainAssembly(), changes),
  });

/** The one thing wrong with a shed whose assembly was changed, its path told from the assembly on. */
function problem(changes: Changes): { readonly path: string; readonly message: string } {
  const problems = shedProblems(shedWith(changes));
  expect(problems.map(({ path }) => path)).toHaveLength(1);
  const { path = '', message = '' } = problems[0] ?? {};
  expect(path).toMatch(/^engine\.assembly\b/);
  return { path: path.replace(/^engine\.assembly\.?/, ''), message };
}

describe('an assembly', () => {
  it('is read, whole or none of it', () => {
    expect(shedProblems(shedWith())).toEqual([]);
    expect(shedProblems(spoiltShed({ 'engine.assembly': {} }))).toEqual([]);
    const all = Object.fromEntries(Object.keys(plainAssembly()).map((field) => [field, undefined]));
    expect(shedProblems(shedWith(all))).toEqual([]);
  });

  it('is written as it was read, and kept where the file is changed', () => {
    const text = JSON.stringify(shedWith(), null, 2);
    const shed = readShed(text);
    expect(writeShed(shed)).toBe(text);
    expect(dataOf(readShed(writeShed({ ...shed, shed: 'the barn' })))).toEqual({
      ...dataOf(shed),
      shed: 'the barn',
    });
    // Without its file every figure is written anew, and reads as the same.
    expect(dataOf(readShed(writeShed(dataOf(shed))))).toEqual(dataOf(shed));
  });

  it('is the same in a sheet', () => {
    const sheet = (changes: Changes) => ({
      version: 1,
      engine: 'pump set',
      units: 'inch',
      bores: { standard: { min: '3.0000 in', max: '3.0005 in' }, stroke: '3.25 in' },
      assembly: changed(plainAssembly(), changes),
    });
    expect(readSheet(sheet({})).assembly).toEqual(readShed(shedWith()).engine.assembly);
    const paths = (changes: Changes) => {
      try {
        readSheet(sheet(changes));
      } catch (error) {
        if (error instanceof FileError) return error.problems.map(({ path }) => path);
        throw error;
      }
      return [];
    };
    expect(paths({ rodLength: '1.5 in' })).toEqual(['assembly.rodLength']);
    expect(paths({ 'fits[1].isoFit': '40J9x' })).toEqual(['assembly.fits[1].isoFit']);
  });
});

describe('what cannot be is refused at its path', () => {
  it.each<[what: string, changes: Changes, path: string, message: string]>([
    ['a scale of no wrench', { wrench: 'lbf' }, 'wrench', 'lbf ft'],
    [
      'a thread in no series',
      { 'fasteners.rodCaps.thread': '5/16-23 UNF' },
      'fasteners.rodCaps.thread',
      '5/16',
    ],
    [
      'a pitch that is too coarse',
      { 'fasteners.head.thread.pitch': '0.3 in' },
      'fasteners.head.thread.pitch',
      '0.3 in is outside',
    ],
    [
      'a form that no thread has',
      { 'fasteners.head.thread.form': 'Whitworh' },
      'fasteners.head.thread.form',
      'Whitworth',
    ],
    ['a thread that is a number', { 'fasteners.head.thread': 8 }, 'fasteners.head.thread', 'text'],
    [
      'a grade that does not exist',
      { 'fasteners.rodCaps.grade': 'SAE 9' },
      'fasteners.rodCaps.grade',
      'SAE 8',
    ],
    [
      'a grade with no bolt of that size',
      { 'fasteners.rodCaps.thread': 'No. 10-24 UNC' },
      'fasteners.rodCaps',
      'SAE 8',
    ],
    [
      'a torque in pounds',
      { 'fasteners.mainCaps.torque': '20 lbf' },
      'fasteners.mainCaps.torque',
      'torque',
    ],
    [
      'a torque without its unit',
      { 'fasteners.mainCaps.torque': 20 },
      'fasteners.mainCaps.torque',
      'number and unit in quotes',
    ],
    [
      'a torque whose ends are swapped',
      { 'fasteners.rodCaps.torque': { min: '18 lbf ft', max: '14 lbf ft' } },
      'fasteners.rodCaps.torque',
      'swap',
    ],
    [
      'a lock that does not exist',
      { 'fasteners.rodCaps.locking': 'glue' },
      'fasteners.rodCaps.locking',
      'pins',
    ],
    ['too many rounds', { 'fasteners.head.rounds': 4 }, 'fasteners.head.rounds', '2 or 3'],
    [
      'an adapter that takes all of the arm',
      { 'fasteners.head.adapter': { wrench: '6 in', adapter: '6 in', angle: '180 deg' } },
      'fasteners.head',
      'arm',
    ],
    [
      'two bolts in one place',
      { 'fasteners.head.bolts[1].along': '0 in' },
      'fasteners.head.bolts',
      'place',
    ],
    [
      'two bolts of one name',
      { 'fasteners.head.bolts[1].name': '1' },
      'fasteners.head.bolts',
      'name',
    ],
    [
      'one bolt alone',
      { 'fasteners.head.bolts': [{ name: '1', along: '0 in', across: '0 in' }] },
      'fasteners.head.bolts',
      'at least 2 entries',
    ],
    [
      'a bolt that could not be read',
      { 'fasteners.head.bolts[1].along': '3' },
      'fasteners.head.bolts[1].along',
      'unit',
    ],
    [
      'a lash whose limits are reversed',
      { 'valves.inlet.lash': { min: '0.009 in', max: '0.007 in' } },
      'valves.inlet.lash',
      'swap',
    ],
    ['a lash without a bound', { 'valves.inlet.lash': {} }, 'valves.inlet.lash', 'min, a max'],
    ['a lash set warm', { 'valves.inlet.set': 'warm' }, 'valves.inlet.set', 'cold or hot'],
    [
      'a material that is none',
      { 'valves.exhaust.train.carrier[0].material': 'wood' },
      'valves.exhaust.train.carrier[0].material',
      'grey iron',
    ],
    [
      'a spring that is longer when open',
      { 'valves.exhaust.openSpring.height': '1.250 in' },
      'valves.exhaust.openSpring',
      'swapped',
    ],
    [
      'a spring that is weaker when open',
      { 'valves.exhaust.openSpring.force.min': '30 lbf' },
      'valves.exhaust.openSpring',
      'swapped',
    ],
    ['a rod shorter than its throw', { rodLength: '1.5 in' }, 'rodLength', 'rod'],
    [
      'a crown that fills the chamber',
      { 'compression.crown': '100 mL', 'compression.chamber': '5 mL' },
      'compression',
      'room',
    ],
    [
      'a gasket with a bore and an area',
      { 'compression.gasket.bore': '3.1 in' },
      'compression.gasket.bore',
      'area',
    ],
    ['a gasket that is a word', { 'compression.gasket': 'thin' }, 'compression.gasket', 'none'],
    ['a deck that is too low', { 'compression.deckHeight': '5 in' }, 'compression', 'deck'],
    [
      'a volume that is a length',
      { 'compression.chamber': '68 mm' },
      'compression.chamber',
      'volume',
    ],
    [
      'a rule of a kind that does not exist',
      { 'compression.rules[1].kind': 'share of the highest' },
      'compression.rules[1].kind',
      'share of highest',
    ],
    [
      'a rule that is a word',
      { 'compression.rules[0]': 'spread' },
      'compression.rules[0]',
      'object',
    ],
    [
      'a rule with the bound of another',
      { 'compression.rules[4]': { kind: 'at least', most: '60 psi gauge', least: '60 psi gauge' } },
      'compression.rules[4].most',
      'least',
    ],
    [
      'a place without its dead centre',
      { 'timing.valves.inletOpens': '10 deg' },
      'timing.valves.inletOpens',
      '10 deg before top',
    ],
    [
      'a place that is no angle',
      { 'timing.valves.inletOpens': 'somewhat before top' },
      'timing.valves.inletOpens',
      'somewhat',
    ],
    [
      'a place that is too far off',
      { 'timing.valves.inletOpens': '190 deg before top' },
      'timing.valves.inletOpens',
      '180',
    ],
    [
      'a place that is not of that valve',
      { 'timing.valves.inletOpens': '5 deg before bottom' },
      'timing.valves.inletOpens',
      'top dead centre',
    ],
    [
      'a place that is a number',
      { 'timing.valves.inletOpens': 10 },
      'timing.valves.inletOpens',
      '10 deg before top',
    ],
    [
      'a valve that opens after it closes',
      {
        'timing.valves.inletOpens': '95 deg after top',
        'timing.valves.inletCloses': '85 deg before bottom',
      },
      'timing.valves.inletCloses',
      'after it opens',
    ],
    [
      'gears that turn the cam at another speed',
      { 'timing.gears.camTeeth': 45 },
      'timing.gears.camTeeth',
      'twice',
    ],
    [
      'half a tooth',
      { 'timing.gears.crankTeeth': 21.5 },
      'timing.gears.crankTeeth',
      'whole number',
    ],
    [
      'a starting spark whose limits are reversed',
      { 'timing.spark.starting': { min: '3 deg', max: '0 deg' } },
      'timing.spark.starting',
      'swap',
    ],
    [
      'points that hardly open',
      { 'timing.pointsGap.min': '0 in' },
      'timing.pointsGap.min',
      'digits',
    ],
    ['a cylinder on its head', { 'dipper.cylinder': 'down' }, 'dipper.cylinder', 'upright'],
    ['a fit that does not exist', { 'fits[1].isoFit': '40J9x' }, 'fits[1].isoFit', '40J9x'],
    [
      'a class that is not defined at the size',
      { 'fits[2].inchFit.basic': '30 in' },
      'fits[2].inchFit.basic',
      'in',
    ],
    [
      'a fit of two classes',
      { 'fits[1].inchFit': { fitClass: 'FN2', basic: '0.8 in' } },
      'fits[1]',
      'leave one out',
    ],
    [
      'a shaft that was never in its hole',
      { 'fits[0].hole': '7.505 in' },
      'fits[0].shaft',
      'digit',
    ],
    ['a hole that is not of its class', { 'fits[1].hole': '25 mm' }, 'fits[1].hole', 'class'],
    [
      'a field that does not exist',
      { 'rings.sidePlay': '1 mm' },
      'rings.sidePlay',
      'sideClearance',
    ],
  ])('%s', (_, changes, path, message) => {
    const found = problem(changes);
    expect(found.path).toBe(path);
    expect(found.message).toContain(message);
  });
});

describe('a mistake', () => {
  it('hides no other', () => {
    const paths = shedProblems(
      shedWith({
        wrench: 'lbf',
        'fasteners.rodCaps.grade': 'SAE 9',
        'compression.rules[0].most': '20',
        'compression.crown': '100 mL',
        'compression.chamber': '5 mL',
        rodLength: '6 inches or so',
        'fits[0].shaft': '7.5 in',
      }),
    ).map(({ path }) => path.replace('engine.assembly.', ''));
    expect(paths.toSorted()).toEqual([
      'compression',
      'compression.rules[0].most',
      'fasteners.rodCaps.grade',
      'fits[0].shaft',
      'rodLength',
      'wrench',
    ]);
  });
});

describe('what people write', () => {
  it.each<[string, string]>([
    ['lbf ft', 'lbf·ft'],
    ['lbf.in', 'lbf·in'],
    ['N m', 'N·m'],
    ['kgf·m', 'kgf·m'],
  ])('of a wrench, %s', (written, scale) => {
    expect(readShed(shedWith({ wrench: written })).engine.assembly?.wrench).toBe(scale);
  });

  it.each(['10 deg before top', '10° BEFORE TOP dead centre', ' 10 deg  before top '])(
    'of a place, %s',
    (written) => {
      const shed = readShed(shedWith({ 'timing.valves.inletOpens': written }));
      const { angle, before } = shed.engine.assembly?.timing?.valves?.inletOpens ?? {};
      expect(angle).toBeCloseTo(Math.PI / 18, 12);
      expect(before).toBe('top');
    },
  );
});
