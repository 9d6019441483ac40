import type { Basis } from '../../judging/index.js';
import { guardFields, guardText, guardWord } from '../../judging/internal.js';
import { celsius, MPa, type Pressure, type Temperature } from '../../quantities/index.js';
import { shellPressure, shellTemperature } from './domains.js';

/** A metal of shells whose limits are published. */
export type ShellMetal =
  | 'tin babbitt'
  | 'lead babbitt'
  | 'copper-lead'
  | 'aluminium'
  | 'tin bronze'
  | 'lead bronze';

/** A metal with limits of your own, best those of the maker of the shells. */
export interface OwnMetal {
  /** What you call it. */
  readonly name: string;
  /** Most load over journal times length, as a mean [Pa]. */
  readonly meanPressure: Pressure;
  /** Most load over journal times length, at the peak of the cycle; by default that of the mean [Pa]. */
  readonly peakPressure?: Pressure;
  /** How hot it may become [K]. */
  readonly temperature: Temperature;
  /** Who says so. */
  readonly by?: string;
}

/** What the running face of a shell is made of. */
export type ShellMaterial = ShellMetal | OwnMetal;

/**
 * A limit that depends on the alloy and on how thick it is: every shell of the metal carries `sure`, none
 * carries more than `most`. In between it has to be asked of the maker.
 */
export interface PressureBand {
  /** Every shell of this metal carries as much [Pa]. */
  readonly sure: Pressure;
  /** No shell of this metal carries more; absent where no source says so [Pa]. */
  readonly most?: Pressure;
  /** Who says so. */
  readonly basis: Basis;
}

/** What the metal of a shell may carry, and how hot it may become. */
export interface ShellLimits {
  /** Name of the metal. */
  readonly name: string;
  /** Mean load over journal times length. */
  readonly meanPressure: PressureBand;
  /** The same at the peak of the cycle; absent where no source was found. */
  readonly peakPressure?: PressureBand;
  /** Most temperature [K]. */
  readonly temperature: Temperature;
  /** Who set the temperature. */
  readonly basis: Basis;
}

const HANDBOOK: Basis = {
  kind: 'published',
  source: "Mechanical Engineer's Data Handbook, section 2.9.3",
};
const PEAK: Basis = {
  kind: 'published',
  source:
    'The Tribology Handbook, section A11, guidance on peak loading of steel-backed shells, by thickness of the lining',
};

/** Least and most mean pressure [MPa], the most at a peak where it is known [MPa], temperature [°C]. */
const TABLE: Readonly<
  Record<
    ShellMetal,
    readonly [
      mean: readonly [sure: number, most?: number],
      temperature: number,
      peak?: readonly [sure: number, most: number],
    ]
  >
> = {
  'tin babbitt': [[5.5, 10.3], 150, [12, 17]],
  'lead babbitt': [[5.5, 8], 150],
  'copper-lead': [[10.3, 16.5], 175, [21, 31]],
  aluminium: [[30], 125],
  'tin bronze': [[30], 260],
  'lead bronze': [[20, 30], 225],
};

/** The metals whose limits are published. */
export const shellMetals = /* @__PURE__ */ Object.keys(TABLE) as readonly ShellMetal[];

const OWN = ['name', 'meanPressure', 'peakPressure', 'temperature', 'by'] as const;

/**
 * What the metal of a shell may carry and how hot it may become: a row of a published table, or your own
 * limits. The published pressures span what differs from alloy to alloy and with the thickness of the lining.
 * The table prints "at least" for aluminium and tin bronze, so for them no most is known.
 *
 * @param material - name of the metal, or limits of your own
 * @returns mean and peak pressure, temperature, and who set them
 * @throws {RebuildInputError} when the metal is unknown, a field is misspelt, or a value is not finite or out of
 * range
 * @see Source: Mechanical Engineer's Data Handbook, section 2.9.3, for mean pressure and temperature; The
 * Tribology Handbook, section A11, for the peak pressure of tin babbitt and of copper-lead with an overlay
 * @example
 * ```ts
 * const { meanPressure, temperature } = shellLimits('tin babbitt');
 * format(meanPressure.sure, MPa); // "5.50 MPa"
 * format(temperature, celsius); // "150.0 °C"
 * ```
 */
export function shellLimits(material: ShellMaterial): ShellLimits {
  if (typeof material === 'object' && material !== null) return ownLimits(material);
  const name = guardWord('material', material, shellMetals);
  const [mean, hottest, peak] = TABLE[name];
  return {
    name,
    meanPressure: band(mean, HANDBOOK),
    ...(peak && { peakPressure: band(peak, PEAK) }),
    temperature: celsius(hottest),
    basis: HANDBOOK,
  };
}

const band = ([sure, most]: readonly [number, number?], basis: Basis): PressureBand => ({
  sure: MPa(sure),
  ...(most !== undefined && { most: MPa(most) }),
  basis,
});

function ownLimits(own: OwnMetal): ShellLimits {
  guardFields('material', own, OWN);
  const { by, peakPressure } = own;
  if (by !== undefined) guardText('material.by', by);
  const basis: Basis = { kind: 'specified', ...(by !== undefined && { by }) };
  const exactly = (field: string, most: Pressure): PressureBand => {
    shellPressure(`material.${field}`, most);
    return { sure: most, most, basis };
  };
  return {
    name: guardText('material.name', own.name),
    meanPressure: exactly('meanPressure', own.meanPressure),
    peakPressure:
      peakPressure === undefined
        ? exactly('meanPressure', own.meanPressure)
        : exactly('peakPressure', peakPressure),
    temperature: shellTemperature('material.temperature', own.temperature),
    basis,
  };
}
