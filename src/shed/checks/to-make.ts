import type { FileProblem } from '../../reading/index.js';
import { nameOf, type RawPart } from './names.js';
import { placed, type SoundShed } from './sound-shed.js';

/** Parts to make that share their name with another part, or that no engine has. */
export function toMakeProblems(
  { engine, toMake = {} }: SoundShed,
  parts: readonly RawPart[],
): readonly FileProblem[] {
  const taken = new Map(
    parts.flatMap(({ path, part }) => {
      const name = nameOf(part);
      return name === undefined ? [] : [[name, path] as const];
    }),
  );
  const shells = placed(toMake.shells ?? [], 'toMake.shells');
  const all = [
    ...shells,
    ...placed(toMake.thrustWashers ?? [], 'toMake.thrustWashers'),
    ...placed(toMake.sleeves ?? [], 'toMake.sleeves'),
  ];
  const noMains = shells.filter(({ part }) => part.fits === 'mains' && engine?.mains === 0);
  return [
    ...all.flatMap(({ path, part: { name } }): readonly FileProblem[] => {
      if (name === undefined) return [];
      const other = taken.get(name);
      taken.set(name, other ?? path);
      if (other === undefined) return [];
      const message = `"${name}" is also the name of ${other}; give each part its own name`;
      return [{ path: `${path}.name`, message }];
    }),
    ...noMains.map(({ path, part }) => ({
      path: `${path}.fits`,
      message: `"${part.name ?? 'it'}" is for mains, but "${engine?.name ?? 'the engine'}" has 0 mains with shells`,
    })),
  ];
}
