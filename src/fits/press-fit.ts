import { type Finding, judge, type SizeOrSpan, type Span } from '../judging/index.js';
import { diameter, guardFields, guardSpan } from '../judging/internal.js';
import {
  type Force,
  type Length,
  type Pressure,
  type Ratio,
  RebuildInputError,
  type Torque,
} from '../quantities/index.js';
import { engagement, frictionInFit, interference, strengthOfMetal } from './domains.js';
import { type FitKind, kindOfFit } from './fit-kind.js';
import {
  giveOfInner,
  giveOfOuter,
  guardExcess,
  type InnerPart,
  OF_HUB,
  OF_SHAFT,
  type OuterPart,
} from './lame.js';
import { hubStresses, shaftStresses, type WallStress } from './wall-stress.js';

/** A shaft that is pressed in. */
export interface PressedShaft extends InnerPart {
  /** Stress at which it yields [Pa]. */
  readonly yieldStrength?: Pressure;
}

/** A hub that it is pressed into. */
export interface PressedHub extends OuterPart {
  /** Stress at which it yields [Pa]. */
  readonly yieldStrength?: Pressure;
  /** Stress at which it breaks without yielding: of grey iron and other brittle metals [Pa]. */
  readonly tensileStrength?: Pressure;
}

/** Two parts to be pressed or shrunk together. */
export interface PressFitRequest {
  /** Diameter where they meet [m]. */
  readonly diameter: Length;
  /** By how much the shaft is larger than its hole, in diameter: as measured, or the span of a fit [m]. */
  readonly diametralInterference: SizeOrSpan<Length>;
  /** The inner part. */
  readonly shaft: PressedShaft;
  /** The outer part. */
  readonly hub: PressedHub;
  /** How long they are in contact; it goes with `friction` [m]. */
  readonly length?: Length;
  /** Friction where they meet, best as a span: from the least that may hold to the most that may resist the press [-]. */
  readonly friction?: SizeOrSpan<Ratio>;
}

/** What friction holds. */
export interface HeldByFriction {
  /** Force along the axis. The least is what is sure to hold, the most what a press may need to push it in or out [N]. */
  readonly axialForce: Span<Force>;
  /** Torque before it slips. Count on the least [N·m]. */
  readonly torque: Span<Torque>;
}

/** Two parts pressed together. */
export interface PressFit {
  /** Whether they always press, always run free, or either. */
  readonly kind: FitKind;
  /** Pressure where they meet, of the least and the most interference [Pa]. */
  readonly pressure: Span<Pressure>;
  /** Hub at its bore, at the most interference. */
  readonly hubBore: WallStress;
  /** Hub at its outside, at the most interference. */
  readonly hubOutside: WallStress;
  /** Shaft at its surface, at the most interference. */
  readonly shaftSurface: WallStress;
  /** Shaft at its bore, at the most interference; absent if it is solid. */
  readonly shaftBore?: WallStress;
  /** What friction holds; absent without a friction. */
  readonly held?: HeldByFriction;
  /** The worst stress against each strength that was given, at the most interference. */
  readonly findings: readonly Finding<'pressure'>[];
}

const REQUEST = [
  'diameter',
  'diametralInterference',
  'shaft',
  'hub',
  'length',
  'friction',
] as const;
const SHAFT = ['bore', 'elasticity', 'poisson', 'yieldStrength'] as const;
const HUB = ['outside', 'elasticity', 'poisson', 'yieldStrength', 'tensileStrength'] as const;

