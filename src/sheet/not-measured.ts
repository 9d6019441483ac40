import { showIn } from '../judging/internal.js';
import type { Shape } from '../measuring/index.js';
import { type PageLine, wrap } from '../pages/index.js';
import { degree } from '../quantities/index.js';
import { boredIn } from './bored.js';
import type { Inspection } from './inspect.js';
import type { ValveReport } from './inspect-valve.js';
import type { LeftOut } from './sheet.js';

/** Lists what has no readings, because the report does not judge it. */
export function notMeasured(inspection: Inspection): readonly PageLine[] {
  const { rods, mains, endPlay, cylinders, valves, compression, assembly, oil } = inspection;
  const bored = boredIn(inspection);
  const crankshaft = [...(mains?.bearings ?? []), ...(rods?.bearings ?? [])];
  const { boring } = inspection;
  const walls = boring && boring.outcome !== 'none' ? boring.cylinders : [];
  const ofCylinders = cylinders.flatMap(({ name, shape, piston, rings }) => [
    ...(bored.includes(name) &&
    walls.every(
      (each) => each.name !== name || (each.work === 'bore' && each.wallLeft === undefined),
    )
      ? [`${name}: its wall`]
      : []),
    ...taperOf(name, shape),
    ...(shape.wear === undefined ? [`${name}: its unworn size, and so its wear`] : []),
    ...(piston ? [] : [`${name}: its piston`]),
    ...(rings.length > 0 ? [] : [`${name}: its rings`]),
  ]);
  const missing = [
    Object.values(inspection.notFilledIn ?? {})
      .flat()
      .map(({ name, lacks }: LeftOut) => (lacks === undefined ? name : `${name}: ${lacks}`)),
    mains ? [] : ['mains'],
    rods ? [] : ['rods'],
    crankshaft.flatMap(({ name, withoutHousing, shape }) => [
      ...(withoutHousing ? [`${name}: its housing bore, and so its clearance`] : []),
      ...taperOf(name, shape),
    ]),
    crankshaft.length > 0 && crankshaft.every(({ runout }) => runout === undefined)
      ? ['runout of the crankshaft']
      : [],
    endPlay ? [] : ['end play'],
    cylinders.length > 0 ? ofCylinders : ['cylinders'],
    valves.length > 0 ? valves.flatMap(ofValve) : ['valves'],
    (compression?.test?.notRead ?? []).map((name) => `${name}: its compression`),
    (assembly?.fits ?? []).flatMap(({ name, clearance }) => (clearance ? [] : [name])),
    oil?.sample ? [] : ['used oil'],
    'cracks',
    'bend and twist of the rods',
    rods || mains || cylinders.length > 0
      ? ['any rod, main or cylinder that is not on the sheet']
      : [],
  ].flat();
  return wrap(`Not measured, so not judged: ${missing.join('; ')}.`, 2);
}

const taperOf = (name: string, { taperNotRead = [] }: Shape): readonly string[] =>
  taperNotRead.map((angle) => `${name}: its taper at ${showIn(angle, degree)}`);

const ofValve = ({ name, notJudged, withoutLimit }: ValveReport): readonly string[] => {
  const notRead = notJudged.filter((what) => !withoutLimit.includes(what));
  return notRead.length === 0 ? [] : [`${name}: its ${notRead.join(', ')}`];
};
