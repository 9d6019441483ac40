import { repeatsIn } from '../measuring/internal.js';
import { type Accuracy, accuracyOf } from '../reading/index.js';
import type { Shed } from './shed.js';

/** How well the sizes of a shed are known, with what was read again on any of its parts. */
export function accuracyOfShed(shed: Shed): Accuracy {
  const { crankshafts = [], blocks = [], toBuy = {} } = shed;
  const shafts = [...crankshafts, ...(toBuy.crankshafts ?? [])];
  const journals = shafts.flatMap((each) => [
    ...(each.rodJournals ?? []),
    ...(each.mainJournals ?? []),
  ]);
  const bores = [...blocks, ...(toBuy.blocks ?? [])].flatMap((each) => each.bores ?? []);
  return accuracyOf(shed, {
    micrometer: journals.map(({ readings = [] }) => repeatsIn(readings)),
    boreGauge: bores.map(({ readings = [] }) => repeatsIn(readings)),
  });
}
