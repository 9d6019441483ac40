import { guardFields, guardList, guardText, say } from '../judging/internal.js';
import type { ViscosityLine, ViscosityPoint } from '../oil/index.js';
import { doubleLog, guardLine, liquidViscosity, oilTemperature } from '../oil/internal.js';
import {
  celsius,
  centistokes,
  format,
  type Temperature,
  tradeUnit,
  type UnitSystem,
  valueIn,
} from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { inked, mark } from './ink.js';
import { guardPicture, type PictureOptions } from './options.js';
import { drawPicture, legend, note, straight } from './picture.js';
import { plane, type Tick } from './plane.js';
import { element } from './svg.js';

/** Oils to draw, and samples to hold against them. */
export interface ShownOils {
  /** Each with the two points of its data sheet. */
  readonly oils: readonly {
    /** What it is called. */
    readonly name: string;
    /** Its two points. */
    readonly line: ViscosityLine;
  }[];
  /** What was measured of used oil. */
  readonly samples?: readonly (ViscosityPoint & {
    /** What it is called. */
    readonly name: string;
  })[];
}

const SHOWN = ['oils', 'samples'] as const;
const OIL = ['name', 'line'] as const;
const SAMPLE = ['name', 'temperature', 'viscosity'] as const;
/**
 * Draws the viscosity of oils against temperature, on the scales of ASTM D341, on which an oil is a straight line. It is
 * full between the two points that are known of the oil and broken past them. A sample has a mark of its own.
 *
 * @param shown - oils with two points each, and samples of used oil
 * @param options - units, width and ids
 * @returns an SVG image, as text
 * @throws {RebuildInputError} when a field is misspelt, there is no oil, a name is empty, a value is not finite or out of
 * range, an oil has not two points, its temperatures are equal, it would thicken when heated, the unit system is unknown,
 * the width is out of range, or the id is not one
 * @example
 * ```ts
 * const line = [
 *   { temperature: celsius(40), viscosity: centistokes(100) },
 *   { temperature: celsius(100), viscosity: centistokes(11.1) },
 * ] as const;
 * const picture = viscosityPicture({ oils: [{ name: 'SAE 30', line }] }, { units: 'metric' });
 * picture.includes('ASTM D341'); // true
 * ```
 */
export function viscosityPicture(shown: ShownOils, options: PictureOptions): string {
  const { oils, samples } = guardOils(shown);
  const drawn = guardPicture(options, 'viscosity-picture');
  const { units, width } = drawn;
  const unit = tradeUnit('temperature', units);
  const points = [...oils.flatMap(({ line }) => line), ...samples];
  const [from, to] = [
    smallestOf([celsius(0), ...points.map(({ temperature }) => temperature)]),
    largestOf([celsius(110), ...points.map(({ temperature }) => temperature)]),
  ];
  const lines = oils.map(({ line }) => lineOf(line, from, to));
  const heights = [...lines.flatMap((line) => line.heights), ...samples.map(heightOf)];
  const [low, high] = [smallestOf(heights), largestOf(heights)];
  const room = Math.max(0.12 - (high - low) / 2, (high - low) * 0.05);
  const height = Math.min(340, Math.max(220, width * 0.45));
  const said = [
    ...oils.map(
      ({ name, line }) => `${name}: ${line.map((point) => sayPoint(point, units)).join(', ')}.`,
    ),
    ...samples.map((sample) => `${sample.name}: ${sayPoint(sample, units)}.`),
  ];
  return drawPicture(
    {
      title: 'Viscosity against temperature',
      told: said,
      strips: [
        legend(
          [...oils, ...samples].map(({ name }, place) => ({ label: name, place, as: 'mark' })),
          width,
        ),
        plane(
          {
            x: {
              label: `temperature [${unit.symbol}]`,
              from: valueIn(from as Temperature, unit),
              to: valueIn(to as Temperature, unit),
              at: (value) => Math.log10(unit(value)),
            },
            y: {
              label: `viscosity [${centistokes.symbol}]`,
              from: low - room,
              to: high + room,
              marked: viscositiesBetween(low - room, high + room, height),
            },
            height,
            width,
          },
          (field) => {
            const x = (temperature: number) => field.x(valueIn(temperature as Temperature, unit));
            return [
              ...lines.map(({ sections }) =>
                sections
                  .map(({ ends: [a, b], isKnown }) =>
                    element('path', {
                      class: isKnown ? 'known' : 'taken-further',
                      d: straight([
                        [x(a.temperature), field.y(a.height)],
                        [x(b.temperature), field.y(b.height)],
                      ]),
                      'stroke-width': isKnown ? 2 : 1,
                      'stroke-dasharray': isKnown ? undefined : '4 3',
                      ...inked({ stroke: 'ink' }),
                    }),
                  )
                  .join(''),
              ),
              ...oils.flatMap(({ line }, i) =>
                line.map((point) =>
                  mark(i, x(point.temperature), field.y(heightOf(point)), sayPoint(point, units)),
                ),
              ),
              ...samples.map((sample, i) => {
                const [px, py] = [x(sample.temperature), field.y(heightOf(sample))];
                return mark(oils.length + i, px, py, sayPoint(sample, units), 'alarm');
              }),
            ].join('');
          },
        ),
        ...said.map((text) => note(text, width)),
        note(
          'The scales are those of ASTM D341, log log of viscosity over log of temperature. A line is broken where it goes past the two points that are known.',
          width,
        ),
      ],
    },
    drawn,
  );
}