/**
 * What becomes of two parts that are pressed or shrunk together: pressure, stresses, and the force and torque that
 * friction holds, by Lamé. Every interference is diametral.
 *
 *     ofHub = ((outside² + diameter²) / (outside² - diameter²) + hub.poisson) / hub.elasticity
 *     ofShaft = ((diameter² + bore²) / (diameter² - bore²) - shaft.poisson) / shaft.elasticity
 *     pressure = diametralInterference / (diameter * (ofHub + ofShaft))
 *     hubBore.hoop = pressure * (outside² + diameter²) / (outside² - diameter²)
 *     hubBore.radial = -pressure
 *     hubBore.equivalent = pressure * 2 * outside² / (outside² - diameter²)
 *     hubOutside.hoop = pressure * 2 * diameter² / (outside² - diameter²)
 *     shaftSurface.hoop = -pressure * (diameter² + bore²) / (diameter² - bore²)
 *     shaftBore.hoop = -pressure * 2 * diameter² / (diameter² - bore²)
 *     axialForce = friction * pressure * π * diameter * length
 *     torque = axialForce * diameter / 2
 *
 * The equivalent stress is by the greatest shear (Tresca), which is on the safe side. It is judged against the yield
 * strength that you give; grey iron does not yield, so its hoop stress is judged against its tensile strength. Stress past
 * yield is a finding and no error, but the parts are elastic no more, and the pressure is then less than what stands here.
 * Without a strength nothing is judged: that is not a sound fit. See {@link interferencePressure} for what is left out.
 *
 * Heat changes the fit: a bronze bushing or a steel seat in an aluminium case loses its grip as the engine warms up. So
 * does speed, in the rim of a flywheel.
 *
 * A press can kill. Parts that are pressed burst and fly: stand to the side, behind a guard, with covered eyes, use no
 * hardened drift, support the hub close to its bore, and stop if the force climbs past what is given here. The maker's
 * manual comes first.
 *
 * @param parts - both parts, how much they interfere, and if they are known their strengths, length and friction
 * @returns pressure, stresses, what is held, and findings against the strengths
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, the
 * interference is more than a twentieth of the diameter, the bore is not inside of the diameter, the outside is not outside
 * of it, or length and friction do not come together
 * @see Source: Lamé's thick cylinders, greatest shear (Tresca); Bhavikatti, Strength of Materials, ex. 8.16
 * @example
 * ```ts
 * const fit = pressFit({
 *   diameter: mm(40), diametralInterference: fitOf('40H7/s6').interference,
 *   shaft: { ...elasticConstants('steel'), yieldStrength: MPa(350) },
 *   hub: { ...elasticConstants('steel'), outside: mm(80), yieldStrength: MPa(350) },
 *   length: mm(30), friction: { min: ratio(0.1), max: ratio(0.2) },
 * });
 * format(fit.pressure.min, MPa); // "34.93 MPa"
 * fit.held && format(fit.held.torque.min, newtonMetre); // "263.4 N·m"
 * fit.findings.map(({ verdict }) => verdict); // ["within", "within"]
 * ```
 */
export function pressFit(parts: PressFitRequest): PressFit {
  guardFields('parts', parts, REQUEST);
  const { shaft, hub } = parts;
  const d = diameter('diameter', parts.diameter);
  const { min, max } = guardSpan('diametralInterference', parts.diametralInterference, (at, size) =>
    guardExcess(at, interference(at, size), d),
  );
  guardFields('shaft', shaft, SHAFT);
  guardFields('hub', hub, HUB);
  const give = giveOfInner(OF_SHAFT, shaft, d) + giveOfOuter(OF_HUB, hub, d);
  const pressureOf = (excess: Length) => (excess > 0 ? excess / (d * give) : 0) as Pressure;
  const pressure = { min: pressureOf(min), max: pressureOf(max) };
  const { hubBore, hubOutside } = hubStresses(pressure.max, d, hub.outside);
  const { shaftSurface, shaftBore } = shaftStresses(pressure.max, d, shaft.bore);
  const held = heldBy(parts, d, pressure);
  return {
    kind: kindOfFit((0 - max) as Length, (0 - min) as Length),
    pressure,
    hubBore,
    hubOutside,
    shaftSurface,
    ...(shaftBore && { shaftBore }),
    ...(held && { held }),
    findings: judged(parts, hubBore, shaftBore ?? shaftSurface),
  };
}

function heldBy(
  parts: PressFitRequest,
  d: Length,
  pressure: Span<Pressure>,
): HeldByFriction | undefined {
  if (parts.length === undefined && parts.friction === undefined) return undefined;
  if (parts.length === undefined || parts.friction === undefined) throw alone(parts);
  const length = engagement('length', parts.length);
  const friction = guardSpan('friction', parts.friction, frictionInFit, 'ratio');
  const area = Math.PI * d * length;
  const [least, most] = [friction.min * pressure.min * area, friction.max * pressure.max * area];
  return {
    axialForce: { min: least as Force, max: most as Force },
    torque: { min: ((least * d) / 2) as Torque, max: ((most * d) / 2) as Torque },
  };
}

function alone({ length }: PressFitRequest): RebuildInputError {
  const parameter = length === undefined ? 'length' : 'friction';
  return new RebuildInputError({
    parameter,
    value: undefined,
    expected: `a ${parameter} beside the other`,
    hint: 'What friction holds takes a length and a friction: give both, or neither.',
  });
}

/** The worst stress of each part against its strengths: a hollow shaft has its worst at its bore. */
function judged({ shaft, hub }: PressFitRequest, hubBore: WallStress, worstOfShaft: WallStress) {
  const findings: Finding<'pressure'>[] = [];
  const against = (feature: string, at: string, value: Pressure, strength?: Pressure) => {
    if (strength === undefined) return;
    const limits = { max: strengthOfMetal(at, strength) };
    const basis = { kind: 'specified' } as const;
    findings.push(judge({ feature, dimension: 'pressure', value, limits, basis }));
  };
  against('hub at its bore, yield', 'hub.yieldStrength', hubBore.equivalent, hub.yieldStrength);
  against('hub at its bore, tearing', 'hub.tensileStrength', hubBore.hoop, hub.tensileStrength);
  against('shaft, yield', 'shaft.yieldStrength', worstOfShaft.equivalent, shaft.yieldStrength);
  return findings;
}
