import {
  type BasedLimits,
  inch,
  type Length,
  type OwnLimits,
  RebuildInputError,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { diameter } from '../../src/judging/domains.js';
import { ownLimitsOr } from '../../src/judging/own-limits.js';

const span = (min: number, max: number) => ({ min: inch(min), max: inch(max) });
const thumb: BasedLimits<'length'> = {
  limits: span(1, 2),
  basis: { kind: 'common practice', rule: 'a rule' },
};
const either = (own: OwnLimits<'length'>, fallback = thumb) =>
  ownLimitsOr('it', own, fallback, diameter);
const specified = { kind: 'specified' };

describe('limits of the caller beside a default', () => {
  it('win over it, and say who set them', () => {
    expect(either({})).toEqual(thumb);
    expect(either({ limits: span(1.2, 1.8) })).toEqual({
      limits: span(1.2, 1.8),
      basis: specified,
    });
    const basis = { kind: 'specified', by: 'a manual' } as const;
    expect(either({ limits: span(1.2, 1.8), basis }).basis).toEqual(basis);
  });

  it('are of new parts where a service limit stands beside them', () => {
    const service = { limits: { max: inch(1.9) } };
    expect(either({ limits: span(1.2, 1.8), service })).toEqual({
      limits: span(1.2, 1.8),
      basis: specified,
      limitsOf: 'new parts',
      service: { ...service, basis: specified },
    });
  });

  it('leave of the default what a service limit does not contradict', () => {
    // Worn to 1.5 in is in service, so the default of at most 2 in is not of this engine's new parts; its least is.
    const wider = either({ service: { limits: { min: inch(0.9), max: inch(2.5) } } });
    expect(wider).toMatchObject({ limits: span(1, 2), limitsOf: 'new parts', basis: thumb.basis });
    const half = either({ service: { limits: { max: inch(1.5) } } });
    expect(half.limits).toEqual({ min: inch(1) });
    const none = either({ service: { limits: { min: inch(1.1), max: inch(1.5) } } });
    expect(none).toEqual({
      limits: { min: inch(1.1), max: inch(1.5) },
      basis: specified,
      limitsOf: 'service',
    });
    const open: BasedLimits<'length'> = { ...thumb, limits: { max: inch(2) } };
    expect(either({ service: { limits: { max: inch(2.5) } } }, open).limits).toEqual(open.limits);
  });

  it.each<[OwnLimits<'length'>, string]>([
    [{ limits: span(1.2, 1.8), service: { limits: { max: inch(1.7) } } }, 'it.service.limits.max'],
    [{ limits: span(1.2, 1.8), service: { limits: { min: inch(1.3) } } }, 'it.service.limits.min'],
    [{ basis: { kind: 'specified' } }, 'it.limits'],
    [{ limits: { max: 55 as Length } }, 'it.limits.max'],
    [{ limits: span(1.2, 1.8), service: { limits: {}, of: 1 } as never }, 'it.service.of'],
  ])('are refused by name: %j', (own, parameter) => {
    const refusal = expect(() => either(own));
    refusal.toThrow(RebuildInputError);
    refusal.toThrow(expect.objectContaining({ parameter }));
  });
});
