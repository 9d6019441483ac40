import type { Accuracy } from './accuracy.js';

/** The same sizes as their best estimates: at 20 °C, and as if they were known exactly. */
export function bestEstimate({ growth }: Accuracy): Accuracy {
  const sure = Object.entries(growth).map(
    ([part, { factor }]) => [part, { factor, doubt: 0 }] as const,
  );
  return { reads: {}, growth: Object.fromEntries(sure) };
}
