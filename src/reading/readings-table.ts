import { z } from 'zod';
import type { DiameterReading } from '../measuring/index.js';
import type { Angle, Length } from '../quantities/index.js';
import { showValue } from '../quantities/internal.js';
import { fields, list } from './fields.js';
import { marked } from './marks.js';
import { isBare, isUnitOf, withUnit } from './with-unit.js';

/** What the cells of a table hold, each as text with its unit. */
interface CellsOf {
  readonly station: z.ZodType<Length>;
  readonly angle: z.ZodType<Angle>;
  readonly diameter: z.ZodType<Length>;
}

type Path = readonly (string | number)[];

/** Where each reading of a table stands in it. */
const places = /* @__PURE__ */ new WeakMap<readonly DiameterReading[], readonly Path[]>();

/** Where a reading stands: in a table `diameters[1][0]`; undefined if the readings are no table. */
export const placeInTable = (readings: unknown, i: number): Path | undefined =>
  places.get(readings as readonly DiameterReading[])?.[i];

const unit = z
  .string({ error: 'must be text, in quotes: "in" or "mm"' })
  .refine((text) => isUnitOf(text, 'length'), {
    error: ({ input }) => `${showValue(input)} is no unit of length; write "in" or "mm"`,
  });

/** Readings of one place as a table: a row for each station, with a diameter under each angle. */
export function readingsTable(
  { station, angle, diameter }: CellsOf,
  most: number,
): z.ZodType<readonly DiameterReading[]> {
  const orNumber = (of: z.ZodType) => marked(z.unknown(), { options: [of, z.number()] });
  const one = orNumber(diameter);
  const cell = marked(z.unknown(), {
    options: [diameter, z.number(), z.literal(['', null]), z.array(one)],
  });
  const short = `must have at most ${most} entries`;
  return fields({
    unit: unit.exactOptional(),
    angles: list(angle).max(most, short),
    stations: list(orNumber(station)).max(most, short),
    diameters: list(list(cell).max(most, short)).max(most, short),
  }).transform((table, context): readonly DiameterReading[] => {
    const reader = new Reader(table.unit, context);
    const bare = [table.stations, table.diameters].flat(3).filter(isBare).length;
    if (table.unit === undefined && bare > 0) {
      const which =
        bare === 1 ? 'a number has none of its own' : `${bare} numbers have none of their own`;
      reader.refuse(['unit'], `is missing, and ${which}; write "in" or "mm"`);
      return z.NEVER;
    }
    const stations = table.stations.map((each, i) => reader.read(station, each, ['stations', i]));
    reader.refuseTwice('angles', table.angles);
    reader.refuseTwice('stations', stations);
    const cells = table.diameters.flatMap((row, i) => {
      reader.guardWidth(row, table, i);
      return row.flatMap((diameters, j) => eachIn(diameters, ['diameters', i, j]));
    });
    if (table.diameters.length !== stations.length) {
      const rows = `has ${table.diameters.length} rows, but there are ${stations.length} stations`;
      reader.refuse(
        ['diameters'],
        `${rows}; give each station its row, with null where nothing was read`,
      );
    } else if (cells.length === 0) {
      reader.refuse(['diameters'], 'holds no reading; leave the readings out until there is one');
    } else if (cells.length > most) {
      reader.refuse(['diameters'], `must have at most ${most} readings`);
    }
    if (reader.hasRefused) return z.NEVER;
    const readings = cells.flatMap(({ value, path }): readonly DiameterReading[] => {
      const [, i, j] = path;
      const read = reader.read(diameter, value, path);
      if (read === undefined) return [];
      return [
        {
          station: stations[Number(i)] as Length,
          angle: table.angles[Number(j)] as Angle,
          diameter: read,
        },
      ];
    });
    places.set(
      readings,
      cells.map(({ path }) => path),
    );
    return readings;
  });
}

/** What was read in a cell: nothing, once, or again and again. */
function eachIn(cell: unknown, path: Path): readonly { value: unknown; path: Path }[] {
  const each: readonly unknown[] = Array.isArray(cell) ? cell : [cell];
  return each.flatMap((value, k) => {
    const isRead = value !== null && !(typeof value === 'string' && value.trim() === '');
    return isRead ? [{ value, path: Array.isArray(cell) ? [...path, k] : path }] : [];
  });
}

class Reader {
  hasRefused = false;
  readonly #unit: string | undefined;
  readonly #context: z.core.$RefinementCtx;

  constructor(unit: string | undefined, context: z.core.$RefinementCtx) {
    this.#unit = unit;
    this.#context = context;
  }

  refuse(path: Path, message: string): void {
    this.hasRefused = true;
    this.#context.addIssue({ code: 'custom', path: [...path], message });
  }

  /** Reads text with its unit, or a number with that of the table. */
  read<T>(of: z.ZodType<T>, value: unknown, path: Path): T | undefined {
    const unit = this.#unit;
    const text = typeof value === 'number' ? String(value) : value;
    const read = of.safeParse(typeof text === 'string' ? withUnit(text, unit) : text);
    if (read.success) return read.data;
    for (const { message } of read.error.issues) this.refuse(path, message);
    return undefined;
  }

  refuseTwice(field: 'angles' | 'stations', all: readonly (number | undefined)[]): void {
    all.forEach((each, i) => {
      if (each === undefined || all.indexOf(each) === i) return;
      const several = 'write a list in its cell for what was read again';
      this.refuse([field, i], `is listed twice; ${several}`);
    });
  }

  guardWidth(
    row: readonly unknown[],
    table: { angles: readonly unknown[]; stations: readonly unknown[] },
    i: number,
  ): void {
    if (row.length === table.angles.length) return;
    const counts = `has ${row.length} entries, but there are ${table.angles.length} angles`;
    const whose =
      i < table.stations.length ? `, the row of station ${showValue(table.stations[i])},` : '';
    this.refuse(
      ['diameters', i],
      `row ${i + 1}${whose} ${counts}; write null where nothing was read`,
    );
  }
}
