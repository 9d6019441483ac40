import {
  type Angle,
  bigEndLoads,
  type GaugePressure,
  gasTrace,
  kilogram,
  metre,
  pistonMotion,
  type Ratio,
  radianPerSecond,
  ratio,
  shortBearingMobility,
} from 'crankwright';

/** Values of a card's letters. */
type Letters = (symbol: string) => never;

/** The library's own code for the cards of the motion room and of the journal's orbit. */
export const motionCode = {
  pistonPosition: (v: Letters) => moved(v, radianPerSecond(0)).position,
  pistonVelocity: (v: Letters) => moved(v, v('omega')).velocity,
  pistonAcceleration: (v: Letters) => moved(v, v('omega')).acceleration,
  rodSpeed: (v: Letters) => moved(v, v('omega')).rodSpeed,
  compressionPressure: (v: Letters) =>
    gasTrace({
      stroke: metre(0.08),
      rodLength: metre(0.15),
      compressionRatio: v('epsilon'),
      intakePressure: v('p_i'),
      compressionExponent: v('n'),
    }).compressionPressure,
  loadAlong: (v: Letters) => loaded(v, v('m_b')).along,
  loadAcross: (v: Letters) => {
    const parts = { D: 0.08, p: 0, m_p: 0, m_s: 0 };
    return loaded((symbol) => (parts[symbol as 'p'] ?? v(symbol)) as never, v('m_b')).across;
  },
  crankTorque: (v: Letters) => loaded(v, kilogram(0)).torque,
  mobilityAlong: (v: Letters) => mobility(v, ratio(0)).along,
  mobilityAcross: (v: Letters) => mobility(v, v('y')).across,
};

const moved = (v: Letters, speed: ReturnType<typeof radianPerSecond>) =>
  pistonMotion({ stroke: v('s'), rodLength: v('l'), speed, crankAngle: v('theta') });

const mobility = (v: Letters, across: Ratio) =>
  shortBearingMobility({ along: v('x'), across, lengthToDiameter: v('lambda') });

/** The load at an angle below 30 degrees: the first of 24 places around the cycle. */
function loaded(v: Letters, bigEndMass: ReturnType<typeof kilogram>) {
  const gas = Array.from({ length: 24 }, (_, i) => ({
    crankAngle: ((v('theta') as number) + (i * Math.PI) / 6) as Angle,
    gauge: v('p') as GaugePressure,
  }));
  const [load] = bigEndLoads({
    stroke: v('s'),
    rodLength: v('l'),
    speed: v('omega'),
    bore: v('D'),
    pistonMass: v('m_p'),
    smallEndMass: v('m_s'),
    bigEndMass,
    gas,
  }).loads;
  if (!load) throw new Error('there is no load');
  return load;
}
