import type { Build } from './plan-types.js';

/** Of rods that do not go on the journals of their order in the file, that they do not; empty if all do. */
export function sayCrossed({ bearings }: Pick<Build, 'bearings'>): string {
  const crossed = bearings.filter((bearing) => bearing.crossed);
  const [first] = crossed;
  if (first === undefined) return '';
  const places = crossed.map(({ housing, journal }) => `${housing.place} on ${journal}`);
  return `Of ${first.housing.part}, ${places.join(' and ')} are not in the order of the file: the clearances come out better so. If the rods are offset, or must stay by their numbers, put each on its own journal, and check the clearances there.`;
}
