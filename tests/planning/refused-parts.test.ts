import { inch, mm, thou } from 'crankwright';
import { planBuilds } from 'crankwright/planning';
import { readShed, type Shed, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { replaced } from '../fuzz/hostile.js';
import { plainShed } from '../shed/sheds.js';

const shed = readShed(plainShed());
const limited = replaced(shed, ['engine', 'bores', 'ringGap'], { max: thou(20) });

/** Numbers that no file could hold: readShed would have refused them. */
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
  it.each(CASES)('is named from the shed on: %j', async (path, value, place) => {
    const wrong = replaced(limited, path, value) as Shed;
    await expect(planBuilds(wrong)).rejects.toMatchObject({ parameter: `shed.${place}` });
    let refused: unknown;
    try {
      triage(wrong);
    } catch (error) {
      refused = error;
    }
    expect(refused).toMatchObject({ parameter: `shed.${place}` });
  });
});
