import configureMeasurements, { type Measure } from 'convert-units';
import type { Dimension, SymbolOf, UnitSymbol } from 'crankwright';
import { exactMeasures, type MeasureSystem, type SystemOf } from 'crankwright/convert-units';
import { expectTypeOf, it } from 'vitest';

it('the units, the families and the measures are inferred from the measures alone', () => {
  const convert = configureMeasurements(exactMeasures);
  const one = convert(1);
  expectTypeOf(one.to('mm')).toEqualTypeOf<number>();
  expectTypeOf(one.possibilities()).toEqualTypeOf<UnitSymbol[]>();
  expectTypeOf(one.measures()).toEqualTypeOf<Dimension[]>();
  type System = NonNullable<ReturnType<typeof one.getUnit>>['system'];
  expectTypeOf<System>().toEqualTypeOf<MeasureSystem>();
});

it('those of some measures too', () => {
  const { length, volume } = exactMeasures;
  const one = configureMeasurements({ length, volume })(1);
  expectTypeOf(one.possibilities()).toEqualTypeOf<(SymbolOf<'length'> | SymbolOf<'volume'>)[]>();
  expectTypeOf(one.measures()).toEqualTypeOf<('length' | 'volume')[]>();
});

it('a measure is one of convert-units, and its units stand in their own families', () => {
  expectTypeOf(exactMeasures.length).toExtend<Measure<SystemOf<'length'>, SymbolOf<'length'>>>();
  expectTypeOf(exactMeasures.length.systems.imperial.in.to_anchor).toEqualTypeOf<number>();
  expectTypeOf<SystemOf<'volume'>>().toEqualTypeOf<'metric' | 'imperial' | 'US'>();
  expectTypeOf<SystemOf<'angle'>>().toEqualTypeOf<'metric'>();
  // @ts-expect-error an inch is not metric
  exactMeasures.length.systems.metric.in;
  // @ts-expect-error there are no gallons of the United States among lengths
  exactMeasures.length.systems.US;
});
