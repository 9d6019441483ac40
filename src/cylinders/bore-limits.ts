import type { BasedLimits, Basis, Finding, OwnLimits } from '../judging/index.js';
import { holds, NANOMETRE, ownLimitsOr } from '../judging/internal.js';
import { type Length, thou } from '../quantities/index.js';
import { toleratedBoreWear } from './domains.js';

/** What the shape and wear of a bore are judged against. One rule for a sheet and for a shed. */
export interface BoreLimits {
  readonly outOfRound: BasedLimits<'length'>;
  readonly taper: BasedLimits<'length'>;
}

/** The maker's limits for the shape of a bore, where they are known. */
export interface OwnBoreLimits {
  /** Out-of-round. */
  readonly outOfRound?: OwnLimits<'length'>;
  /** Taper. */
  readonly taper?: OwnLimits<'length'>;
}

const NEW: BasedLimits<'length'> = {
  limits: { max: /* @__PURE__ */ thou(1) },
  limitsOf: 'new parts',
  basis: {
    kind: 'common practice',
    rule: 'bore out-of-round and taper up to 0.001 in (0.025 mm)',
  },
};

const ROUND: Basis = {
  kind: 'common practice',
  rule: 'worn bore out-of-round up to 0.001 of its diameter',
};

const WEAR: Basis = {
  kind: 'published',
  source:
    'TM 10-3930-647-14&P (the order of its labels is inferred): cylinder sleeve, wear of 0.001 in for each inch of diameter',
  forAnotherEngine: true,
};
const TAPER: Basis = {
  kind: 'published',
  source:
    'TM 10-3930-647-14&P (the order of its labels is inferred): cylinder sleeve, taper after ridge removal and honing of 0.0005 in for each inch of piston travel',
  forAnotherEngine: true,
};

/**
 * Limits for the shape of a bore: the caller's, else the rules for new parts with what others allow a
 * worn one. The taper that may stay hangs on the travel of the piston: without a stroke none is known.
 */
export function boreShapeLimits(
  own: OwnBoreLimits,
  bore: Length,
  stroke: Length | undefined,
  names: { readonly outOfRound: string; readonly taper: string },
): BoreLimits {
  const taperLeft = stroke && { limits: { max: (0.0005 * stroke) as Length }, basis: TAPER };
  const roundLeft = { limits: { max: shapeInDoubt(bore) }, basis: ROUND };
  return {
    outOfRound: ownLimitsOr(
      names.outOfRound,
      own.outOfRound ?? {},
      widened(roundLeft),
      toleratedBoreWear,
    ),
    taper: ownLimitsOr(names.taper, own.taper ?? {}, widened(taperLeft), toleratedBoreWear),
  };
}

/** The wear of a bore that may stay, by the table of another engine. */
export function boreWearLimits(bore: Length): BasedLimits<'length'> {
  return { limits: { max: (0.001 * bore) as Length }, limitsOf: 'service', basis: WEAR };
}

/**
 * The wear that leaves it in doubt whether a bore may stay. Limits of other engines run up to this share of the
 * diameter: 0.2 mm on 87.2 mm (TM 10-3930-653-14&P, p. 61), 0.0059 in on 67 mm (TM 9-6115-670-14&P, p. 6-76).
 */
const wearInDoubt = (bore: Length): number => (0.2 * bore) / 87.2;

/** The shape that leaves it in doubt whether a bore may stay: what the rule lets a worn one be out of round. */
export const shapeInDoubt = (bore: Length): Length => (0.001 * bore) as Length;

/** Whether only rules of thumb and limits of other engines stand against a bore, and not all of those. */
export function boreInDoubt(
  {
    shape,
    wear,
  }: { readonly shape: readonly Finding<'length'>[]; readonly wear?: Finding<'length'> },
  bore: Length,
): boolean {
  const doubtful = (finding: Finding<'length'>, most: number) =>
    holds(finding) || (finding.grade === 'undecided' && finding.value <= most + NANOMETRE);
  return (
    shape.every((finding) => doubtful(finding, shapeInDoubt(bore))) &&
    (wear === undefined || doubtful(wear, wearInDoubt(bore)))
  );
}

/** The rule for new parts with a service limit beside it, unless that is the tighter one, in a small engine. */
function widened(service: BasedLimits<'length'> | undefined): BasedLimits<'length'> {
  const most = service?.limits.max ?? 0;
  return service && most > (NEW.limits.max ?? 0) ? { ...NEW, service } : NEW;
}
