import {
  type GrindRequest,
  grindPlan,
  inch,
  type JournalToGrind,
  type Length,
  mm,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';
import { asNew, journal, rods } from './journals.js';

const good = rods(asNew);
const withField = (field: string, value: unknown) => () =>
  grindPlan({ ...good, [field]: value } as GrindRequest);
const withJournal = (field: string, value: unknown) => () =>
  grindPlan({ ...good, journals: [{ ...journal(asNew), [field]: value } as JournalToGrind] });

describe('grindPlan refuses', () => {
  it.each(notNumbers.map((value) => [value]))('the size %s', (value) => {
    for (const field of ['smallest', 'largest', 'outOfRound', 'taper']) {
      expect(refusal(withJournal(field, value)).parameter).toBe(`journals[0].${field}`);
    }
    expect(refusal(withField('steps', [value])).parameter).toMatch(/^steps/);
    expect(refusal(withField('shellsAtHand', [value])).parameter).toMatch(/^shellsAtHand/);
    // Left out, or a null that stands for it, these have a default.
    if (value === undefined || value === null) return;
    expect(refusal(withJournal('runout', value)).parameter).toBe('journals[0].runout');
    for (const field of ['minimum', 'sizeAllowance']) {
      expect(refusal(withField(field, value)).parameter).toBe(field);
    }
  });

  it.each([
    ['journals', [], 'journals'],
    ['journals', undefined, 'journals'],
    ['journals', [null], 'journals[0]'],
    ['steps', [], 'steps'],
    ['steps', undefined, 'steps'],
    ['steps', [mm(-0.25)], 'steps[0]'],
    ['standard', { min: inch(2.125), max: inch(2.1245) }, 'standard'],
    ['standard', 2.125, 'standard'],
    ['standard', undefined, 'standard'],
    ['shellsAtHand', 'all', 'shellsAtHand'],
    ['cleanUpAllowance', mm(-1), 'cleanUpAllowance'],
    ['sizeAllowance', mm(-1), 'sizeAllowance'],
    ['minimum', 2 as Length, 'minimum'],
    ['wear', 'even', 'wear'],
    ['shape', { limits: {} }, 'shape.limits'],
    ['shape', 5, 'shape'],
  ])('%s of %j', (field, value, parameter) => {
    expect(refusal(withField(field, value)).parameter).toBe(parameter);
  });

  it.each([
    ['name', '', 'journals[0].name'],
    ['name', undefined, 'journals[0].name'],
    ['smallest', inch(2.13), 'journals[0]'],
    ['outOfRound', mm(0.5), 'journals[0].outOfRound'],
    ['runout', mm(-0.01), 'journals[0].runout'],
  ])('a journal with a %s of %j', (field, value, parameter) => {
    expect(refusal(withJournal(field, value)).parameter).toBe(parameter);
  });

  it('a journal that cannot have worn from the standard size', () => {
    const grown = { ...asNew, largest: 21_250 + 40 };
    const error = refusal(() => grindPlan(rods(grown)));
    expect(error.message).toContain('at most 0.1 mm above the standard');
    expect(grindPlan(rods({ ...asNew, largest: 21_250 + 39 })).outcome).toBe('grind');
  });

  it('steps that leave no journal', () => {
    const tiny = {
      journals: [{ ...journal(asNew), smallest: mm(3.1), largest: mm(3.1) }],
      standard: { min: mm(3.2), max: mm(3.21) },
    };
    expect(refusal(() => grindPlan({ ...tiny, steps: [mm(5)] })).message).not.toBe('');
  });

  it.each([undefined, null, 5, []])('%j for a request', (value) => {
    expect(refusal(() => grindPlan(value as unknown as GrindRequest)).parameter).toBe('request');
  });
});
