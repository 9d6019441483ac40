import { inject } from 'vitest';

declare module 'vitest' {
  interface ProvidedContext {
    /** Whether this is `npm run test:deep`. */
    readonly deep: boolean;
  }
}

/** How many to try: a few in `npm test`, many in `npm run test:deep`. */
export const tries = (few: number, many: number): number => (inject('deep') ? many : few);
