/**
 * All the parts you have for one kind of engine: read the shed file, and find out what to do with
 * each part.
 *
 * @packageDocumentation
 */
export {
  type Bench,
  type BoreKind,
  type EngineKind,
  type FarReading,
  FileError,
  type FileProblem,
  type Happening,
  type HiddenOval,
  type HowRead,
  type InstrumentName,
  type InstrumentOfBench,
  type InstrumentsOfBench,
  type JournalKind,
  type JsonSchema,
  type Locking,
  type NeededPart,
  type Price,
  type ReadWarmPart,
  type ShellPairs,
  type StarterFile,
  type StatedLimits,
  type WarmthOfBench,
} from '../reading/index.js';
export type { AsWritten } from './as-written.js';
export type { Consequence, Fault } from './faults.js';
export type { PartTest, Testable } from './history.js';
export { shedSchema } from './json-schema.js';
export { type NewShed, newShed } from './new-shed.js';
export type { Condition, Core, HistoryEntry, Noted, Owned, Part } from './part.js';
export { readShed } from './read-shed.js';
export { readingsToFill } from './readings-to-fill.js';
export { afterMachining } from './record/after-machining.js';
export { describeShedDifference } from './record/describe-shed-difference.js';
export { diffSheds } from './record/diff-sheds.js';
export type {
  CoreDifference,
  MachinedPlace,
  PartDifference,
  ShedDifference,
} from './record/diff-types.js';
export { emptyBoxes } from './record/empty-boxes.js';
export { outsideLimits } from './record/outside-limits.js';
export { workSchema } from './record/work-schema.js';
export type { Section } from './sections.js';
export type {
  BlockPart,
  BorePlace,
  Counted,
  CrankshaftPart,
  HeadPart,
  HousingPlace,
  JournalPlace,
  MachiningOffer,
  Offered,
  Offers,
  OtherPart,
  Parts,
  PistonPlace,
  PistonSetPart,
  RingSetPart,
  RodsPart,
  Shed,
  ShellPart,
  ThrustWasherPart,
  ValveSetPart,
} from './shed.js';
export type { Made, MadeShells, MadeSleeves, MadeWashers, ToMake } from './to-make.js';
export type { CoreTest, TriagedCore } from './triage/core-types.js';
export { describePart, triageReport } from './triage/describe-triage.js';
export type { Misread } from './triage/misread-types.js';
export type { NeededTest } from './triage/needed-test.js';
export type { JudgedWhat, NotJudged } from './triage/not-judged-types.js';
export type { MeasuredWhat, NotMeasured } from './triage/not-measured-types.js';
export type { TooFar } from './triage/too-far-types.js';
export { triage } from './triage/triage.js';
export type {
  AgainReason,
  Disposition,
  Job,
  Triage,
  TriagedPart,
  TriageReason,
} from './triage/triage-types.js';
export type { Trouble } from './triage/troubles.js';
export type { Until } from './triage/until.js';
export type { DoneWork, Work } from './works.js';
export { writeShed } from './write-shed.js';
