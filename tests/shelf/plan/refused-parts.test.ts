import { inch, mm, thou } from 'crankwright';
import { planBuilds, readShelf, type Shelf, triage } from 'crankwright/shelf';
import { describe, expect, it } from 'vitest';
import { replaced } from '../../fuzz/hostile.js';
import { plainShelf } from '../shelves.js';

const shelf = readShelf(plainShelf());
const limited = replaced(shelf, ['engine', 'bores', 'ringGap'], { max: thou(20) });

/** Numbers that no file could hold: readShelf would have refused them. */
const CASES = [
  [['shells', 0, 'wall'], 1, 'shells[0].wall'],
  [
    ['blocks', 0, 'bores', 0, 'readings', 1, 'diameter'],
    1,
    'blocks[0].bores[0].readings[1].diameter',
  ],
  [
    ['crankshafts', 0, 'rodJournals', 1, 'readings', 0, 'angle'],
    99,
    'crankshafts[0].rodJournals[1].readings[0].angle',
  ],
  [
    ['crankshafts', 0, 'rodJournals', 0, 'readings', 0, 'diameter'],
    inch(3),
    'crankshafts[0].rodJournals[0].readings[0].diameter',
  ],
  [['rods', 0, 'rods', 0, 'housingBore'], 5, 'rods[0].rods[0].housingBore'],
  [['ringSets', 0, 'rings', 0, 'gap'], 1, 'ringSets[0].rings[0].gap'],
  [['ringSets', 0, 'rings', 0, 'measuredIn'], mm(50), 'ringSets[0].rings[0].measuredIn'],
  [['engine', 'rodJournals', 'standard', 'min'], 9, 'engine.rodJournals.standard.min'],
  [['engine', 'bores', 'standard', 'max'], 9, 'engine.bores.standard.max'],
] as const;

describe('a size that cannot be', () => {
  it.each(CASES)('is named from the shelf on: %j', async (path, value, place) => {
    const wrong = replaced(limited, path, value) as Shelf;
    await expect(planBuilds(wrong)).rejects.toMatchObject({ parameter: `shelf.${place}` });
    let refused: unknown;
    try {
      triage(wrong);
    } catch (error) {
      refused = error;
    }
    expect(refused).toMatchObject({ parameter: `shelf.${place}` });
  });
});
