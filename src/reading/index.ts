// What the other rooms use of this one. It is not an entry point: users never see it.

export { gapOf } from '../measuring/internal.js';
export { type Accuracy, accuracyOf, at20C, readingsAt20C, readWith } from './accuracy.js';
export type {
  AssemblyData,
  FastenerData,
  FastenersData,
  FitData,
  Locking,
  RingsData,
  SpringData,
  ThreadData,
  TrainData,
  TrainPieceData,
  TrainSideData,
  ValveData,
  ValvesData,
} from './assembly-data.js';
export { assemblySchema } from './assembly-schema.js';
export { aboveAtNoStep, belowAtNoStep } from './at-no-step.js';
export { bareSteps, stepsIn } from './bare-steps.js';
export {
  type Bench,
  INSTRUMENT_WORDS,
  INSTRUMENTS,
  type InstrumentName,
  type InstrumentOfBench,
  type InstrumentsOfBench,
  type ReadWarmPart,
  type WarmthOfBench,
} from './bench.js';
export { benchFields } from './bench-fields.js';
export { bestEstimate } from './best-estimate.js';
export { boreRequest } from './bore-request.js';
export { isByRule, sayByRule } from './by-rule.js';
export {
  budgetOf,
  certaintyOf,
  type ReadFeature,
  undescribed,
} from './certainty.js';
export { type Check, checkIfGiven, problemsFrom } from './check.js';
export { editJson } from './edit-json.js';
export type {
  BoreKind,
  EngineKind,
  JournalKind,
  NeededPart,
} from './engine-kind.js';
export { type FarReading, farReadings } from './far-readings.js';
export { chosen, count, fields, list, listOfDifferent, name, partial, word } from './fields.js';
export { FileError } from './file-error.js';
export type { FileProblem } from './file-problem.js';
export { readJson, tooLong } from './file-text.js';
export {
  canHold,
  chanceOutside,
  type GuardBand,
  type Known,
  marginOf,
  oilLimits,
  pistonsInBores,
  ringsFit,
  sameStep,
  widthOf,
} from './fits.js';
export { type Given, isObject, rawItems } from './given.js';
export { grindNames, grindRequest } from './grind-request.js';
export { CRACK_TEST, HAPPENED, HAPPENINGS, type Happening, HITS_THE_BLOCK } from './happenings.js';
export { anglesOf, type HiddenOval, type HowRead, howWellRead, type WasRead } from './how-read.js';
export { howWell } from './how-well.js';
export { inInches } from './in-inches.js';
export { journalWords } from './journal-words.js';
export { type JsonSchema, jsonSchemaOf } from './json-schema.js';
export { statedLimits } from './limit-fields.js';
export { marked } from './marks.js';
export { didYouMean, either, isSlipOf, shortFor } from './nearest.js';
export { withoutOwnFields } from './own-fields.js';
export {
  accepting,
  asBore,
  asJournal,
  asReadSoFar,
  boreFields,
  boreFieldsSoFar,
  housingBore,
  journalFields,
  journalFieldsSoFar,
  journalKind,
  placeIn,
  ring,
  shellFields,
} from './pieces.js';
export { type Price, parsePrice, writePrice } from './price.js';
export { NEW_FILE, printJson } from './print-json.js';
export { oversize, quantity, sizeOrSpan, span, stepsOf, textAs } from './quantity-fields.js';
export { givenIn, readSections } from './read-sections.js';
export { lineOf, type ReadingRow, readingRows } from './readings-csv.js';
export { type Gaps, isLost } from './salvage.js';
export { differenceIn, isSameData } from './same-data.js';
export { boreSeen, journalSeen } from './seen-shapes.js';
export type {
  CompressionData,
  CompressionRuleData,
  DipperData,
  PlaceData,
  SparkData,
  TimingData,
} from './setting-up-data.js';
export type { ShellPairs } from './shell-pairs.js';
export {
  areSwapped,
  guardClearanceLimits,
  guardEndPlayLimits,
  guardHousing,
  guardMinimum,
  guardRingGapLimits,
  guardWall,
  refuseSwapped,
} from './sizes.js';
export {
  CYLINDERS,
  MAINS,
  numbered,
  type StarterFile,
  standardIn,
  UNIT_OF,
} from './starter.js';
export { own, type StatedLimits, statedBasis } from './stated-limits.js';
export { guardJournal } from './stray-readings.js';
export { type FileKind, fileKind, guardKind, IS_FILE, otherFile } from './which-file.js';
export { writeData } from './write-data.js';
export { writeQuantity } from './write-quantity.js';
