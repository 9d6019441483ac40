import type { RebuildInputError } from 'crankwright';
import type { FileError } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { tries } from '../support/tries.js';
import type { Calls } from './calls/calls.js';
import {
  holed,
  listsIn,
  objectsIn,
  type Path,
  pathsIn,
  replaced,
  showPath,
  valueAt,
} from './hostile.js';
import { flawOfError } from './outcome.js';
import { registry } from './registry.js';

/** How a refusal names a place, where it is not the path from the argument on. */
const NAMED_OTHERWISE: Readonly<Record<string, (place: string) => string>> = {
  // The functions that take its two parts name places within them.
  safeHours: (place) => place.replace(/^(?:sump|bearing)\.(?=.*[.[])/, ''),
};
/** Where null is what was not filled in. */
const NULL_LEFT_OUT: Readonly<Record<string, RegExp>> = {
  readSheet: /^\[0\]\.(?:rods|mains|cylinders)\[\d+\]\.(?!name)\w+(?:\.\w+)?$/,
};
/** Of more places than this in one call every so-manieth is tried: a gas trace has hundreds of readings alike. */
const MOST_PLACES = tries(12, 75);

describe.each(Object.entries(registry))('%s', (name, target) => {
  it('refuses a field that it does not know, in every object that it is given', async () => {
    expect(
      await complaints(name, target, (args) =>
        objectsIn(args).map((path) => {
          const object = { ...(valueAt(args, path) as object), strangr: 1 };
          return { wrong: [...path, 'strangr'], args: () => replaced(args, path, object) };
        }),
      ),
    ).toEqual([]);
  });

  it('refuses null in place of everything that it is given', async () => {
    expect(
      await complaints(name, target, (args) =>
        pathsIn(args)
          .filter((path) => path.length > 1 && !NULL_LEFT_OUT[name]?.test(showPath(path)))
          .map((path) => ({ wrong: path, args: () => replaced(args, path, null) })),
      ),
    ).toEqual([]);
  });

  it('refuses a hole at either end of every list that it is given', async () => {
    expect(
      await complaints(name, target, (args) =>
        listsIn(args).flatMap(({ path, length }) =>
          [...new Set([0, length - 1])].map((place) => {
            const wrong = [...path, place];
            return { wrong, args: () => holed(args, wrong) };
          }),
        ),
      ),
    ).toEqual([]);
  });
});

/** A sound call with something wrong in it, and where. */
interface Spoilt {
  readonly wrong: Path;
  readonly args: () => unknown;
}

async function complaints(
  name: string,
  target: Calls,
  spoil: (args: readonly unknown[]) => readonly Spoilt[],
): Promise<readonly string[]> {
  const found: string[] = [];
  for (const [n, sound] of target.sound.entries()) {
    // What another function made is passed on as it came.
    const cases = spoil(sound).filter(({ wrong: [argument] }) => argument !== 0 || !target.madeBy);
    const stride = Math.ceil(cases.length / MOST_PLACES);
    for (const { wrong, args } of cases.filter((_, i) => i % stride === 0)) {
      const flaw = await flawOf(name, target, args() as readonly unknown[], wrong);
      if (flaw !== undefined) found.push(`call ${n} args${showPath(wrong)} ${flaw}`);
    }
  }
  return found;
}

/** What is wrong with how a call takes what it must refuse at a place. */
async function flawOf(name: string, target: Calls, args: readonly unknown[], wrong: Path) {
  const from = showPath(wrong.slice(1)).replace(/^\./, '');
  const place = NAMED_OTHERWISE[name]?.(from) ?? from;
  try {
    await target.run(args);
  } catch (error) {
    const flaw = flawOfError(error);
    if (flaw !== undefined) return flaw;
    const { parameter, message } = error as RebuildInputError;
    // A file has many problems at once, each with its place.
    const { problems = [] } = error as Partial<FileError>;
    const named = parameter.endsWith(place) || problems.some(({ path }) => path === place);
    return named ? undefined : `refuses ${parameter}: ${message}`;
  }
  return 'takes it';
}
