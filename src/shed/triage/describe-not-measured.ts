import type { Wording } from '../../judging/index.js';
import { describeSpan } from '../../judging/internal.js';
import { sayStillToRead } from '../../measuring/internal.js';
import { INSTRUMENT_WORDS, type InstrumentName } from '../../reading/index.js';
import type { MeasuredWhat, NotMeasured } from './not-measured-types.js';

/** What each thing is measured with; nothing where it is found out otherwise. */
const WITH: { readonly [W in MeasuredWhat]: InstrumentName | undefined } = {
  'rod journals': 'micrometer',
  'main journals': 'micrometer',
  bores: 'boreGauge',
  'main housings': 'boreGauge',
  'big ends': 'boreGauge',
  pistons: 'micrometer',
  oversize: undefined,
  undersize: undefined,
  'bearings it is for': undefined,
  walls: 'wallGauge',
  thickness: 'micrometer',
};

/** The instrument that measures it; undefined where none does. */
export const instrumentFor = (what: MeasuredWhat): InstrumentName | undefined => WITH[what];

/** That something was not measured, and what is still to be read: sentences without full stops. */
export function describeNotMeasured(
  { what, places, begun }: NotMeasured,
  { units }: Wording,
): readonly string[] {
  const instrument = WITH[what];
  const which = places.length === 0 ? what : `${what} (${places.join(', ')})`;
  const how = instrument ? `measure with the ${INSTRUMENT_WORDS[instrument]}` : 'find out';
  return [
    `${which}: ${begun.length > 0 ? 'only partly measured' : instrument ? 'not measured' : 'not known'}; ${how} before anything is decided on it`,
    ...begun.map(
      ({ place, read, lacks }) =>
        `${place}: reads ${describeSpan(read, 'length', units)} so far; still to read: ${sayStillToRead(lacks, units)}`,
    ),
  ];
}
