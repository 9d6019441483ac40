import type { Work } from '../shed/index.js';
import type { Judged } from './clearances.js';
import type { Build } from './plan-types.js';

/** What of a clearance can be measured again now. What is bought, or machined first, cannot. */
export function toMeasure(build: Build, { of, place }: Judged): readonly string[] {
  const { parts, jobs, bearings, endPlay } = build;
  const isBought = (name: string | undefined) =>
    parts.some((part) => part.name === name && part.bought);
  const isWorked = (works: readonly Work[], at: string | undefined, part?: string) =>
    jobs.some(
      (job) =>
        works.includes(job.work) &&
        (part === undefined || job.part === part) &&
        job.places.includes(at ?? ''),
    );
  const nameOf = (section: Build['parts'][number]['section']) =>
    parts.find((part) => part.section === section)?.name;
  const unless = (is: boolean, what: string) => (is ? [] : [what]);
  switch (of) {
    case 'rods':
    case 'mains': {
      const bearing = bearings.find(({ kind, journal }) => kind === of && journal === place);
      const { housing, shells } = bearing ?? {};
      const grind = of === 'rods' ? 'grind rod journals' : 'grind main journals';
      return [
        ...unless(isWorked([grind], place), 'the journal'),
        ...unless(isWorked(['resize housings'], housing?.place, housing?.part), 'the housing'),
        ...unless(isBought(shells), 'the shell walls'),
      ];
    }
    case 'cylinder':
      return [
        ...unless(isWorked(['bore', 'sleeve'], place), 'the bore'),
        ...unless(isBought(nameOf('pistonSets')), 'the piston'),
      ];
    case 'guides':
      return [
        ...unless(isBought(nameOf('heads')), 'the guides'),
        ...unless(isBought(nameOf('valveSets')), 'the stems'),
      ];
    case 'end play': {
      const washers = endPlay?.washers ?? [];
      return [
        ...unless(isBought(nameOf('blocks')), 'the block over its thrust faces'),
        ...unless(isBought(nameOf('crankshafts')), 'the crankshaft between its thrust faces'),
        ...unless(washers.length === 0 || washers.every(isBought), 'the washers'),
      ];
    }
  }
}
