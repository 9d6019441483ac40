import type { BasedLimits, Finding, OwnLimits, SizeOrSpan, Span } from '../judging/index.js';
import {
  diameter,
  guardFields,
  guardList,
  guardSpan,
  guardText,
  judgeSpan,
  sizeStep,
  spanOf,
  type WithTarget,
} from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { clearanceLeft, oilClearanceLimits, oilClearanceSpan } from './clearance.js';
import { shellWall } from './domains.js';

/** A pair of half shells on the shelf. */
export interface Shell {
  /** What it is called on the shelf. */
  readonly name: string;
  /** The undersize it is made for, on the diameter; 0 for standard [m]. */
  readonly undersize: Length;
  /** Measured wall of one half at its crown, or the span of several [m]. */
  readonly wall: SizeOrSpan<Length>;
}

/** What `matchShells` looks for. */
export interface ShellSearch extends OwnLimits<'length'> {
  /** The journal, as it is or as it will be ground [m]. */
  readonly journal: SizeOrSpan<Length>;
  /** The housing bore with its cap torqued and no shells [m]. */
  readonly housingBore: SizeOrSpan<Length>;
  /** Every shell on the shelf that is of the right kind. */
  readonly shells: readonly Shell[];
}

const SEARCH = [
  'journal',
  'housingBore',
  'shells',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;
const SHELL = ['name', 'undersize', 'wall'] as const;

/** One shell tried in one bearing. */
export interface ShellMatch {
  /** The shell tried. */
  readonly shell: Shell;
  /** Diametral clearance it leaves [m]. */
  readonly clearance: Span<Length>;
  /** The worse end of that clearance against the limits. */
  readonly finding: Finding<'length'>;
  /** Whether both ends of the clearance are within the limits. */
  readonly fits: boolean;
}

/**
 * Tries every shell on the shelf in one bearing and ranks them: the one whose
 * clearance stays furthest inside its limits first, the worst misfit last.
 * Sizes decide, not the number stamped on the back.
 *
 * @param search - journal, housing bore, the shells, and the limits if they are known [m]
 * @returns every shell, best first; equals keep the order of the shelf
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is
 * reversed, a shell was never one bearing with the two, or the shelf is empty
 * @see Source: geometry; the default limits are common practice
 * @example
 * ```ts
 * const ranked = matchShells({
 *   journal: inch(2.105), housingBore: inch(2.251),
 *   shells: [
 *     { name: 'standard', undersize: thou(0), wall: inch(0.0620) },
 *     { name: '20 under', undersize: thou(20), wall: inch(0.0720) },
 *   ],
 * });
 * ranked.map(({ shell, fits }) => [shell.name, fits]); // [["20 under", true], ["standard", false]]
 * ```
 */
export function matchShells(search: ShellSearch): readonly ShellMatch[] {
  guardFields('search', search as WithTarget<ShellSearch>, SEARCH);
  const journal = guardSpan('journal', search.journal, diameter);
  const housingBore = guardSpan('housingBore', search.housingBore, diameter);
  guardList('shells', search.shells, 1, 'shell');
  search.shells.forEach((shell, i) => {
    guardShell(`shells[${i}]`, shell);
    oilClearanceSpan({ journal, housingBore, shellWall: shell.wall });
  });
  const allowed = oilClearanceLimits('search', search, journal.max);
  return rankShells({ journal, housingBore, shells: search.shells }, allowed);
}

/** The same of sizes and limits that were checked. */
export function rankShells(
  { journal, housingBore, shells }: Pick<ShellSearch, 'journal' | 'housingBore' | 'shells'>,
  allowed: BasedLimits<'length'>,
): readonly ShellMatch[] {
  return shells
    .map((shell): ShellMatch => {
      const clearance = clearanceLeft(spanOf(housingBore), spanOf(shell.wall), spanOf(journal));
      const finding = judgeSpan({
        feature: 'oil clearance',
        dimension: 'length',
        value: clearance,
        ...allowed,
      });
      return { shell, clearance, finding, fits: finding.verdict === 'within' };
    })
    .sort((a, b) => b.finding.margin - a.finding.margin);
}

function guardShell(at: string, shell: Shell): void {
  guardFields(at, shell, SHELL);
  guardText(`${at}.name`, shell.name);
  sizeStep(`${at}.undersize`, shell.undersize);
  guardSpan(`${at}.wall`, shell.wall, shellWall);
}
