import {
  type CompressionRule,
  compressionTest,
  type JudgedCompression,
  type LeakDown,
  leakDown,
  publishedCompressionRules,
} from '../cylinders/index.js';
import type { Length } from '../quantities/index.js';
import { hasReading, withoutLeakage } from './compression-schema.js';
import type { CompressionSheet, TestedCylinder } from './compression-sheet.js';

/** A compression test, judged, and the leakage tests. */
export interface CompressionReport {
  /** What was read of each cylinder. */
  readonly cylinders: readonly TestedCylinder[];
  /** The compression test by the rules of the sheet, else by those of other engines; absent if no cylinder was read. */
  readonly test?: JudgedCompression;
  /** The leakage test of each cylinder that had one. */
  readonly leakage: readonly {
    /** The cylinder. */
    readonly cylinder: string;
    /** What it lost, and where that went. */
    readonly leak: LeakDown;
  }[];
}

/** Judges a compression test by the rules that are given, and tells what the leakage tests say. */
export function inspectCompression(
  tested: CompressionSheet,
  rules: readonly CompressionRule[] = publishedCompressionRules(),
  bore?: Length,
): CompressionReport {
  return {
    cylinders: tested.cylinders,
    ...(hasReading(tested) && { test: compressionTest({ ...withoutLeakage(tested), rules }) }),
    leakage: tested.cylinders.flatMap(({ name: cylinder, leakage }) =>
      leakage
        ? [
            {
              cylinder,
              leak: leakDown({
                ...leakage,
                ...(bore !== undefined && { bore }),
                ...(tested.gaugeWithin !== undefined && { gaugeWithin: tested.gaugeWithin }),
              }),
            },
          ]
        : [],
    ),
  };
}
