/** A test that a part has had. */
export interface PartTest {
  /** What it was tested for: cracks, or softening of its metal by heat. */
  readonly for: 'cracks' | 'softening';
  /** How, for example with magnetic particles. */
  readonly how: string;
  /** Who tested it. */
  readonly by?: string;
  /** Whether any was found. */
  readonly found: 'none' | 'some';
}

/** Everything that a part can be tested for. */
export const TESTED_FOR = ['cracks', 'softening'] as const satisfies readonly PartTest['for'][];

/** A part that may have been tested. */
export interface Testable {
  /** The tests it has had, since whatever happened to it. */
  readonly tested?: readonly PartTest[];
}

/** Whether tests show that a part is free of something. */
export function isClear(tested: readonly PartTest[], of: PartTest['for']): boolean {
  const its = tested.filter((test) => test.for === of);
  return its.length > 0 && its.every(({ found }) => found === 'none');
}

/** Whether a test found something. */
export function isFound(tested: readonly PartTest[], of: PartTest['for']): boolean {
  return tested.some((test) => test.for === of && test.found === 'some');
}
