/** A stream of random bits: each call gives the next 32 of them, as a whole number below 2³². */
export type RandomBits = () => number;

/**
 * The generator xoshiro128** 1.1 of Blackman and Vigna: four words of state, a period of 2¹²⁸ - 1.
 *
 * @param state - four whole numbers of 32 bits, not all zero
 */
export function xoshiro128(state: readonly [number, number, number, number]): RandomBits {
  let [a, b, c, d] = state;
  return () => {
    const fivefold = Math.imul(b, 5);
    const bits = Math.imul((fivefold << 7) | (fivefold >>> 25), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return bits >>> 0;
  };
}

/** The words of SplitMix64 from a seed on: well mixed, however alike the seeds are. */
export function splitMix64(seed: number, count: number): readonly bigint[] {
  return Array.from({ length: count }, (_, i) => {
    let word = wrapped(BigInt(seed) + BigInt(i + 1) * 0x9e3779b97f4a7c15n);
    word = wrapped((word ^ (word >> 30n)) * 0xbf58476d1ce4e5b9n);
    word = wrapped((word ^ (word >> 27n)) * 0x94d049bb133111ebn);
    return word ^ (word >> 31n);
  });
}

const wrapped = (word: bigint) => BigInt.asUintN(64, word);

/** The generator that belongs to a seed, a whole number of zero or more. Same seed, same stream. */
export function randomBits(seed: number): RandomBits {
  const [one = 0n, two = 0n] = splitMix64(seed, 2);
  const low = (word: bigint) => Number(BigInt.asIntN(32, word));
  return xoshiro128([low(one), low(one >> 32n), low(two), low(two >> 32n)]);
}

/** A number between 0 and 1, neither of them met: the middle of one of 2³² equal steps. */
export const uniform = (bits: RandomBits): number => (bits() + 0.5) * 2.3283064365386963e-10;