/** Refuses what is no oil or no sample. */
function guardOils(shown: ShownOils): Required<ShownOils> {
  guardFields('shown', shown, SHOWN);
  const { oils, samples = [] } = shown;
  guardList('shown.oils', oils, 1, 'oils');
  oils.forEach((oil, i) => {
    const at = `shown.oils[${i}]`;
    guardFields(at, oil, OIL);
    guardText(`${at}.name`, oil.name);
    guardLine(`${at}.line`, oil.line);
  });
  guardList('shown.samples', samples, 0, 'samples');
  samples.forEach((sample, i) => {
    const at = `shown.samples[${i}]`;
    guardFields(at, sample, SAMPLE);
    guardText(`${at}.name`, sample.name);
    oilTemperature(`${at}.temperature`, sample.temperature);
    liquidViscosity(`${at}.viscosity`, sample.viscosity);
  });
  return { oils, samples };
}

const sayPoint = ({ temperature, viscosity }: ViscosityPoint, units: UnitSystem): string =>
  `${format(viscosity, centistokes)} at ${say(temperature, 'temperature', units)}`;

/** A place on the scales: log log of the viscosity. */
interface Place {
  readonly temperature: number;
  readonly height: number;
}

const heightOf = ({ viscosity }: ViscosityPoint): number => doubleLog(viscosity);

/** The line of an oil from one temperature to another: what is known of it, and how it goes on. */
function lineOf(line: ViscosityLine, from: number, to: number) {
  const [cold, hot] = [...line]
    .sort((a, b) => a.temperature - b.temperature)
    .map((point): Place => ({ temperature: point.temperature, height: heightOf(point) })) as [
    Place,
    Place,
  ];
  const slope = (hot.height - cold.height) / Math.log10(hot.temperature / cold.temperature);
  const at = (temperature: number): Place => ({
    temperature,
    height: cold.height + slope * Math.log10(temperature / cold.temperature),
  });
  const places = [at(from), cold, hot, at(to)] as const;
  return {
    heights: places.map(({ height }) => height),
    sections: [
      { ends: [places[0], cold] as const, isKnown: false },
      { ends: [cold, hot] as const, isKnown: true },
      { ends: [hot, places[3]] as const, isKnown: false },
    ],
  };
}

/** What round viscosities begin with. */
const LEADS = [1, 1.5, 2, 3, 5, 7] as const;

/** The round viscosities between two heights, as many as can be read. */
function viscositiesBetween(low: number, high: number, room: number): readonly Tick[] {
  const ticks: Tick[] = [];
  for (let decade = 0.1; decade <= 1e7; decade *= 10) {
    for (const lead of LEADS) {
      const viscosity = Number((lead * decade).toPrecision(2));
      const value = doubleLog(centistokes(viscosity));
      if (!(value >= low && value <= high)) continue;
      const below = ticks.at(-1)?.value ?? Number.NEGATIVE_INFINITY;
      if (((value - below) / (high - low)) * room > 18)
        ticks.push({ value, text: String(viscosity) });
    }
  }
  return ticks;
}
