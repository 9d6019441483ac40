import {
  type Angle,
  blendViscosity,
  type CompatibleName,
  celsius,
  celsiusDifference,
  centipoise,
  centistokes,
  convert,
  type DimensionOf,
  degree,
  endPlay,
  fahrenheitDifference,
  format,
  fuelFraction,
  inch,
  judge,
  type Length,
  lbf,
  lbfFoot,
  type MassFraction,
  minus,
  mm,
  newtonMetre,
  oilClearance,
  parse,
  parseLength,
  percentByMass,
  percentByVolume,
  plus,
  pound,
  psi,
  psiGauge,
  type Quantity,
  quartUS,
  ringGapIn,
  standardAtmosphere,
  type Temperature,
  type TemperatureDifference,
  type Torque,
  thou,
  times,
  tradeUnit,
  type Unit,
  type VolumeFraction,
  valueIn,
  viscosityAt,
} from 'crankwright';
import { describe, expectTypeOf, it } from 'vitest';

describe('a quantity', () => {
  it('is made by its unit and knows its dimension', () => {
    expectTypeOf(inch(2.125)).toEqualTypeOf<Length>();
    expectTypeOf(lbfFoot(18)).toEqualTypeOf<Torque>();
    expectTypeOf(degree(90)).toEqualTypeOf<Angle>();
    expectTypeOf<Length>().toEqualTypeOf<Quantity<'length'>>();
    expectTypeOf(inch(2.125)).toExtend<number>();
    // @ts-expect-error text is read by parse
    inch('2-1/8');
  });

  it('is not any number, nor another dimension', () => {
    expectTypeOf<number>().not.toExtend<Length>();
    expectTypeOf<Torque>().not.toExtend<Length>();
    expectTypeOf<VolumeFraction>().not.toExtend<MassFraction>();
    expectTypeOf<Temperature>().not.toExtend<TemperatureDifference>();
    // @ts-expect-error a bare number
    const bare: Length = 2.125;
    // @ts-expect-error a torque
    const torque: Length = newtonMetre(2);
    // @ts-expect-error pounds of mass are not pounds of force
    const force: Quantity<'force'> = pound(2);
    // @ts-expect-error a gauge does not show absolute pressure
    const absolute: Quantity<'pressure'> = psiGauge(120);
    // @ts-expect-error dynamic viscosity is not kinematic
    const kinematic: Quantity<'kinematicViscosity'> = centipoise(8);
    expectTypeOf([bare, torque, force, absolute, kinematic]).toExtend<number[]>();
  });

  it('is refused where another belongs', () => {
    const sizes = { housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125) };
    expectTypeOf(oilClearance(sizes)).toEqualTypeOf<Length>();
    // @ts-expect-error a torque for a journal
    oilClearance({ ...sizes, journal: newtonMetre(2) });
    // @ts-expect-error a bare number for a journal
    oilClearance({ ...sizes, journal: 2.125 });
    // @ts-expect-error text for a journal
    oilClearance({ ...sizes, journal: '2.125 in' });
    // @ts-expect-error the bore is missing
    ringGapIn({ gap: thou(12), measuredIn: inch(3) });
    // @ts-expect-error an angle for a dial reading
    endPlay([{ pushed: degree(0), pulled: thou(7) }]);
  });
});

describe('arithmetic', () => {
  it('keeps to one dimension', () => {
    expectTypeOf(plus(inch(1), mm(1))).toEqualTypeOf<Length>();
    expectTypeOf(times(newtonMetre(1), 2)).toEqualTypeOf<Torque>();
    // @ts-expect-error a length and a torque
    plus(inch(1), newtonMetre(1));
    // @ts-expect-error a force from a mass
    minus(pound(1), lbf(1));
    // @ts-expect-error absolute and gauge pressure do not add
    plus(standardAtmosphere, psiGauge(120));
    // @ts-expect-error a quantity for a factor is not forbidden, a text is
    times(inch(1), '2');
  });

  it('keeps temperatures and differences apart', () => {
    expectTypeOf(plus(celsius(20), celsiusDifference(60))).toEqualTypeOf<Temperature>();
    expectTypeOf(minus(celsius(80), celsius(20))).toEqualTypeOf<TemperatureDifference>();
    expectTypeOf(minus(celsius(80), fahrenheitDifference(9))).toEqualTypeOf<Temperature>();
    expectTypeOf(
      plus(celsiusDifference(1), celsiusDifference(2)),
    ).toEqualTypeOf<TemperatureDifference>();
    // @ts-expect-error two temperatures have no sum
    plus(celsius(20), celsius(60));
    // @ts-expect-error a temperature is not taken from a difference
    minus(celsiusDifference(20), celsius(60));
  });
});

