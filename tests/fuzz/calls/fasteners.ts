import {
  boltStrength,
  boltStretch,
  degree,
  describeTighteningPlan,
  describeTorqueSetting,
  inch,
  jointUnderLoad,
  lbf,
  lbfFoot,
  lbfInch,
  lbfPerInch,
  MPa,
  memberStiffness,
  mm,
  nearestThreads,
  newtonMetre,
  nextSlot,
  nutFactor,
  permanentStretch,
  preloadFromTorque,
  psi,
  ratio,
  screwTorque,
  thou,
  threadAreas,
  threadOf,
  threadsIn,
  tighteningPlan,
  tighteningTorque,
  torqueSetting,
  unknownBolt,
  wrenchSetting,
} from 'crankwright';
import { calls, refused } from './calls.js';

const thread = { form: 'unified', diameter: inch(0.375), pitch: inch(1 / 24) } as const;
const { span } = nutFactor('oiled');
const reversed = { min: ratio(0.3), max: ratio(0.2) };
const stiff = {
  boltStiffness: lbfPerInch(1_750_000),
  memberStiffness: lbfPerInch(7_000_000),
};
const joint = { preload: { min: lbf(3000), max: lbf(6000) }, pull: lbf(1500), ...stiff };
const nut = {
  torque: { min: lbfFoot(20), max: lbfFoot(30) },
  diameter: inch(0.375),
  pitch: inch(1 / 24),
  nutFactor: span,
  ...stiff,
};
const screw = {
  thread,
  preload: lbf(5000),
  threadFriction: { min: ratio(0.1), max: ratio(0.2) },
  faceFriction: ratio(0.15),
};
const bolt = { thread, proofStress: psi(85_000), condition: 'oiled' } as const;
const setting = torqueSetting(bolt);
const makers = torqueSetting({
  ...bolt,
  makers: { min: lbfFoot(20), max: lbfFoot(25) },
  basis: { kind: 'specified', by: 'the manual' },
});
const head = {
  bolts: ['a', 'b', 'c', 'd'].map((name, i) => ({
    name,
    along: inch(3 * (i % 2)),
    across: inch(i < 2 ? 0 : 2),
  })),
  torque: lbfFoot(30),
};
const [first, ...others] = head.bolts;
const plan = tighteningPlan(head);
const parts = {
  hole: inch(0.39),
  face: inch(0.5625),
  layers: [
    { thickness: inch(0.5), elasticity: MPa(207_000) },
    { thickness: inch(0.75), elasticity: MPa(100_000) },
  ],
};
const pulled = {
  preload: lbf(5000),
  sections: [
    { length: inch(1.25), diameter: inch(0.375) },
    { length: inch(0.5), diameter: inch(0.34) },
  ],
};
const used = { length: inch(2.2505), asNew: inch(2.25) };

