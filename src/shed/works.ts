/** The kinds of work a shop can do. */
export const WORKS = [
  'crack test',
  'straighten',
  'grind main journals',
  'grind rod journals',
  'bore',
  'sleeve',
  'resize housings',
  'stitch',
  'weld',
  'pressure test',
  'skim head',
  'recut seats',
  'reface valves',
] as const;

/** A kind of work a shop can do. */
export type Work = (typeof WORKS)[number];

/** Work that was done on a part. */
export interface DoneWork {
  /** What was done. */
  readonly work: Work;
  /** The undersize or oversize it was done to, as the shop calls it. */
  readonly step?: string;
  /** The places it was done on; by default all. */
  readonly places?: readonly string[];
}

/** Work that only shows whether a part is sound. A plan asks for it even if no shop on the list offers it. */
export const TESTS = ['crack test', 'pressure test'] as const satisfies readonly Work[];

/** Whether work is a test. */
export const isTest = (work: Work): work is (typeof TESTS)[number] =>
  TESTS.some((test) => test === work);
