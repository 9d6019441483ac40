import { guardLayout } from '../judging/internal.js';
import type { Inspection } from '../sheet/index.js';
import { inspectionLayout } from '../sheet/layouts.js';
import type { ShownClearance } from './clearance-row.js';

/**
 * Every clearance of an inspection, for `clearancesPicture`: bearings as they were found and as they will be, end play,
 * pistons, ring gaps, valve guides and fits. One that was not measured is among them.
 *
 * @param inspection - what `inspect` gave
 * @returns the clearances, in the order of the report
 * @throws {RebuildInputError} when the inspection is not what `inspect` gives
 * @example
 * ```ts
 * const sheet = readSheet({
 *   version: 1, engine: 'pump set', units: 'inch',
 *   crankshaft: { endPlay: { readings: [{ pushed: '0 thou', pulled: '7 thou' }] } },
 * });
 * const [first] = clearancesOf(inspect(sheet));
 * first?.name; // "end play"
 * ```
 */
export function clearancesOf(inspection: Inspection): readonly ShownClearance[] {
  guardLayout('inspection', inspection, inspectionLayout, 'inspect');
  const { mains, rods, endPlay, cylinders, valves, assembly } = inspection;
  return [
    ...[mains, rods].flatMap((group) => (group ? bearingsOf(group) : [])),
    endPlay
      ? { name: 'end play', finding: endPlay.finding, span: endPlay.span }
      : { name: 'end play' },
    ...cylinders.flatMap(ofCylinder),
    ...valves.flatMap(({ name, findings }) => {
      const finding = findings.find(({ feature }) => feature === 'guide clearance');
      return finding ? [{ name: `${name}: guide clearance`, finding }] : [];
    }),
    ...(assembly?.fits ?? []).map(({ name, finding, clearance }) => ({
      name,
      ...(finding && { finding }),
      ...(clearance && { span: clearance }),
    })),
  ];
}

function bearingsOf({ bearings }: NonNullable<Inspection['rods']>): readonly ShownClearance[] {
  return bearings.flatMap(
    ({ name, fitted, shells, mayFit, readAgain }): readonly ShownClearance[] => {
      const planned = shells ?? mayFit;
      const found = `${name}: oil clearance as found`;
      if (readAgain) return [{ name: found, readAgain: true }];
      return [
        fitted
          ? {
              name: `${found}, "${fitted.shells}"`,
              finding: fitted.explanation.finding,
              span: fitted.clearance,
            }
          : { name: found },
        ...(planned
          ? [
              {
                name: `${name}: oil clearance as planned, "${planned.shell.name}"`,
                finding: planned.finding,
                span: planned.clearance,
              },
            ]
          : []),
      ];
    },
  );
}

function ofCylinder({
  name,
  piston,
  rings,
  readAgain,
}: Inspection['cylinders'][number]): readonly ShownClearance[] {
  const again = readAgain ? ({ readAgain: true } as const) : {};
  const its = `${name}: piston clearance`;
  return [
    {
      name: its,
      ...(piston?.finding && { finding: piston.finding }),
      ...(piston && { span: piston.clearance }),
      ...again,
    },
    ...(rings.length === 0
      ? [{ name: `${name}: ring gaps` }]
      : rings.map((ring) => ({
          name: `${name}: gap of ${ring.name}`,
          finding: ring.filing.finding,
          span: ring.travel,
          ...again,
        }))),
  ];
}