export const fastenerCalls = {
  threadOf: calls(threadOf, {
    sound: [['3/8-16 UNC'], ['M10x1.25'], ['2 BA'], ['1/2-20 UNF-LH']],
    provoked: {
      'the text is not the name of a thread': refused('designation', 'bolt'),
      'it is in no series': refused('designation', '3/8-18 UNC'),
      'it is in more than one': refused('designation', '3/8-16'),
    },
  }),
  threadsIn: calls(threadsIn, {
    sound: [['UNC'], ['metric fine'], ['BA']],
    provoked: { 'the series is unknown': refused('series', 'UNEF') },
  }),
  nearestThreads: calls(nearestThreads, {
    sound: [[{ diameter: inch(0.372), pitch: inch(1 / 16) }]],
    provoked: {
      'a value is not finite': refused('pitch', { diameter: mm(10), pitch: Number.NaN }),
      'out of range': refused('diameter', { diameter: mm(200), pitch: mm(2) }),
    },
  }),
  threadAreas: calls(threadAreas, {
    sound: [[thread], [threadOf('3/8 BSW')], [threadOf('M8x1 LH')]],
    provoked: { 'the form is unknown': refused('form', { ...thread, form: 'ACME' }) },
  }),
  boltStrength: calls(boltStrength, {
    sound: [[{ grade: 'SAE 5', diameter: inch(0.375) }], [{ grade: 'ISO 8.8', diameter: mm(18) }]],
    provoked: {
      'the grade is unknown': refused('grade', { grade: 'SAE 3', diameter: inch(0.5) }),
      'the diameter is not finite': refused('diameter', {
        grade: 'SAE 5',
        diameter: Number.NaN,
      }),
      'out of range': refused('diameter', { grade: 'SAE 5', diameter: 0.375 }),
      'the grade has no bolt of that size': refused('diameter', {
        grade: 'ISO 9.8',
        diameter: mm(20),
      }),
    },
  }),
  unknownBolt: calls(unknownBolt, {
    sound: [
      [{ hardness: { scale: 'HB', number: ratio(200) } }],
      [{ hardness: { scale: 'HV', number: { min: ratio(230), max: ratio(250) } } }],
      [{ hardness: { scale: 'HB', number: ratio(60) } }],
      [{ hardness: { scale: 'HB', number: ratio(600) } }],
      [],
    ],
    provoked: {
      'the scale is unknown': refused('hardness.scale', {
        hardness: { scale: 'HRC', number: ratio(40) },
      }),
      'a span is reversed': refused('hardness.number', {
        hardness: { scale: 'HB', number: { min: 250, max: 200 } },
      }),
    },
  }),
  nutFactor: calls(nutFactor, {
    sound: [['dry'], ['waxed']],
    provoked: { 'the condition is unknown': refused('condition', 'greasy') },
  }),
  tighteningTorque: calls(tighteningTorque, {
    sound: [[{ preload: lbf(5000), diameter: inch(0.375), nutFactor: span }]],
    provoked: {
      'a span is reversed': refused('nutFactor', {
        preload: lbf(5000),
        diameter: inch(0.375),
        nutFactor: reversed,
      }),
    },
  }),
  preloadFromTorque: calls(preloadFromTorque, {
    sound: [[{ torque: lbfFoot(30), diameter: inch(0.375), nutFactor: span }]],
    provoked: {
      'a span is reversed': refused('nutFactor', {
        torque: lbfFoot(30),
        diameter: inch(0.375),
        nutFactor: reversed,
      }),
    },
  }),
  screwTorque: calls(screwTorque, {
    sound: [[screw], [{ ...screw, thread: threadOf('2 BA'), faceDiameter: mm(6) }]],
    provoked: {
      'the form is unknown': refused('thread.form', {
        ...screw,
        thread: { ...thread, form: 'ACME' },
      }),
      'a span is reversed': refused('threadFriction', { ...screw, threadFriction: reversed }),
    },
  }),
  boltStretch: calls(boltStretch, {
    sound: [[pulled]],
    provoked: { 'there is no section': refused('sections', { ...pulled, sections: [] }) },
  }),
  memberStiffness: calls(memberStiffness, {
    sound: [[parts]],
    provoked: { 'there is no layer': refused('layers', { ...parts, layers: [] }) },
  }),
  jointUnderLoad: calls(jointUnderLoad, {
    sound: [
      [joint],
      [{ ...joint, pull: lbf(0) }],
      [{ ...joint, pull: lbf(9000), proofLoad: lbf(7400) }],
    ],
    provoked: {
      'a span is reversed': refused('preload', {
        ...joint,
        preload: { min: lbf(6000), max: lbf(3000) },
      }),
    },
  }),
  permanentStretch: calls(permanentStretch, {
    sound: [[used], [{ ...used, limits: { max: thou(2) }, uncertainty: thou(0.5) }]],
    provoked: {
      'the limits have no bound': refused('bolt.limits', { ...used, limits: {} }),
    },
  }),
  nextSlot: calls(nextSlot, {
    sound: [[nut], [{ ...nut, turn: degree(5), slots: 6, holes: 2 }]],
    provoked: {
      'a span is reversed': refused('torque', {
        ...nut,
        torque: { min: lbfFoot(30), max: lbfFoot(20) },
      }),
    },
  }),
  wrenchSetting: calls(wrenchSetting, {
    sound: [
      [{ torque: lbfFoot(30) }],
      [
        {
          torque: lbfFoot(30),
          prevailing: lbfInch(20),
          adapter: { wrench: inch(18), adapter: inch(6), angle: degree(90) },
        },
      ],
    ],
    provoked: {},
  }),
  torqueSetting: calls(torqueSetting, {
    sound: [
      [bolt],
      [{ ...bolt, leastDiameter: inch(0.31), share: ratio(0.6) }],
      [{ ...bolt, makers: newtonMetre(30) }],
    ],
    provoked: {
      'the form is unknown': refused('thread.form', {
        ...bolt,
        thread: { ...thread, form: 'ACME' },
      }),
      'the condition is unknown': refused('condition', { ...bolt, condition: 'greasy' }),
      'a value is not finite': refused('proofStress', { ...bolt, proofStress: Infinity }),
      'out of range': refused('proofStress', { ...bolt, proofStress: 85_000 }),
      'the pitch is too coarse for the diameter': refused('thread.pitch', {
        ...bolt,
        thread: { ...thread, pitch: inch(1 / 8) },
      }),
      'the shank is thicker than the thread': refused('leastDiameter', {
        ...bolt,
        leastDiameter: inch(0.4),
      }),
      'a span is reversed': refused('makers', {
        ...bolt,
        makers: { min: lbfFoot(25), max: lbfFoot(20) },
      }),
      "a basis is given without the maker's torque": refused('makers', {
        ...bolt,
        basis: { kind: 'specified' },
      }),
    },
  }),
  describeTorqueSetting: calls(describeTorqueSetting, {
    madeBy: 'torqueSetting',
    sound: [
      [setting, { units: 'inch' }],
      [makers, { units: 'inch', wrench: 'lbf·in' }],
      [makers, { units: 'metric', wrench: 'kgf·m' }],
    ],
    provoked: {
      'the setting is not what `torqueSetting` gives': refused(
        'setting.outcome',
        {},
        { units: 'inch' },
      ),
      'the unit system is unknown': refused('wording.units', setting, { units: 'imperial' }),
      'the scale of the wrench is unknown': refused('wording.wrench', setting, {
        units: 'inch',
        wrench: 'ft lbs',
      }),
    },
  }),
  tighteningPlan: calls(tighteningPlan, {
    sound: [[head], [{ ...head, rounds: 2 }]],
    provoked: {
      'a value is not finite': refused('bolts[0].along', {
        ...head,
        bolts: [{ ...first, along: Number.NaN }, ...others],
      }),
      'out of range': refused('torque', { ...head, torque: 0 }),
      'there are fewer than two bolts': refused('bolts', { ...head, bolts: [first] }),
      'a bolt has no name': refused('bolts[0].name', {
        ...head,
        bolts: [{ ...first, name: '' }, ...others],
      }),
      'two bolts have one name': refused('bolts[1].name', {
        ...head,
        bolts: [{ ...first, name: 'b' }, ...others],
      }),
      'two bolts are in one place': refused('bolts[1].along', {
        ...head,
        bolts: [{ ...first, along: inch(3) }, ...others],
      }),
    },
  }),
  describeTighteningPlan: calls(describeTighteningPlan, {
    madeBy: 'tighteningPlan',
    sound: [
      [plan, { units: 'inch' }],
      [plan, { units: 'metric' }],
    ],
    provoked: {
      'the plan is not what `tighteningPlan` gives': refused(
        'plan.sequence',
        {},
        { units: 'inch' },
      ),
      'the unit system is unknown': refused('wording.units', plan, { units: 'imperial' }),
      'the scale of the wrench is unknown': refused('wording.wrench', plan, {
        units: 'inch',
        wrench: 'ft lbs',
      }),
    },
  }),
};
