import type { Wording } from '../judging/index.js';
import type { CannotBuild, WhyNotBuilt } from './cannot-build-types.js';
import { sayLacks } from './describe-lacks.js';
import { isCountProven } from './describe-proof.js';
import type { Plan } from './plan-types.js';

/** Of each block that must be built and is not, why: a sentence each. */
export function sayCannotBuild({ cannotBuild, proof }: Plan, wording: Wording): readonly string[] {
  return cannotBuild.map(({ name, because }) =>
    isCountProven(proof) || because.kind === 'triage'
      ? `You asked for ${name}, but it cannot be built: ${whyNotBuilt(because, wording)}.`
      : `You asked for ${name}, but it is not in this plan. Whether it can be built is not known.`,
  );
}

/** Why a block is not built, in a few words. */
function whyNotBuilt(because: WhyNotBuilt, wording: Wording): string {
  switch (because.kind) {
    case 'triage':
      return sayTriage(because);
    case 'lacks':
      return `${because.beside.length === 0 ? 'it' : `beside ${because.beside.join(', ')} it`} lacks ${sayLacks(because.lacks, wording)}`;
    case 'enough engines':
      return because.beside.length === 0
        ? 'no engine is asked for'
        : `no more engines are asked for than those of ${because.beside.join(', ')}`;
    case 'too dear':
      return 'its engine costs more than the limit for each engine';
    case 'no buying':
      return 'it would have to be bought';
    case 'not known':
      return 'what is in the way was not found';
  }
}

function sayTriage({
  disposition,
  until,
  faults = [],
}: Extract<CannotBuild['because'], { readonly kind: 'triage' }>): string {
  const seen = faults.length === 0 ? '' : ` (${faults.join(', ')})`;
  switch (disposition) {
    case 'scrap':
      return `it is scrap${seen}`;
    case 'undecided':
      return `it is undecided${until === undefined ? '' : ` until ${until}`}${seen}`;
    case 'not as it is':
      return `no repair that puts it right is on the list${seen}`;
    case 'spare':
      return `nothing here goes with it${seen}`;
  }
}
