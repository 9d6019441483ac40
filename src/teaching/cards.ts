import { acceptanceCards } from '../bearings/acceptance/acceptance.cards.js';
import { clearanceCards } from '../bearings/clearance.cards.js';
import { explainCards } from '../bearings/explain.cards.js';
import { filmCards } from '../bearings/film/film.cards.js';
import { filmRegimeCards } from '../bearings/film/film-regime.cards.js';
import { shortBearingCards } from '../bearings/film/short-bearing.cards.js';
import { temperatureRiseCards } from '../bearings/film/temperature-rise.cards.js';
import { flattenedThreadCards } from '../bearings/flattened-thread.cards.js';
import { hotClearanceCards } from '../bearings/hot-clearance.cards.js';
import { mobilityCards } from '../bearings/orbit/mobility.cards.js';
import { seatingCards } from '../bearings/seating.cards.js';
import { shellWallToSuitCards } from '../bearings/shell-wall-to-suit.cards.js';
import { endPlayCards } from '../crankshaft/end-play.cards.js';
import { grindPlanCards } from '../crankshaft/grind-plan.cards.js';
import { washerCards } from '../crankshaft/washers.cards.js';
import { borePlanCards } from '../cylinders/bore-plan.cards.js';
import { leakDownCards } from '../cylinders/compression/leak-down.cards.js';
import { compressionPressureCards } from '../cylinders/compression/pressure.cards.js';
import { compressionVolumeCards } from '../cylinders/compression/volume.cards.js';
import { honingCards } from '../cylinders/honing.cards.js';
import { pinCards } from '../cylinders/pins/pins.cards.js';
import { pistonClearanceCards } from '../cylinders/piston-clearance.cards.js';
import { ringGapCards } from '../cylinders/ring-gap.cards.js';
import { ringCards } from '../cylinders/rings/rings.cards.js';
import { ringTensionCards } from '../cylinders/rings/tension.cards.js';
import { warmCylinderCards } from '../cylinders/warm/warm.cards.js';
import { castleNutCards } from '../fasteners/castle-nut.cards.js';
import { jointCards } from '../fasteners/joint.cards.js';
import { screwTorqueCards } from '../fasteners/screw-torque.cards.js';
import { stretchCards } from '../fasteners/stretch.cards.js';
import { threadCards } from '../fasteners/threads.cards.js';
import { tighteningCards } from '../fasteners/tightening.cards.js';
import { unknownBoltCards } from '../fasteners/unknown-bolt.cards.js';
import { bushingCards } from '../fits/bushing.cards.js';
import { fitCards } from '../fits/fits.cards.js';
import { shrinkTemperatureCards } from '../fits/shrink-temperature.cards.js';
import { sagittaCards } from '../measuring/sagitta.cards.js';
import { shapeCards } from '../measuring/shape.cards.js';
import { sizeAt20CCards } from '../measuring/size-at-20c.cards.js';
import { stackUpCards } from '../measuring/stack-up.cards.js';
import { traceCards } from '../measuring/trace.cards.js';
import { assemblyCards } from '../motion/assembly.cards.js';
import { bigEndLoadCards } from '../motion/big-end-loads.cards.js';
import { gasTraceCards } from '../motion/gas-trace.cards.js';
import { pistonMotionCards } from '../motion/piston-motion.cards.js';
import { blendCards } from '../oil/blend.cards.js';
import { blendFractionCards } from '../oil/blend-fractions.cards.js';
import { densityCards } from '../oil/density.cards.js';
import { dilutedOilCards } from '../oil/diluted-oil.cards.js';
import { dripCards } from '../oil/drip.cards.js';
import { fuelFractionSpanCards } from '../oil/fuel-fraction-span.cards.js';
import { hydraulicLockCards } from '../oil/hydraulic-lock.cards.js';
import { levelRiseCards } from '../oil/level-rise.cards.js';
import { filmOilCards } from '../oil/oil.cards.js';
import { sayboltCards } from '../oil/saybolt.cards.js';
import { sumpCards } from '../oil/sump.cards.js';
import { sumpLogCards } from '../oil/sump-log.cards.js';
import { thinningCards } from '../oil/thinning.cards.js';
import { viscosityCards } from '../oil/viscosity.cards.js';
import { viscosityIndexCards } from '../oil/viscosity-index.cards.js';
import { pistonTravelCards } from '../timing/piston-travel.cards.js';
import { rimCards } from '../timing/rim.cards.js';
import { sparkCards } from '../timing/spark.cards.js';
import { topDeadCentreCards } from '../timing/top-dead-centre.cards.js';
import { valveTimingCards } from '../timing/valve-timing.cards.js';
import { facingCards } from '../valves/facing.cards.js';
import { guideCards } from '../valves/guide.cards.js';
import { lashCards } from '../valves/lash.cards.js';
import { openingCards } from '../valves/opening.cards.js';
import { springCards } from '../valves/spring.cards.js';
import { springTestCards } from '../valves/spring-test.cards.js';
import { type FormulaCard, onTopic } from './formula-card.js';

