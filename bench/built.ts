/**
 * The built package, as its users get it. The types come from the source, so
 * that type checking needs no build; the code that runs is dist/index.js.
 */
export const distFile = new URL('../dist/index.js', import.meta.url);

const built: typeof import('crankwright') = await import(distFile.href);
const builtMeasures: typeof import('crankwright/convert-units') = await import(
  new URL('convert-units.js', distFile).href
);

export const { exactMeasures } = builtMeasures;

export const {
  bigEndLoads,
  bigEndOrbit,
  convert,
  finiteBearing,
  finiteBearingAt,
  gasTrace,
  inch,
  kilogram,
  limitsOfSize,
  MPa,
  micrometre,
  millipascalSecond,
  mm,
  oilClearance,
  pickShims,
  ratio,
  roundness,
  rpm,
  selectFit,
  solveReynolds,
  stackUp,
  valueIn,
} = built;
