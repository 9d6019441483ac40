/** An amount of money. */
export interface Cost {
  /** How much [-]. */
  readonly amount: number;
  /** The currency, if the shed has prices. */
  readonly currency?: string;
}
