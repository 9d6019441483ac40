import configureMeasurements, { IncompatibleUnitError } from 'convert-units';
import theirs from 'convert-units/definitions/all';
import { coherentUnit } from 'crankwright';
import { exactMeasures } from 'crankwright/convert-units';
import { describe, expect, it } from 'vitest';
import { convert, engine, units } from './engine.js';

const familyOf = (symbol: string) => {
  if (symbol.startsWith('US ')) return 'US';
  if (symbol === 'metric hp') return 'metric';
  const imperial = /^imp |\b(in|ft|lb|lbf|oz|psi|ksi|inHg|hp)\b|thou|tenth|°F|°R|reyn/;
  return imperial.test(symbol) ? 'imperial' : 'metric';
};

describe('the measures', () => {
  it('are one for each dimension', () => {
    expect(convert().measures()).toEqual(Object.keys(coherentUnit));
  });

  it('hold every unit under its dimension, in the family it belongs to', () => {
    const held = convert()
      .list()
      .map(({ abbr, measure, system }) => [abbr, measure, system]);
    const wanted = units.map(({ symbol, dimension }) => [symbol, dimension, familyOf(symbol)]);
    expect(held.sort()).toEqual(wanted.sort());
  });

  it('go from family to family by the factor 1, with no rounding between', () => {
    const ratios = Object.values(exactMeasures)
      .flatMap(({ anchors }) => Object.values<Readonly<Record<string, { ratio: number }>>>(anchors))
      .flatMap((family) => Object.values(family).map(({ ratio }) => ratio));
    expect(ratios.length).toBeGreaterThan(30);
    expect(new Set(ratios)).toEqual(new Set([1]));
  });

  it('name a unit in words', () => {
    expect(convert().describe('in')).toEqual({
      abbr: 'in',
      measure: 'length',
      system: 'imperial',
      singular: 'inch',
      plural: 'inches',
    });
    const words = convert()
      .list()
      .map(({ singular }) => singular);
    expect(new Set(words).size).toBe(units.length);
  });

  it('keep toBest in the family of the unit', () => {
    expect(convert(25.4).from('mm').toBest()).toMatchObject({ val: 25.4, unit: 'mm' });
    expect(convert(25.4).from('mm').toBest({ system: 'imperial' })).toMatchObject({
      val: 1,
      unit: 'in',
    });
    expect(convert(6).from('US qt').toBest()).toMatchObject({ val: 1.5, unit: 'US gal' });
  });

  it('win over the tables that come with the library, if they stand behind them', () => {
    const both = configureMeasurements<string, string, string>({ ...theirs, ...exactMeasures });
    const owners = units.map(({ symbol }) => both().describe(symbol).measure);
    expect(owners).toEqual(units.map(({ dimension }) => dimension));
  });

  it.each([
    ['lbf', 'lb'],
    ['psi', 'psi gauge'],
    ['°C', 'Δ°C'],
    ['cSt', 'cP'],
    ['lbf·ft', 'ft·lbf energy'],
    ['vol%', 'mass%'],
    ['rpm', '1/s'],
  ])('refuse %s to %s, which people confuse', (from, to) => {
    expect(() => engine(1, from, to)).toThrow(IncompatibleUnitError);
  });

  it('can be taken one by one, and more units counted in the same anchor', () => {
    const { metric, imperial } = exactMeasures.length.systems;
    const km = { name: { singular: 'km', plural: 'km' }, to_anchor: 1000 * metric.m.to_anchor };
    const length = { ...exactMeasures.length, systems: { metric: { ...metric, km }, imperial } };
    const wider = configureMeasurements<'length', string, string>({ length });
    expect(wider(1).from('km').to('in')).toBe(engine(1000, 'm', 'in'));
  });
});
