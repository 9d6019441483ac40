import { compressionTest, leakDown, publishedCompressionRules } from '../cylinders/index.js';
import {
  compressionReading,
  LEAK_PLACES,
  orificeBore,
  readingsApart,
  testAir,
} from '../cylinders/internal.js';
import {
  accepting,
  fields,
  list,
  listOfDifferent,
  name,
  quantity,
  word,
} from '../reading/index.js';
import type { CompressionSheet } from './compression-sheet.js';

const reading = quantity('gaugePressure', compressionReading).exactOptional();
const within = quantity('pressure', readingsApart).exactOptional();
const air = quantity('gaugePressure', testAir);

/** A compression test, and a leakage test of the cylinders that had one. */
export const compressionTestSchema = fields({
  cylinders: list(
    fields({
      name,
      dry: reading,
      wet: reading,
      head: name.exactOptional(),
      leakage: fields({
        supply: air,
        held: air,
        orifice: quantity('length', orificeBore).exactOptional(),
        heardAt: listOfDifferent(word(...LEAK_PLACES)).exactOptional(),
      })
        .superRefine(accepting(leakDown))
        .exactOptional(),
    }),
  ),
  repeatsWithin: within,
  gaugeWithin: within,
}).superRefine(
  // The rules do not matter here: what is wrong with readings is so by all of them.
  accepting((test: CompressionSheet) =>
    hasReading(test)
      ? compressionTest({ ...withoutLeakage(test), rules: publishedCompressionRules() })
      : undefined,
  ),
);

/** Whether any cylinder was read on the compression gauge. */
export const hasReading = ({ cylinders }: CompressionSheet): boolean =>
  cylinders.some(({ dry }) => dry !== undefined);

/** The part of a sheet's test that the compression gauge read. */
export const withoutLeakage = ({ cylinders, ...errors }: CompressionSheet) => ({
  ...errors,
  cylinders: cylinders.map(({ leakage, ...read }) => read),
});
