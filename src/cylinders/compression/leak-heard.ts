import { guardList, guardWord } from '../../judging/internal.js';

/** Where air is heard, felt or seen to leave while a cylinder is under pressure. */
export type LeakHeardAt =
  | 'inlet'
  | 'exhaust'
  | 'breather'
  | 'neighbouring cylinder'
  | 'cooling water'
  | 'joint of the head'
  | 'plug';

/** What air at such a place points to. */
export interface LeakSuspect {
  /** Where it was heard. */
  readonly heardAt: LeakHeardAt;
  /** What leaks there. An indication: look before anything is taken apart or ground. */
  readonly part:
    | 'inlet valve'
    | 'exhaust valve'
    | 'rings, piston or bore'
    | 'head gasket or a crack between the cylinders'
    | 'head gasket or a crack to the water'
    | 'head gasket or a warped face'
    | 'plug or its washer';
}

const PARTS: Readonly<Record<LeakHeardAt, LeakSuspect['part']>> = {
  inlet: 'inlet valve',
  exhaust: 'exhaust valve',
  breather: 'rings, piston or bore',
  'neighbouring cylinder': 'head gasket or a crack between the cylinders',
  'cooling water': 'head gasket or a crack to the water',
  'joint of the head': 'head gasket or a warped face',
  plug: 'plug or its washer',
};
/** Every place. */
export const LEAK_PLACES: readonly LeakHeardAt[] = [
  'inlet',
  'exhaust',
  'breather',
  'neighbouring cylinder',
  'cooling water',
  'joint of the head',
  'plug',
];

/** What the places point to, in the order given. */
export function suspectsOf(
  parameter: string,
  heard: readonly LeakHeardAt[],
): readonly LeakSuspect[] {
  guardList(parameter, heard, 0, 'places where air is heard');
  return heard.map((place, i) => {
    const heardAt = guardWord(`${parameter}[${i}]`, place, LEAK_PLACES);
    return { heardAt, part: PARTS[heardAt] };
  });
}
