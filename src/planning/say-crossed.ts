import type { Build } from './plan-types.js';

/** Of rods that do not go on the journals of their order in the file, that they do not; empty if all do. */
export function sayCrossed({
  bearings,
  mayStayUncrossed,
}: Pick<Build, 'bearings' | 'mayStayUncrossed'>): string {
  const crossed = bearings.filter((bearing) => bearing.crossed);
  const [first] = crossed;
  if (first === undefined) return '';
  const places = crossed.map(({ housing, journal }) => `${housing.place} on ${journal}`);
  if (mayStayUncrossed) {
    return `Of ${first.housing.part}, ${places.join(' and ')} are not in the order of the file: that gains no more than the readings tell. Each may as well stay on its own journal; the clearances are within their limits there too, but are not those of this plan: work them out.`;
  }
  return `Of ${first.housing.part}, ${places.join(' and ')} are not in the order of the file: the clearances come out better so. If the rods are offset, or must stay by their numbers, put each on its own journal, and check the clearances there.`;
}
