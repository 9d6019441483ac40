import type { Shed, TriagedPart } from '../shed/index.js';
import { undecidedUntil } from '../shed/internal.js';
import type { CannotBuild } from './cannot-build-types.js';
import { lackingFor, type Wanted } from './lacking.js';
import { faultsIn } from './orders.js';
import type { PlanRequest } from './plan-request.js';
import type { Build } from './plan-types.js';
import type { Proof } from './proof-types.js';

/** What tells why a block is not in a plan. */
export interface Unbuilt extends Omit<Wanted, 'engines' | 'ownBlocks'> {
  readonly shed: Shed;
  readonly request: Pick<PlanRequest, 'mustBuild' | 'atMost' | 'buying'>;
  readonly builds: readonly Build[];
  /** The triage of every part. */
  readonly parts: readonly TriagedPart[];
  readonly proof: Proof;
}

/** The blocks that must be built and are not, each with the reason. */
export function whyNotBuilt(unbuilt: Unbuilt): readonly CannotBuild[] {
  const { request, builds } = unbuilt;
  const built = builds.map(({ name }) => name);
  const missing = [...new Set(request.mustBuild)].filter((name) => !built.includes(name));
  return missing.map((name) => ({ name, because: reasonFor(name, unbuilt) }));
}

const NOT_KNOWN = { kind: 'not known' } as const;

function reasonFor(
  name: string,
  { parts, request, builds, proof, stock, ...wanted }: Unbuilt,
): CannotBuild['because'] {
  const its = stock.blocks.filter(({ members }) => members.some((each) => each.name === name));
  if (its.length === 0) return dispositionOf(name, parts) ?? unpaid(request);
  const beside = builds.map((each) => each.name).filter((each) => request.mustBuild.includes(each));
  if (proof.outcome !== 'optimal') return NOT_KNOWN;
  if (beside.length >= (request.atMost ?? Infinity)) return { kind: 'enough engines', beside };
  const names = [...beside, name];
  const blocks = stock.blocks.filter(({ members }) =>
    members.some((each) => names.includes(each.name)),
  );
  const found = lackingFor({
    ...wanted,
    stock: { ...stock, blocks },
    engines: names.length,
    ownBlocks: true,
  });
  if (found === 'none') {
    const { mostPerEngine = Infinity } = wanted;
    return mostPerEngine < Infinity ? { kind: 'too dear' } : NOT_KNOWN;
  }
  if (typeof found === 'string' || found.lacks.length === 0) return NOT_KNOWN;
  return { kind: 'lacks', lacks: found.lacks, beside };
}

/** What keeps out a block that is good enough: the money. */
const unpaid = ({ buying }: Unbuilt['request']): CannotBuild['because'] =>
  buying ? { kind: 'too dear' } : { kind: 'no buying' };

/** Why the shed has no use for a block, as its triage tells. */
function dispositionOf(
  name: string,
  parts: readonly TriagedPart[],
): CannotBuild['because'] | undefined {
  const part = parts.find((each) => each.section === 'blocks' && each.name === name);
  switch (part?.disposition) {
    case 'scrap':
    case 'undecided':
    case 'not as it is':
    case 'spare': {
      const faults = faultsIn(part);
      const until = undecidedUntil(part);
      return {
        kind: 'triage',
        disposition: part.disposition,
        ...(until && { until }),
        ...(faults.length > 0 && { faults }),
      };
    }
    case undefined:
      return undefined;
    default:
      return { kind: 'too dear' };
  }
}
