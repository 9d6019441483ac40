import { type Basis, type Finding, judge, type Limits } from '../../judging/index.js';
import type { Dimension, Length, Quantity, Ratio, Temperature } from '../../quantities/index.js';
import { COMMON, NORTON } from '../film/film-regime.js';
import type { WarmFilm } from '../film/heat-balance.js';
import type {
  AcceptanceCheck,
  AcceptanceCheckName,
  BearingToAccept,
  FilmsSideBySide,
} from './acceptance-types.js';
import { NO_FILTER } from './domains.js';
import { wayOut } from './films.js';
import type { SupplyFinding } from './oil-supply.js';
import type { PressureBand, ShellLimits, ShellMaterial } from './shell-material.js';

/** A check that a value settles. */
export function settled<D extends Dimension>(
  check: AcceptanceCheckName,
  dimension: D,
  value: Quantity<NoInfer<D>>,
  limits: Limits<Quantity<NoInfer<D>>>,
  basis: Basis,
): AcceptanceCheck {
  const finding = judge<D>({ feature: check, dimension, value, limits, basis }) as Finding;
  return { outcome: finding.verdict === 'within' ? 'holds' : 'fails', check, finding };
}

/** A check that cannot be made. */
export const unknown = (
  check: AcceptanceCheckName,
  give: string,
  strict?: AcceptanceCheck,
): AcceptanceCheck => ({
  outcome: 'unknown',
  check,
  give,
  ...(strict?.finding && { finding: strict.finding }),
});

/** What comes in against what leaves. */
export function supplyCheck(supply: SupplyFinding): AcceptanceCheck {
  const check = 'oil supply';
  if (supply.outcome !== 'unknown') {
    const outcome = supply.outcome === 'enough' ? 'holds' : 'fails';
    return { outcome, check, finding: supply.finding as Finding };
  }
  const level = supply.by === 'splash' ? ' at the lowest level you run at; check the level' : '';
  return unknown(check, `the oil that was measured to reach this bearing in a minute${level}`);
}

/** A pressure against what every shell of the metal carries, and what none does. */
export function pressureCheck(
  check: 'mean pressure' | 'peak pressure',
  value: Quantity<'pressure'>,
  { sure, most, basis }: PressureBand,
): AcceptanceCheck {
  const strict = settled(check, 'pressure', value, { max: sure }, basis);
  if (strict.outcome === 'holds') return strict;
  const lax = most !== undefined && settled(check, 'pressure', value, { max: most }, basis);
  if (lax && lax.outcome === 'fails') return lax;
  return unknown(check, `the ${check} that the maker of the shells allows`, strict);
}

/** A peak against the metal's limits: what it carries all the time it carries at a peak. */
export function peakCheck(
  value: Quantity<'pressure'>,
  { meanPressure, peakPressure }: ShellLimits,
): AcceptanceCheck {
  const { sure, basis } = meanPressure;
  if (peakPressure && value > sure) return pressureCheck('peak pressure', value, peakPressure);
  return pressureCheck('peak pressure', value, { sure, basis });
}

/** The temperature of the oil on its way out against what the metal stands. */
export function temperatureCheck(
  check: 'film temperature' | 'temperature by Trumpler',
  warm: WarmFilm,
  max: Temperature,
  basis: Basis,
): AcceptanceCheck {
  const found = settled(check, 'temperature', wayOut(warm), { max }, basis);
  if (found.outcome === 'fails') return found;
  if (warm.film.outcome === 'no film') {
    return unknown(
      check,
      'a load, speed and oil that leave a film: without one its heat is unknown',
    );
  }
  if (warm.range === 'within') return found;
  return unknown(
    check,
    'an oil that is between -40 and 150 °C in the film, the range of ASTM D341',
    found,
  );
}

const HAMROCK: Basis = {
  kind: 'published',
  source: 'Hamrock, NASA RP-1255 (1991): full film from 5 where surfaces fit closely',
};

/** The film over the combined roughness, by the figure of the caller, by the duty, or by both sources. */
export function roughnessCheck(
  { film }: FilmsSideBySide,
  combined: Length | undefined,
  { duty, filmRatio }: Pick<BearingToAccept, 'duty' | 'filmRatio'>,
): AcceptanceCheck {
  const check = 'film over roughness';
  if (combined === undefined) return unknown(check, 'the roughness Rq of journal and shell');
  if (film === undefined)
    return unknown(check, 'loads whose orbit settles in the range it holds for');
  const against = (least: number, basis: Basis) =>
    settled(check, 'ratio', (film / combined) as Ratio, { min: least as Ratio }, basis);
  if (filmRatio !== undefined) return against(filmRatio, { kind: 'specified' });
  const [general, close] = [against(COMMON.full, NORTON), against(5, HAMROCK)];
  if (duty !== undefined) return duty === 'general' ? general : close;
  if (general.outcome === 'fails') return general;
  if (close.outcome === 'holds') return close;
  return unknown(
    check,
    'the duty, as sources differ: 3 in general, 5 for surfaces that fit closely',
    close,
  );
}

const KHONSARI: Basis = {
  kind: 'published',
  source:
    'Khonsari and Booser, How to Match Oil Filtration to Machine Requirements (2006): particles smaller than the least film',
};

/** Metals too hard to take dirt in, where it scores the journal instead. */
const HARD: readonly (ShellMaterial | undefined)[] = [
  'copper-lead',
  'aluminium',
  'tin bronze',
  'lead bronze',
];

/** The film against the largest particle that comes in with the oil. */
export function particleCheck(
  { film }: FilmsSideBySide,
  { largestParticle: particle, material }: Pick<BearingToAccept, 'largestParticle' | 'material'>,
): AcceptanceCheck {
  const check = 'film over particles';
  if (particle === NO_FILTER) {
    return HARD.includes(material)
      ? unknown(
          check,
          'a filter, and the largest particle that it lets through: this metal is too hard to embed dirt',
        )
      : {
          outcome: 'caution',
          check,
          give: 'a filter; until then, change the oil often and clean the sump each time: soft metal embeds what is smaller than it is thick, and a hard one nothing',
        };
  }
  if (particle === undefined) {
    return unknown(
      check,
      'the largest particle that the filter lets through, or that there is no filter',
    );
  }
  if (film === undefined)
    return unknown(check, 'loads whose orbit settles in the range it holds for');
  return settled(check, 'length', film, { min: particle }, KHONSARI);
}
