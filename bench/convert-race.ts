import npmConvert from 'convert';
import configureMeasurements from 'convert-units';
import convertUnits2 from 'convert-units-2';
import Qty from 'js-quantities';
import { unit } from 'mathjs';
import { convert, exactMeasures, inch, mm, valueIn } from './built.js';
import { race } from './race.js';
import { ratioCells, type Section } from './report.js';
import { ratioOf } from './spread.js';

interface Converter {
  readonly name: string;
  /** Inches in, millimetres out. */
  readonly convertAll: (inches: Float64Array, out: Float64Array) => void;
}

const swift = Qty.swiftConverter('in', 'mm');
const prepared = (x: number): number => valueIn(inch(x), mm);

/** Its own tables round the inch; this is its engine with the factors of crankwright/convert-units. */
const convertUnits3 = configureMeasurements(exactMeasures);

const OURS: Converter = {
  name: "crankwright  convert(x, 'in', 'mm')",
  convertAll(inches, out) {
    let i = 0;
    for (const x of inches) out[i++] = convert(x, 'in', 'mm');
  },
};

const ORDINARY_PEERS: readonly Converter[] = [
  {
    name: "convert 8  convert(x, 'in').to('mm')",
    convertAll(inches, out) {
      let i = 0;
      for (const x of inches) out[i++] = npmConvert(x, 'in').to('mm');
    },
  },
  {
    name: "convert-units 2  convert(x).from('in').to('mm')",
    convertAll(inches, out) {
      let i = 0;
      for (const x of inches) out[i++] = convertUnits2(x).from('in').to('mm');
    },
  },
  {
    name: 'convert-units 3 beta  with exact factors',
    convertAll(inches, out) {
      let i = 0;
      for (const x of inches) out[i++] = convertUnits3(x).from('in').to('mm');
    },
  },
  {
    name: "mathjs  unit(x, 'in').toNumber('mm')",
    convertAll(inches, out) {
      let i = 0;
      for (const x of inches) out[i++] = unit(x, 'in').toNumber('mm');
    },
  },
  {
    name: "js-quantities  Qty(x, 'in').to('mm').scalar",
    convertAll(inches, out) {
      let i = 0;
      for (const x of inches) out[i++] = Qty(x, 'in').to('mm').scalar;
    },
  },
];

const OUR_UNITS: Converter = {
  name: 'crankwright  valueIn(inch(x), mm)',
  convertAll(inches, out) {
    let i = 0;
    for (const x of inches) out[i++] = valueIn(inch(x), mm);
  },
};

const OUR_CLOSURE: Converter = {
  name: 'crankwright  (x) => valueIn(inch(x), mm)',
  convertAll(inches, out) {
    let i = 0;
    for (const x of inches) out[i++] = prepared(x);
  },
};

const SWIFT_CLOSURE: Converter = {
  name: "js-quantities  swiftConverter('in', 'mm')",
  convertAll(inches, out) {
    let i = 0;
    for (const x of inches) out[i++] = swift(x);
  },
};

/** Races every way from inches to millimetres, and counts what each gets wrong. */
export function raceConverters(): readonly Section[] {
  const ordinary = [OURS, OUR_UNITS, ...ORDINARY_PEERS];
  const closures = [OUR_CLOSURE, SWIFT_CLOSURE];
  const times = race([...ordinary, ...closures].map(runnerOf));
  const ratio = (over: Converter, under: Converter) =>
    ratioOf(times.get(over.name) ?? [], times.get(under.name) ?? []);
  const table = (converters: readonly Converter[], reference: Converter) => [
    ['', 'time', 'middle half', 'misses'],
    ...converters.map((converter) => [
      converter.name,
      ...ratioCells(ratio(converter, reference)),
      String(countMisses(converter)),
    ]),
  ];
  const besideFastest = Math.max(...ORDINARY_PEERS.map((peer) => ratio(OURS, peer).median));
  return [
    {
      title:
        'inches to millimetres: time beside crankwright convert, and how many of\n' +
        'the whole inches 1 … 100 000 miss the correctly rounded double',
      rows: table(ordinary, OURS),
      targets: [
        {
          name: 'convert',
          measured: besideFastest,
          atMost: 1,
          unit: '× the fastest ordinary peer',
        },
        { name: 'convert', measured: countMisses(OURS), atMost: 0, unit: 'misses' },
      ],
    },
    {
      title: 'a closure prepared for one fixed pair of units',
      rows: table(closures, OUR_CLOSURE),
      targets: [],
    },
  ];
}

function runnerOf({ name, convertAll }: Converter) {
  const inches = Float64Array.from({ length: 500 }, (_, i) => 0.0005 + i * 0.0137);
  const out = new Float64Array(inches.length);
  const pass = (): number => {
    convertAll(inches, out);
    return out[out.length - 1] ?? Number.NaN;
  };
  return { name, pass };
}

function countMisses({ convertAll }: Converter): number {
  const inches = Float64Array.from({ length: 100_000 }, (_, i) => i + 1);
  const out = new Float64Array(inches.length);
  convertAll(inches, out);
  return out.filter((millimetres, i) => millimetres !== exactMillimetres(i + 1)).length;
}

/** x · 25.4 as an exact decimal, which Number() rounds correctly. */
function exactMillimetres(inches: number): number {
  const tenths = BigInt(inches) * 254n;
  return Number(`${tenths / 10n}.${tenths % 10n}`);
}
