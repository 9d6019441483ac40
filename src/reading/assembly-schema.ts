import { z } from 'zod';
import { type BoltPlace, threadAreas, threadOf, tighteningPlan } from '../fasteners/index.js';
import {
  adapterAngle,
  adapterLength,
  BOLT_GRADES,
  fastenerTorque,
  runningTorque,
  THREAD_CONDITIONS,
  THREAD_FORMS,
  threadDiameter,
  threadPitch,
  WRENCH_SCALES,
  type WrenchScale,
  wrenchLength,
} from '../fasteners/internal.js';
import { fitOf, inchFit } from '../fits/index.js';
import { INCH_FIT_CLASSES } from '../fits/internal.js';
import { diameter, stationAlong } from '../judging/internal.js';
import { ENGINE_MATERIALS } from '../measuring/internal.js';
import { rodCentres } from '../motion/internal.js';
import { newtonMetre, RebuildInputError } from '../quantities/index.js';
import {
  rockerArmRatio,
  springForce,
  springHeight,
  trainLength,
  trainTemperature,
  wantedLash,
} from '../valves/internal.js';
import type { AssemblyData, ThreadData } from './assembly-data.js';
import { chosen, fields, list, name, partial, word } from './fields.js';
import { statedLimits, statedLimitsOf } from './limit-fields.js';
import { marked } from './marks.js';
import { accepting } from './pieces.js';
import { quantity, sizeOrSpan, textAs, valueOrSpan } from './quantity-fields.js';
import { compressionSchema, dipperSchema, timingSchema } from './setting-up-schema.js';

/** A scale of a wrench; a space or a full stop stands for the raised dot, which keyboards lack. */
const wrench = marked(textAs('a unit of torque, e.g. "lbf ft"', scaleOf), {
  write: (scale: WrenchScale) => scale.replace('·', ' '),
});

function scaleOf(text: string): WrenchScale {
  const scale = WRENCH_SCALES.find((each) => each === text.trim().replace(/[\s.*-]+/, '·'));
  if (scale !== undefined) return scale;
  throw new RebuildInputError({
    parameter: 'text',
    value: text,
    expected: 'what a torque wrench is marked in',
    hint: `Write ${WRENCH_SCALES.map((each) => `"${each.replace('·', ' ')}"`).join(', ')}.`,
  });
}

const named = marked(
  textAs('the name of a thread, e.g. "3/8-24 UNF"', (text): ThreadData => {
    const { designation, form, diameter, pitch } = threadOf(text);
    return { designation, form, diameter, pitch };
  }),
  { write: ({ designation }: Partial<ThreadData>) => designation },
);
const special = fields({
  form: word(...THREAD_FORMS),
  diameter: quantity('length', threadDiameter),
  pitch: quantity('length', threadPitch),
}).superRefine(accepting(threadAreas));
const thread = chosen<ThreadData>([named, special], (value) =>
  typeof value === 'object' && value !== null ? special : named,
);

const place = quantity('length', stationAlong);
const bolts = list(fields({ name, along: place, across: place }), 2).superRefine(
  // A sequence can be made of them; it is the same for every torque. That they are too few is said already.
  accepting((all: readonly BoltPlace[]) =>
    all.length < 2 ? undefined : tighteningPlan({ bolts: all, torque: newtonMetre(1) }),
  ),
);

const fastener = partial({
  thread: thread.exactOptional(),
  grade: word(...BOLT_GRADES).exactOptional(),
  condition: word(...THREAD_CONDITIONS).exactOptional(),
  leastDiameter: quantity('length', threadDiameter).exactOptional(),
  torque: valueOrSpan('torque', fastenerTorque).exactOptional(),
  source: name.exactOptional(),
  prevailing: quantity('torque', runningTorque).exactOptional(),
  adapter: fields({
    wrench: quantity('length', wrenchLength),
    adapter: quantity('length', adapterLength),
    angle: quantity('angle', adapterAngle).exactOptional(),
  }).exactOptional(),
  bolts: bolts.exactOptional(),
  locking: word('pins', 'tabs', 'wire', 'locknuts', 'torque alone').exactOptional(),
  rounds: z.literal([2, 3], { error: 'must be 2 or 3, without quotes' }).exactOptional(),
}).exactOptional();

const pieces = list(
  fields({
    length: quantity('length', trainLength),
    material: word(...ENGINE_MATERIALS),
    temperature: quantity('temperature', trainTemperature),
  }),
);
const side = { carrier: pieces, train: pieces };
const spring = fields({
  height: quantity('length', springHeight),
  force: statedLimitsOf('force', springForce),
}).exactOptional();
const valve = partial({
  lash: statedLimits(wantedLash).exactOptional(),
  set: word('cold', 'hot').exactOptional(),
  setBy: word('screw', 'shims', 'stem').exactOptional(),
  train: fields({
    ...side,
    rocker: fields({ ...side, ratio: quantity('ratio', rockerArmRatio) }).exactOptional(),
  }).exactOptional(),
  closedSpring: spring,
  openSpring: spring,
}).exactOptional();

const isoFit = name.superRefine(accepting(fitOf));
const fit = fields({
  name,
  isoFit: isoFit.exactOptional(),
  inchFit: fields({
    fitClass: word(...INCH_FIT_CLASSES),
    basic: quantity('length', diameter),
  })
    .superRefine(accepting(inchFit))
    .exactOptional(),
  clearance: statedLimits().exactOptional(),
  hole: sizeOrSpan(diameter).exactOptional(),
  shaft: sizeOrSpan(diameter).exactOptional(),
}).refine(({ isoFit, inchFit }) => isoFit === undefined || inchFit === undefined, {
  error: 'has two classes, isoFit and inchFit; leave one out',
});

/** What the engine is set to as it goes together: the same of a sheet and of a shed. */
export const assemblySchema = partial({
  wrench: wrench.exactOptional(),
  fasteners: partial({
    mainCaps: fastener,
    rodCaps: fastener,
    head: fastener,
    flywheel: fastener,
  }).exactOptional(),
  valves: partial({ inlet: valve, exhaust: valve }).exactOptional(),
  rings: partial({
    sideClearance: statedLimits().exactOptional(),
    backClearance: statedLimits().exactOptional(),
  }).exactOptional(),
  rodLength: quantity('length', rodCentres).exactOptional(),
  compression: compressionSchema.exactOptional(),
  timing: timingSchema.exactOptional(),
  dipper: dipperSchema.exactOptional(),
  fits: list(fit).exactOptional(),
} satisfies { readonly [K in keyof Required<AssemblyData>]: z.ZodType });
