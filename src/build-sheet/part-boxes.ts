import type { SizeOrSpan, Wording } from '../judging/index.js';
import { spanOf } from '../judging/internal.js';
import type { Build } from '../planning/index.js';
import { spanNumber } from '../planning/internal.js';
import { type Length, tradeUnit } from '../quantities/index.js';
import type { EngineKind } from '../reading/index.js';
import type { Shed } from '../shed/index.js';
import { undoneBy } from '../shed/internal.js';
import type { SizeBox } from './boxes.js';
import { sizeText } from './limit-cells.js';
import { type PartSize, partSizes } from './part-sizes.js';

/** The boxes for the sizes of whole parts: one for a size, two for the smallest and the largest of several alike. */
export function partBoxes(
  build: Build,
  engine: EngineKind,
  shed: Shed,
  wording: Wording,
): readonly SizeBox[] {
  return partSizes(build, engine).flatMap((size) => {
    const { part, field, holds, limits, see = 'no limit stated' } = size;
    const box = {
      shouldBe: sizeBefore(size, build, shed, wording),
      mayBe: limits ? sizeText(limits.limits, wording) : see,
      reading: '',
    };
    return holds === 'span'
      ? ['smallest', 'largest'].map((at) => ({ part, feature: field, at, ...box }))
      : [{ part, feature: field, ...box }];
  });
}

/** What the shed file says that it measures, as far as that still holds. */
function sizeBefore(
  { section, part, field }: PartSize,
  { jobs, endPlay, parts }: Build,
  shed: Shed,
  wording: Wording,
): string {
  const say = (size: SizeOrSpan<Length>) =>
    `${spanNumber(spanOf(size), wording)} ${tradeUnit('length', wording.units).symbol}`;
  const isMade = parts.some(({ name, made }) => name === part && made);
  if (isMade && endPlay?.madeTo !== undefined) return say(endPlay.madeTo);
  const isUndone = jobs.some(
    (job) =>
      job.part === part &&
      undoneBy(job.work).some(({ list, fields }) => list === undefined && fields.includes(field)),
  );
  if (isUndone) return 'changed by the work on it';
  const all = [shed[section] ?? [], shed.toBuy?.[section] ?? []].flat() as unknown as readonly {
    readonly name: string;
    readonly [size: string]: unknown;
  }[];
  const before = all.find(({ name }) => name === part)?.[field];
  return before === undefined ? 'not measured before' : say(before as SizeOrSpan<Length>);
}
