/** Kilograms times or over a length, as in the force of so many; what accelerates by the second is no weight. */
const WEIGHED =
  /\b(?:kg|kilograms?)(?: \*)? (?:mm|cm|m)\b(?! ?[/^])|\b(?:kg|kilograms?) \/ (?:mm|cm|m)(?:2\b| ?\^ ?2)/;

/** So many of something in a time, and a flow to have it in. */
const DRIPPING = /([\d.]+) per(Minute|Hour|Second) to (?:m?l|cc|litres?|millilitres?)(?:Per|\b)/i;

/** What to write for a conversion, as mathjs writes it, between two kinds that the trade takes for one. */
export function conversionSlip(typed: string): string | undefined {
  const [, drops, time] = DRIPPING.exec(typed) ?? [];
  if (drops !== undefined && time !== undefined) {
    const unit = { Minute: 'min', Hour: 'h', Second: 's' }[time];
    return `how much flows hangs on the size of the drops: dripFlow({drops: ${drops}, time: 1 ${unit}}) gives the least and the most`;
  }
  if (WEIGHED.test(typed)) {
    return 'a kilogram is a mass; the force of one is written kgf, as kgf/cm^2 or kgf m';
  }
  return undefined;
}
