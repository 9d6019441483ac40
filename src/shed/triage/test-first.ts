import type { Wording } from '../../judging/index.js';
import { type PageSection, section, task, wrap } from '../../pages/index.js';
import type { Section } from '../sections.js';
import { whyFirst } from './describe-tests.js';
import type { NeededTest } from './needed-test.js';

/** A part with a test it needs. */
export interface TestedPart {
  readonly section: Section;
  readonly name: string;
  readonly test: NeededTest;
  /** What else to say of the test, to follow its reason. */
  readonly more?: string;
}

/** What to do before anything else: the parts to test for cracks, those of engines that broke first. */
export function testFirst(
  parts: readonly TestedPart[],
  then: string,
  wording: Wording,
): readonly PageSection[] {
  const all = parts.filter(({ test }) => test.when === 'first');
  if (all.length === 0) return [];
  const isBroken = ({ test }: TestedPart) => test.because.length > 0;
  const inOrder = [...all.filter(isBroken), ...all.filter((part) => !isBroken(part))];
  return [
    section('TEST FIRST', [
      ...wrap(`${BEFORE_ALL} If a crack shows, list the part as cracked and ${then}`, 0),
      ...inOrder.map((part, i) =>
        task(i + 1, `${part.name}: ${whyFirst(part.test, part, wording)}${part.more ?? ''}`),
      ),
    ]),
  ];
}

const BEFORE_ALL =
  'Have these parts crack-tested before anything else: before you use them, and before you spend money on them.';
