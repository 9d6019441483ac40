import type { ShellMatch } from '../bearings/index.js';
import { sayClearance } from '../bearings/internal.js';
import { describeGrindPlan } from '../crankshaft/index.js';
import type { Finding, Wording } from '../judging/index.js';
import { describeSpan, sayFinding } from '../judging/internal.js';
import { columns, type PageLine, type PageSection, section, wrap } from '../pages/index.js';
import { journalWords } from '../reading/index.js';
import type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
import { numberIn } from './number-in.js';
import { undecidedFor } from './undecided.js';
import { hasWork, unsettledOf } from './waiting.js';

const CONTRADICTION =
  'that contradicts the stamp on the shells and the size of the journal: measure the housing and the walls again';

/** The journals of one kind, what the shells found in them show, the decision and the shells that follow. */
export function bearingSection(
  group: BearingGroupReport,
  misread: readonly string[],
  wording: Wording,
): PageSection {
  const { units } = wording;
  const number = numberIn(units);
  const [decision, ...reasons] = describeGrindPlan(group.plan, wording);
  const fitted = group.bearings.flatMap(({ name, fitted, readAgain }) =>
    fitted && !readAgain
      ? wrap(
          `${name}, "${fitted.shells}": ${describeSpan(fitted.clearance, 'length', units)}; ${fitted.agrees ? sayClearance(fitted.explanation, wording) : CONTRADICTION}`,
          4,
        )
      : [],
  );
  const fromTheShelf = (chosen: (bearing: BearingReport) => ShellMatch | undefined) =>
    group.bearings.flatMap((bearing) => {
      const match = chosen(bearing);
      if (match === undefined) return [];
      return wrap(
        `${bearing.name}, "${match.shell.name}": ${sayFinding(match.finding, wording)}`,
        4,
      );
    });
  const forAsItIs = fromTheShelf(({ asItIs }) => asItIs?.shells);
  const shells = fromTheShelf((bearing) => bearing.shells);
  const undecided = undecidedFor(group.bearings, wording);
  const waits = misread.length > 0 ? misread : unsettledOf(group);
  const mayStay = group.bearings.some(({ asItIs }) => asItIs);
  const when =
    hasWork(group) && waits.length > 0
      ? `: none before ${waits.join(' and ')} ${waits.length === 1 ? 'is' : 'are'} read again; by the readings as they are,`
      : mayStay
        ? ', if all are to have one size:'
        : ':';
  return section(journalWords(group.kind).toUpperCase(), [
    ...columns(
      ['journal', 'smallest', 'largest', 'out-of-round', 'taper', 'along its length'],
      group.bearings.map(({ name, shape }) => [
        name,
        number(shape.smallest),
        number(shape.largest),
        number(shape.outOfRound),
        number(shape.taper),
        shape.form,
      ]),
    ),
    ...failed(
      group.bearings.flatMap(({ name, findings, readAgain }) =>
        readAgain ? [] : findings.map((finding) => ({ name, finding })),
      ),
      wording,
    ),
    ...(fitted.length > 0 ? ['As found, with the shells that were fitted:', ...fitted] : []),
    ...(undecided.length > 0
      ? undecided
      : [
          ...wrap(`Decision${when} ${decision}`, 2),
          ...reasons.flatMap((reason) => wrap(`  ${reason}`, 4)),
          ...(forAsItIs.length > 0
            ? ['Shells from the shelf for the journals as they are:', ...forAsItIs]
            : []),
          ...(shells.length > 0
            ? ['Shells from the shelf for the finished journals:', ...shells]
            : []),
        ]),
  ]);
}

function failed(
  judged: readonly { readonly name: string; readonly finding: Finding<'length'> }[],
  wording: Wording,
): readonly PageLine[] {
  return judged
    .filter(({ finding }) => finding.verdict !== 'within')
    .flatMap(({ name, finding }) => wrap(`${name}: ${sayFinding(finding, wording)}`, 2));
}
