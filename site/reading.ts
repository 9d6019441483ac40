import { type Dimension, parse, RebuildInputError } from '../src/quantities/index.js';
import { complaintOf } from '../src/quantities/internal.js';
import type { FormulaCard } from './cards.js';
import { type AnyUnit, symbolAfter } from './units.js';

/** A number without a unit behind it, as people write numbers. */
const BARE = /^[+\-−]?[\d\s./\-−]*(?:e[+-]?\d+)?$/i;

/** Reads what stands in a field: with a unit of its own, `2-1/8 in`, or in the unit chosen beside it. */
export const readField = (text: string, unit: AnyUnit): number =>
  parse<Dimension>(BARE.test(text.trim()) ? text + symbolAfter(unit) : text, unit.dimension);

/** The letter of a card that a refusal names; undefined if it names none of them. */
export const letterRefused = (
  { letters }: FormulaCard,
  { parameter }: RebuildInputError,
): string | undefined => Object.entries(letters).find(([, { field }]) => field === parameter)?.[0];

/**
 * What a page says of a refusal. The hint of a domain tells a programmer to wrap the number in its unit; a
 * reader of the page has chosen the unit, and is told what is taken beside the field.
 */
export function refusalText(error: RebuildInputError): string {
  const complaint = complaintOf(error);
  return error.example === undefined ? `${complaint}. ${error.hint}` : `${complaint}.`;
}

/** Whether that is a refusal; anything else is a fault of the page. */
export const isRefusal = (error: unknown): error is RebuildInputError =>
  error instanceof RebuildInputError;
