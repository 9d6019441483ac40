import { type Block, checks, type Entry, paragraph } from '../pages/index.js';
import type { Build } from '../planning/index.js';
import type { EngineKind } from '../reading/index.js';

/** What must be looked at and written down of every engine, straightened or not, before it is built. */
export function lookOver(build: Build, { assembly }: EngineKind): readonly Block[] {
  return [
    paragraph("Straightness, whether or not a shop has seen the part, by the maker's manual:"),
    checks(straightness(build)),
    paragraph('What the plan knows nothing of:'),
    checks([
      'Flywheel looked at for cracks, most of all round its hub and its keyway',
      'Key and taper of flywheel and crankshaft: clean, not fretted, the taper bears all round, the key is tight in both',
      {
        write:
          'Rod bolts new, or measured for stretch against a new one and tested for cracks; which, and result',
      },
      {
        write: `Fit of every pin in its bush and in its piston, ${assembly?.fits ? "as the fits above say, or by the maker's manual where they do not" : "by the maker's manual"}`,
      },
    ]),
    paragraph('Weights, so that the parts of one engine can be compared:'),
    checks(weights(build)),
  ];
}

/** One line for the crankshaft and one for each rod: a bend does not show to the eye. */
function straightness({ bearings, jobs, parts }: Build): readonly Entry[] {
  const isStraightened = (name: string) =>
    jobs.some(({ part, work }) => part === name && work === 'straighten');
  const line = (part: string, place: string, what: string): Entry => ({
    write: `${place}${isStraightened(part) ? ', straightened:' : ','} ${what}`,
  });
  const shafts = parts.filter(({ section }) => section === 'crankshafts');
  return [
    ...shafts.map(({ name }) =>
      line(name, name, 'runout at the middle, full reading of the dial, on its end bearings'),
    ),
    ...rodsOf(bearings).map(({ part, place }) => line(part, `${part}, ${place}`, 'bend and twist')),
  ];
}

function weights({ bearings, cylinders }: Build): readonly Entry[] {
  return [
    ...rodsOf(bearings).map(({ part, place }) => ({
      write: `${part}, ${place}: weight of the rod, with its cap and bolts`,
    })),
    ...cylinders.map(({ bore, piston }) => ({
      write: `${piston}, for ${bore}: weight of the piston, with its pin`,
    })),
  ];
}

const rodsOf = (bearings: Build['bearings']) =>
  bearings.filter(({ kind }) => kind === 'rods').map(({ housing }) => housing);
