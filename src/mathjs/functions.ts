import * as bearings from '../bearings/index.js';
import * as crankshaft from '../crankshaft/index.js';
import * as cylinders from '../cylinders/index.js';
import * as fasteners from '../fasteners/index.js';
import * as fits from '../fits/index.js';
import * as judging from '../judging/index.js';
import * as measuring from '../measuring/index.js';
import * as motion from '../motion/index.js';
import * as oil from '../oil/index.js';
import * as quantities from '../quantities/index.js';
import * as timing from '../timing/index.js';
import * as valves from '../valves/index.js';
import type { ConstantSignature, Signature } from './shapes.js';
import { constantSignatures, signatures } from './signatures.js';

const rooms: Readonly<Record<string, object>> = {
  bearings,
  crankshaft,
  cylinders,
  fasteners,
  fits,
  judging,
  measuring,
  motion,
  oil,
  quantities,
  timing,
  valves,
};

/** What mathjs does itself, with its own units: `+`, `to`, `format`. */
const ITS_OWN: readonly string[] = [
  'convert',
  'format',
  'minus',
  'parse',
  'plus',
  'times',
  'tradeUnit',
  'valueIn',
];

/** A function of the library, with what it takes and gives. */
export interface KnownFunction {
  /** Its name, here and in an expression. */
  readonly name: string;
  readonly signature: Signature;
  readonly run: (...args: readonly unknown[]) => unknown;
}

/** Every function that an expression can call, by its name. */
export const functions: ReadonlyMap<string, KnownFunction> = /* @__PURE__ */ known();

function known(): ReadonlyMap<string, KnownFunction> {
  const all = Object.entries(signatures).filter(([name]) => !ITS_OWN.includes(name));
  return new Map(
    all.map(([name, signature]) => {
      const run = (rooms[signature.room] as Record<string, KnownFunction['run']>)[name];
      if (run === undefined) throw new Error(`${signature.room} has no ${name}.`);
      return [name, { name, signature, run }];
    }),
  );
}

/** A constant of the library, with what it is. */
export interface KnownConstant {
  readonly signature: ConstantSignature;
  /** In SI. */
  readonly value: unknown;
}

/** Every quantity of the library that an expression can name, by its name. */
export const constants: ReadonlyMap<string, KnownConstant> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ Object.entries(constantSignatures).map(([name, signature]) => [
    name,
    { signature, value: (rooms[signature.room] as Readonly<Record<string, unknown>>)[name] },
  ]),
);
