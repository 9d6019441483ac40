// What the other rooms use of this one and users never see.
export { BOLT_GRADES } from './bolt-grades.js';
export { sayOverload, torqueWords, WRENCH_SCALES, type WrenchScale } from './describe-torque.js';
export {
  adapterAngle,
  adapterLength,
  fastenerTorque,
  runningTorque,
  threadDiameter,
  threadPitch,
  wrenchLength,
} from './domains.js';
export { THREAD_CONDITIONS } from './nut-factor.js';
export { THREAD_FORMS } from './thread-forms.js';
