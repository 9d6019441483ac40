declare const dimension: unique symbol;

/**
 * A plain number in the coherent SI unit of its dimension, branded so that a
 * torque cannot be passed where a length belongs. Nothing is allocated and
 * JSON carries it as it is.
 */
export type Quantity<D extends Dimension> = number & {
  /** Seen by the compiler only. */
  readonly [dimension]: D;
};

/**
 * The symbol of the coherent SI unit of each dimension. Dimensions that share a unit but are confused at a price (torque and
 * energy, absolute and gauge pressure, a temperature and a difference, volume
 * and mass fractions) are kept apart.
 */
const symbols = {
  length: 'm',
  area: 'm²',
  volume: 'm³',
  angle: 'rad',
  mass: 'kg',
  density: 'kg/m³',
  time: 's',
  rate: '1/s',
  force: 'N',
  pressure: 'Pa',
  gaugePressure: 'Pa gauge',
  torque: 'N·m',
  energy: 'J',
  power: 'W',
  speed: 'm/s',
  acceleration: 'm/s²',
  rotationalSpeed: 'rad/s',
  flow: 'm³/s',
  dynamicViscosity: 'Pa·s',
  kinematicViscosity: 'm²/s',
  temperature: 'K',
  temperatureDifference: 'ΔK',
  stiffness: 'N/m',
  thermalExpansion: '1/K',
  specificHeat: 'J/(kg·K)',
  ratio: '-',
  volumeFraction: 'vol/vol',
  massFraction: 'mass/mass',
} as const;

/** The name of a dimension, for example `'length'`. */
export type Dimension = keyof typeof symbols;

/** Every dimension, with the symbol of the coherent SI unit that its quantities are kept in. */
export const coherentUnit: Readonly<Record<Dimension, string>> = symbols;

/** A length [m]. A diameter or a diametral clearance unless the name says radial. */
export type Length = Quantity<'length'>;
/** An area [m²]. */
export type Area = Quantity<'area'>;
/** A volume [m³]. */
export type Volume = Quantity<'volume'>;
/** An angle [rad]. */
export type Angle = Quantity<'angle'>;
/** A mass [kg]. */
export type Mass = Quantity<'mass'>;
/** A density [kg/m³]. */
export type Density = Quantity<'density'>;
/** A duration [s]. */
export type Time = Quantity<'time'>;
/** So many events, or such a share, in a second [1/s]. */
export type Rate = Quantity<'rate'>;
/** A force [N]. */
export type Force = Quantity<'force'>;
/** An absolute pressure or a stress [Pa]. */
export type Pressure = Quantity<'pressure'>;
/** A pressure above the surrounding air, as a gauge shows it [Pa]. */
export type GaugePressure = Quantity<'gaugePressure'>;
/** A torque [N·m]. */
export type Torque = Quantity<'torque'>;
/** An energy [J]. */
export type Energy = Quantity<'energy'>;
/** A power [W]. */
export type Power = Quantity<'power'>;
/** A speed along a line [m/s]. */
export type Speed = Quantity<'speed'>;
/** An acceleration along a line [m/s²]. */
export type Acceleration = Quantity<'acceleration'>;
/** A speed of rotation [rad/s]. */
export type RotationalSpeed = Quantity<'rotationalSpeed'>;
/** A volume flow [m³/s]. */
export type Flow = Quantity<'flow'>;
/** A dynamic viscosity [Pa·s]. */
export type DynamicViscosity = Quantity<'dynamicViscosity'>;
/** A kinematic viscosity [m²/s]. */
export type KinematicViscosity = Quantity<'kinematicViscosity'>;
/** A temperature on the thermodynamic scale [K]. */
export type Temperature = Quantity<'temperature'>;
/** A difference between two temperatures [K]. */
export type TemperatureDifference = Quantity<'temperatureDifference'>;
/** A stiffness or spring rate [N/m]. */
export type Stiffness = Quantity<'stiffness'>;
/** The share by which something grows for a degree of warming [1/K]. Of length or of volume, as the name says. */
export type ThermalExpansion = Quantity<'thermalExpansion'>;
/** Heat that warms a mass by a degree [J/(kg·K)]. */
export type SpecificHeat = Quantity<'specificHeat'>;
/** A dimensionless ratio [-]. */
export type Ratio = Quantity<'ratio'>;
/** Volume of a part over the volume of the whole [-]. */
export type VolumeFraction = Quantity<'volumeFraction'>;
/** Mass of a part over the mass of the whole [-]. */
export type MassFraction = Quantity<'massFraction'>;
