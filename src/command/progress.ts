import type { PlanProgress } from '../planning/index.js';
import type { Io } from './io.js';

/** A shorter search shows no progress [s]. */
const PATIENCE = 1;
const ERASE = '\r\u001b[K';

/** A line that shows the progress of a long search. It appears on a terminal only, and is erased at the end. */
export interface ProgressLine {
  readonly show: (progress: PlanProgress) => void;
  readonly erase: () => void;
}

export function progressLine(io: Pick<Io, 'complain' | 'complaintsAreOnTerminal'>): ProgressLine {
  let shown = '';
  return {
    show: ({ stage, elapsed }) => {
      if (!io.complaintsAreOnTerminal || elapsed < PATIENCE) return;
      const line = `planning: ${stage}, ${Math.floor(elapsed)} s`;
      if (line !== shown) io.complain(`${ERASE}${line}`);
      shown = line;
    },
    erase: () => {
      if (shown !== '') io.complain(ERASE);
      shown = '';
    },
  };
}
