import { type RandomBits, uniform } from './random.js';

/** Where the tail begins, and the area of each of the 128 layers: Marsaglia and Tsang (2000). */
const TAIL = 3.442619855899;
const AREA = 9.91256303526217e-3;

/** Steps in which a layer is crossed, either way: what 32 bits leave once seven have chosen the layer. */
const STEPS = 16_777_216;

/** The normal density without its factor. */
const bell = (x: number) => Math.exp(-0.5 * x * x);

/**
 * The layers that lie under the bell, the lowest first: how wide each is, and how high its foot. The lowest holds the
 * tail too, and is as wide as its area wants. Past the last comes the top, of no width.
 */
export const layers = /* @__PURE__ */ (() => {
  const width = new Float64Array(129);
  width[0] = AREA / bell(TAIL);
  width[1] = TAIL;
  for (let i = 1; i < 127; i++) {
    width[i + 1] = Math.sqrt(-2 * Math.log(AREA / (width[i] as number) + bell(width[i] as number)));
  }
  return { width, foot: width.map(bell) };
})();

/**
 * A normally distributed number of mean 0 and standard deviation 1 by the ziggurat of Marsaglia and Tsang (2000). Layer
 * and place in it come from different bits, as Doornik (2005) asks for.
 */
export function normal(bits: RandomBits): number {
  const { width, foot } = layers;
  for (;;) {
    const drawn = bits() | 0;
    const layer = drawn & 127;
    // Halfway between two steps, so that the middle is 0 and no side is favoured.
    const x = (((drawn >> 7) + 0.5) / STEPS) * (width[layer] as number);
    // Nearly always: below the corner of the layer above, and so below the bell.
    if (Math.abs(x) < (width[layer + 1] as number)) return x;
    if (layer === 0) return x < 0 ? -beyondTail(bits) : beyondTail(bits);
    const from = foot[layer] as number;
    const to = foot[layer + 1] as number;
    if (from + uniform(bits) * (to - from) < bell(x)) return x;
  }
}

/** A number past the beginning of the tail: Marsaglia (1964). */
function beyondTail(bits: RandomBits): number {
  for (;;) {
    const past = -Math.log(uniform(bits)) / TAIL;
    if (-2 * Math.log(uniform(bits)) > past * past) return TAIL + past;
  }
}
