import type { Basis, Span } from '../judging/index.js';
import { namedFrom, showIn } from '../judging/internal.js';
import {
  type DilutionFinding,
  type DilutionOptions,
  dilutionFinding,
  type FuelFractionSpan,
  fuelFraction,
  fuelFractionSpan,
  petrolAt20C,
  petrolSpanAt20C,
  type ThinningFinding,
  thinningFinding,
  viscosityAt,
} from '../oil/index.js';
import { THICKENED } from '../oil/internal.js';
import {
  celsius,
  type KinematicViscosity,
  RebuildInputError,
  type Temperature,
  type VolumeFraction,
} from '../quantities/index.js';
import { cleanOil, type HotOil, hotOil, oilNow } from './inspect-film.js';
import type { OilSheet } from './oil-sheet.js';

/** Findings on a sample of the used oil. */
export interface SampleReport {
  /** Temperature of the measurement [K]. */
  readonly temperature: Temperature;
  /** Its viscosity [m²/s]. */
  readonly viscosity: KinematicViscosity;
  /** Viscosity of clean oil at that temperature [m²/s]. */
  readonly clean: KinematicViscosity;
  /**
   * The fuel that gives the measured viscosity by ASTM D7152, by volume; negative if it is thicker than clean oil. The
   * film is computed with it, so that it is judged by what was measured. It is not the verdict [-].
   */
  readonly fuel: VolumeFraction;
  /** Fuel by every blending law, from fresh to weathered: the span is the uncertainty. Absent if `dilution` is. */
  readonly byLaw?: FuelFractionSpan;
  /** The oil when hot, clean and now. Absent if `dilution` is, or if the fuel's viscosity is known only cold. */
  readonly hot?: {
    /** Clean oil. */
    readonly clean: HotOil;
    /** The oil with this fuel in it. */
    readonly now: HotOil;
    /** Whether it has thinned out of the grades of clean oil. */
    readonly leftGrade: boolean;
  };
  /**
   * The most fuel that the laws find, against its limit. A sample up to 5 % thicker than clean oil is within the error of
   * measurement and counts as none found. Absent beyond that: the viscosity then shows nothing about fuel.
   */
  readonly dilution?: DilutionFinding;
  /**
   * The share of its viscosity that it has lost, whatever thinned it, against its limit. Absent if `dilution` is, or
   * if the sheet sets limits on fuel but none on this: no rule of thumb overrules them.
   */
  readonly thinning?: ThinningFinding;
  /** The viscosity of the fuel that was used, and who set it. */
  readonly fuelViscosity: {
    /** Kinematic viscosity of the fuel, from fresh to weathered where it is not known [m²/s]. */
    readonly span: Span<KinematicViscosity>;
    /** Who set it. */
    readonly basis: Basis;
  };
}

const PETROL: Basis = {
  kind: 'common practice',
  rule: 'petrol of 0.5 mm²/s at 20 °C when fresh, to 1.0 when weathered',
};

/** Whether an oil is too thin by its viscosity where the limit on fuel lets it pass, or passes it more easily. */
export function isThinOil(
  sample: SampleReport,
): sample is SampleReport & Required<Pick<SampleReport, 'thinning'>> {
  const { thinning, dilution, hot } = sample;
  if (thinning === undefined || dilution?.stage === 'critical') return false;
  if (thinning.stage === 'critical') return true;
  return dilution?.stage === 'normal' && (thinning.stage === 'act' || hot?.leftGrade === true);
}

/** Limits of the caller's own, as the functions that judge take them; none where the sheet has none. */
export function optionsOf<Q extends number>(
  own: { readonly act: Q; readonly critical: Q; readonly source?: string } | undefined,
) {
  if (own === undefined) return {};
  const { act, critical, source } = own;
  const basis = { kind: 'specified' as const, ...(source !== undefined && { by: source }) };
  return { thresholds: { act, critical }, basis };
}

/** Judges a sample of the used oil. */
export function inspectSample(
  oil: OilSheet,
  { temperature, viscosity }: NonNullable<OilSheet['sample']>,
  options: DilutionOptions,
): SampleReport {
  const clean = viscosityAt(oil.line, temperature);
  const { usual, ...fuelViscosity } = fuelOf(oil, temperature);
  const fuel = fuelFraction({ law: 'ASTM D7152', oil: clean, fuel: usual, sample: viscosity });
  const found = { temperature, viscosity, clean, fuel, fuelViscosity };
  if (viscosity > THICKENED * clean) return found;
  const { min, max } = fuelViscosity.span;
  const byLaw = fuelFractionSpan({
    oil: clean,
    // A blend is no thinner than its fuel.
    fuel: { min, max: Math.min(max, viscosity) as KinematicViscosity },
    sample: viscosity,
    oilDensity: cleanOil(oil).density,
    ...(oil.fuel && { fuelDensity: oil.fuel.density }),
  });
  // A fuel with a viscosity at one temperature only has none at 100 °C.
  const known = oil.fuelViscosity === undefined || oil.fuel !== undefined;
  const inIt = Math.max(0, fuel) as VolumeFraction;
  return {
    ...found,
    byLaw,
    ...(known && { hot: whenHot(hotOil(cleanOil(oil)), hotOil(oilNow(oil, inIt))) }),
    dilution: dilutionFinding(Math.max(0, byLaw.span.max) as VolumeFraction, options),
    ...((oil.thinning !== undefined || oil.thresholds === undefined) && {
      thinning: thinningFinding({ oil: clean, sample: viscosity }, optionsOf(oil.thinning)),
    }),
  };
}

/** Both oils when hot, and whether the one now has thinned out of the grades of the other. */
function whenHot(clean: HotOil, now: HotOil): Required<SampleReport>['hot'] {
  const graded = clean.grades.grades;
  const stays = graded.some((grade) => now.grades.grades.includes(grade));
  return { clean, now, leftGrade: graded.length > 0 && !stays };
}

/** The fuel's viscosity from the sheet, and one to compute films with; petrol has a default near 20 °C. */
function fuelOf(
  { fuelViscosity, fuel }: OilSheet,
  temperature: Temperature,
): SampleReport['fuelViscosity'] & { readonly usual: KinematicViscosity } {
  const specified = (usual: KinematicViscosity) => ({
    usual,
    span: { min: usual, max: usual },
    basis: { kind: 'specified' as const },
  });
  if (fuelViscosity !== undefined) return specified(fuelViscosity);
  if (fuel !== undefined) {
    return specified(
      namedFrom(
        () => ({ line: 'fuel.line' }),
        () => viscosityAt(fuel.line, temperature),
      ),
    );
  }
  if (Math.abs(temperature - 293.15) <= 5) {
    return { usual: petrolAt20C, span: petrolSpanAt20C, basis: PETROL };
  }
  throw new RebuildInputError({
    parameter: 'fuelViscosity',
    value: undefined,
    shown: `the viscosity of the fuel at ${showIn(temperature, celsius)}`,
    expected: 'a viscosity',
    problem: 'is missing',
    hint: 'Only petrol from 15 to 25 °C has a default. Measure the sample there, or give fuelViscosity.',
  });
}
