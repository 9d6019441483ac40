import { RebuildInputError } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { guardLayout, type Layout } from '../../src/judging/layout.js';

const span: Layout = { fields: { min: 'number', max: 'number' } };
const layout = {
  by: 'outcome',
  variants: [
    {
      fields: {
        outcome: { oneOf: ['grind', 'use as it is'] },
        target: { either: ['number', span] },
        journals: { list: { fields: { name: 'string', 'runout?': 'number' } } },
        fits: 'boolean',
      },
    },
    { fields: { outcome: { oneOf: ['none'] }, line: { list: span, length: 2 } } },
    {
      fields: {
        outcome: { oneOf: ['leaks'] },
        leak: {
          either: [
            { fields: { drops: 'number', 'size?': 'number' } },
            { fields: { flow: 'number' } },
          ],
        },
      },
    },
  ],
} satisfies Layout;

const ends = { min: 1, max: 2 };
const grind = {
  outcome: 'grind',
  target: ends,
  journals: [{ name: 'rod 1', runout: 0 }],
  fits: true,
};
const none = { outcome: 'none', line: [ends, ends] };
const leaks = { outcome: 'leaks', leak: { drops: 1 } };

const guard = (value: unknown) => guardLayout('plan', value, layout, 'grindPlan');

/** The place that is refused, and what is expected there. */
function refusalOf(value: unknown): { readonly parameter: string; readonly expected: string } {
  try {
    guard(value);
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    return { parameter: error.parameter, expected: error.expected };
  }
  throw new Error('It is taken.');
}

describe('what is laid out as it should be', () => {
  it.each([
    ['every field', grind],
    ['another word', { ...grind, outcome: 'use as it is' }],
    ['a field less that may be absent', { ...grind, journals: [{ name: 'rod 1' }] }],
    ['such a field undefined', { ...grind, journals: [{ name: 'rod 1', runout: undefined }] }],
    ['no items', { ...grind, journals: [] }],
    ['a number for a span', { ...grind, target: -0 }],
    ['another variant', none],
    ['one object of two', leaks],
    ['the other object of two', { ...leaks, leak: { flow: 1 } }],
    ['an object without a prototype', Object.assign(Object.create(null), none)],
  ])('is taken: %s', (_, value) => {
    expect(() => guard(value)).not.toThrow();
    expect(() => guard(JSON.parse(JSON.stringify(value)))).not.toThrow();
  });
});

it('is guarded besides, at its place, where it can be laid out well and yet not be', () => {
  const inOrder = (parameter: string, { min, max }: { min: number; max: number }) => {
    if (min <= max) return;
    throw new RebuildInputError({ parameter, value: min, expected: 'less', hint: 'Swap them.' });
  };
  const spans: Layout = { list: { ...span, also: inOrder } };
  guardLayout('spans', [ends], spans, 'grindPlan');
  const reversed = [ends, { min: 2, max: 1 }];
  expect(() => guardLayout('spans', reversed, spans, 'grindPlan')).toThrow('spans[1]: 2 is not');
});

describe('what is not', () => {
  it.each<[value: unknown, parameter: string, expected: string]>([
    [undefined, 'plan', 'an object with named fields'],
    [null, 'plan', 'an object with named fields'],
    [[], 'plan', 'an object with named fields'],
    ['grind', 'plan', 'an object with named fields'],
    [new Date(0), 'plan', 'an object with named fields'],
    [new Map(), 'plan', 'an object with named fields'],
    [{}, 'plan.outcome', '"grind" or "use as it is" or "none" or "leaks"'],
    [
      { ...grind, outcome: 'bore' },
      'plan.outcome',
      '"grind" or "use as it is" or "none" or "leaks"',
    ],
    [{ ...grind, step: 1 }, 'plan.step', 'a known field'],
    [{ ...none, journals: [] }, 'plan.journals', 'a known field'],
    [JSON.parse('{ "outcome": "none", "__proto__": {} }'), 'plan.__proto__', 'a known field'],
    [{ ...grind, fits: 1 }, 'plan.fits', 'true or false'],
    [{ ...grind, journals: {} }, 'plan.journals', 'a list'],
    [
      { ...grind, journals: [grind.journals[0], null] },
      'plan.journals[1]',
      'an object with named fields',
    ],
    [{ ...grind, journals: new Array(1) }, 'plan.journals[0]', 'an object with named fields'],
    [{ ...grind, journals: [{}] }, 'plan.journals[0].name', 'text'],
    [{ ...grind, journals: [{ name: new String('rod 1') }] }, 'plan.journals[0].name', 'text'],
    [
      { ...grind, journals: [{ name: 'rod 1', runout: null }] },
      'plan.journals[0].runout',
      'a finite number',
    ],
    [{ ...grind, target: 'wide' }, 'plan.target', 'a finite number or an object with named fields'],
    [
      { ...grind, target: Number.NaN },
      'plan.target',
      'a finite number or an object with named fields',
    ],
    [{ ...grind, target: { min: 1 } }, 'plan.target.max', 'a finite number'],
    [{ ...grind, target: { min: 1, max: Number.NaN } }, 'plan.target.max', 'a finite number'],
    [{ ...grind, target: { min: -Infinity, max: 1 } }, 'plan.target.min', 'a finite number'],
    [{ ...grind, target: { min: -1e100, max: 1 } }, 'plan.target.min', 'a finite number'],
    [{ ...grind, target: { min: '1', max: 1 } }, 'plan.target.min', 'a finite number'],
    [{ ...none, line: [ends] }, 'plan.line', 'a list of 2'],
    [{ ...none, line: [ends, { min: 1 }] }, 'plan.line[1].max', 'a finite number'],
    [{ ...leaks, leak: {} }, 'plan.leak.drops', 'a finite number'],
    [{ ...leaks, leak: { drops: 1, flow: 1 } }, 'plan.leak.flow', 'a known field'],
    [{ ...leaks, leak: { flow: 1, size: 1 } }, 'plan.leak.size', 'a known field'],
  ])('is refused where it is wrong: %j', (value, parameter, expected) => {
    expect(refusalOf(value)).toEqual({ parameter, expected });
  });

  it('is answered by what to pass on', () => {
    expect(() => guard({ ...grind, fits: undefined })).toThrow(
      'plan.fits: is missing; expected true or false. Pass on what grindPlan gives.',
    );
  });
});
