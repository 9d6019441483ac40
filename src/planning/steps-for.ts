import { undersizeSteps } from '../crankshaft/index.js';
import { oversizeSteps } from '../cylinders/index.js';
import { namedFrom } from '../judging/internal.js';
import { withStandard } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import type { Section, Shed } from '../shed/index.js';

/** The steps that the journals or bores of a shed's engines are machined to, standard among them. */
export function stepsFor(
  { engine, units }: Pick<Shed, 'engine' | 'units'>,
  field: 'rodJournals' | 'mainJournals' | 'bores',
): readonly Length[] {
  const usual = field === 'bores' ? oversizeSteps : undersizeSteps;
  return namedFrom(
    () => ({ '': `shed.engine.${field}` }),
    () => withStandard(engine[field]?.steps ?? usual(units)),
  );
}

/** The steps that parts of a section may be of. */
export function stepsOfSection(
  shed: Pick<Shed, 'engine' | 'units'>,
  section: Section,
): readonly Length[] {
  switch (section) {
    case 'crankshafts':
    case 'shells':
      return [...stepsFor(shed, 'rodJournals'), ...stepsFor(shed, 'mainJournals')];
    case 'blocks':
    case 'pistonSets':
    case 'ringSets':
      return stepsFor(shed, 'bores');
    default:
      return [];
  }
}