describe('units', () => {
  it('read and print their own dimension', () => {
    expectTypeOf(valueIn(inch(1), mm)).toEqualTypeOf<number>();
    expectTypeOf(format(inch(1), mm)).toEqualTypeOf<string>();
    expectTypeOf(tradeUnit('length', 'inch')).toEqualTypeOf<Unit<'length'>>();
    // @ts-expect-error a length in a unit of torque
    valueIn(inch(1), newtonMetre);
    // @ts-expect-error a length in a unit of torque
    format(inch(1), lbfFoot);
    // @ts-expect-error the symbol for the unit
    format(inch(1), 'in');
    // @ts-expect-error neither system
    tradeUnit('length', 'imperial');
  });

  it('convert within one dimension', () => {
    expectTypeOf(convert(1, 'in', 'mm')).toEqualTypeOf<number>();
    expectTypeOf<DimensionOf<'in'>>().toEqualTypeOf<'length'>();
    expectTypeOf<'Nm' | 'ft-lb' | 'kgf·m'>().toExtend<CompatibleName<'N·m'>>();
    expectTypeOf<'J' | 'mm'>().not.toExtend<CompatibleName<'N·m'>>();
    expectTypeOf(convert(1, 'inch', 'um')).toEqualTypeOf<number>();
    expectTypeOf(convert(1, 'F', 'degC')).toEqualTypeOf<number>();
    // @ts-expect-error a length is no mass
    convert(1, 'in', 'kg');
    // @ts-expect-error torque is not energy
    convert(1, 'lbf·ft', 'J');
    // @ts-expect-error a temperature is not a difference
    convert(1, '°C', 'Δ°F');
    // @ts-expect-error a temperature is not a difference, however it is spelt
    convert(1, 'C', 'Δ°F');
    // @ts-expect-error no such unit
    convert(1, 'inchs', 'mm');
    // @ts-expect-error text for the number
    convert('1', 'in', 'mm');
  });

  it('are read from text by the dimension wanted', () => {
    expectTypeOf(parse('18 ft-lb', 'torque')).toEqualTypeOf<Torque>();
    expectTypeOf(parseLength('2-1/8 in')).toEqualTypeOf<Length>();
    // @ts-expect-error no such dimension
    parse('18 ft-lb', 'mood');
    // @ts-expect-error a number is not text
    parseLength(2.125);
  });
});

describe('fractions of fuel', () => {
  const three = { oil: centistokes(100), fuel: centistokes(0.5), sample: centistokes(67) };
  const parts = <F>(oil: F, fuel: F) => [
    { viscosity: centistokes(100), fraction: oil },
    { viscosity: centistokes(0.5), fraction: fuel },
  ];

  it('are by volume or by mass as the law asks', () => {
    const byVolume = fuelFraction({ law: 'ASTM D7152', ...three });
    const byMass = fuelFraction({ law: 'Refutas', ...three });
    expectTypeOf(byVolume).toEqualTypeOf<VolumeFraction>();
    expectTypeOf(byMass).toEqualTypeOf<MassFraction>();
    expectTypeOf(byVolume).not.toExtend<MassFraction>();
    // @ts-expect-error a fraction by mass in percent by volume
    format(byMass, percentByVolume);
  });

  it('are not taken for one another in a blend', () => {
    const volumes = parts(percentByVolume(95), percentByVolume(5));
    const masses = parts(percentByMass(95), percentByMass(5));
    blendViscosity({ law: 'ASTM D7152', parts: volumes });
    blendViscosity({ law: 'Refutas', parts: masses });
    // @ts-expect-error by mass where the law asks by volume
    blendViscosity({ law: 'ASTM D7152', parts: masses });
    // @ts-expect-error by volume where the law asks by mass
    blendViscosity({ law: 'Refutas', parts: volumes });
    // @ts-expect-error bare numbers
    blendViscosity({ law: 'Refutas', parts: parts(0.95, 0.05) });
    // @ts-expect-error no such law
    fuelFraction({ law: 'linear', ...three });
  });
});

describe('judging', () => {
  it('holds value, limits and uncertainty to the dimension named', () => {
    const rest = { feature: 'end play', basis: { kind: 'specified' } } as const;
    const finding = judge({ ...rest, dimension: 'length', value: thou(7), limits: { max: mm(1) } });
    expectTypeOf(finding.margin).toEqualTypeOf<Length>();
    // @ts-expect-error a torque is no length
    judge({ ...rest, dimension: 'length', value: newtonMetre(7), limits: { max: mm(1) } });
    // @ts-expect-error nor is the limit of one
    judge({ ...rest, dimension: 'length', value: thou(7), limits: { max: psi(1) } });
    // @ts-expect-error who says so is missing
    judge({ feature: 'x', dimension: 'length', value: thou(7), limits: { max: mm(1) } });
  });

  it('wants a list of points for a line of viscosity', () => {
    const point = { temperature: celsius(40), viscosity: centistokes(32) };
    // @ts-expect-error a point is not a line
    viscosityAt(point, celsius(80));
    // @ts-expect-error a temperature difference
    viscosityAt([point, point], celsiusDifference(80));
    // @ts-expect-error dynamic viscosity
    viscosityAt([point, { ...point, viscosity: centipoise(5) }], celsius(80));
    // @ts-expect-error a volume for a temperature
    viscosityAt([point, point], quartUS(1));
  });
});
