/** Draws that a whole number decides: the same ones every time. */
export interface Dice {
  /** A whole number, both ends among them. */
  readonly from: (least: number, most: number) => number;
  /** True so many times in a hundred. */
  readonly percent: (chance: number) => boolean;
  /** One of a list. */
  readonly oneOf: <T>(list: readonly T[]) => T;
}

/** Source: the linear congruential generator of Numerical Recipes, 2nd ed., section 7.1, from memory. */
export function diceOf(seed: number): Dice {
  let state = seed >>> 0;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    // Its low bits repeat soon: the high ones decide.
    return state / 2 ** 32;
  };
  // Seeds that are neighbours begin alike.
  for (let i = 0; i < 8; i++) next();
  const from = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  return {
    from,
    percent: (chance) => next() * 100 < chance,
    oneOf: (list) => list[from(0, list.length - 1)] as never,
  };
}