const everyCard = Object.freeze({
  ...onTopic('measuring', {
    ...shapeCards,
    ...sagittaCards,
    ...sizeAt20CCards,
    ...traceCards,
    ...stackUpCards,
  }),
  ...onTopic('crankshaft', {
    ...grindPlanCards,
    ...endPlayCards,
    ...washerCards,
  }),
  ...onTopic('bearings', {
    ...clearanceCards,
    ...explainCards,
    ...flattenedThreadCards,
    ...shellWallToSuitCards,
    ...hotClearanceCards,
    ...seatingCards,
  }),
  ...onTopic('oil film', {
    ...filmCards,
    ...shortBearingCards,
    ...filmRegimeCards,
    ...temperatureRiseCards,
    ...mobilityCards,
    ...acceptanceCards,
  }),
  ...onTopic('cylinders', {
    ...borePlanCards,
    ...pistonClearanceCards,
    ...ringGapCards,
    ...pinCards,
    ...ringCards,
    ...ringTensionCards,
    ...warmCylinderCards,
    ...honingCards,
    ...compressionVolumeCards,
    ...compressionPressureCards,
    ...leakDownCards,
  }),
  ...onTopic('fits', {
    ...fitCards,
    ...bushingCards,
    ...shrinkTemperatureCards,
  }),
  ...onTopic('fasteners', {
    ...threadCards,
    ...tighteningCards,
    ...screwTorqueCards,
    ...unknownBoltCards,
    ...stretchCards,
    ...jointCards,
    ...castleNutCards,
  }),
  ...onTopic('motion', {
    ...pistonMotionCards,
    ...gasTraceCards,
    ...bigEndLoadCards,
    ...assemblyCards,
  }),
  ...onTopic('timing', {
    ...rimCards,
    ...pistonTravelCards,
    ...topDeadCentreCards,
    ...valveTimingCards,
    ...sparkCards,
  }),
  ...onTopic('valves', {
    ...lashCards,
    ...facingCards,
    ...openingCards,
    ...guideCards,
    ...springCards,
    ...springTestCards,
  }),
  ...onTopic('oil', {
    ...viscosityCards,
    ...densityCards,
    ...filmOilCards,
    ...viscosityIndexCards,
    ...sayboltCards,
    ...blendCards,
    ...blendFractionCards,
    ...fuelFractionSpanCards,
    ...dilutedOilCards,
    ...dripCards,
    ...hydraulicLockCards,
    ...thinningCards,
    ...sumpCards,
    ...sumpLogCards,
    ...levelRiseCards,
  }),
});

/** The name of a card. */
export type CardName = keyof typeof everyCard;

/** Every formula of the library, one card each. */
export const cards: Readonly<Record<CardName, FormulaCard>> = everyCard;
