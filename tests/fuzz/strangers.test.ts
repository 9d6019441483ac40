import { describe, expect, it } from 'vitest';
import type { Calls } from './calls/calls.js';
import { objectsIn, type Path, replaced, showPath, valueAt } from './hostile.js';
import { flawOfError } from './outcome.js';
import { registry } from './registry.js';

/** How a refusal names a place, where it is not the path from the argument on. */
const NAMED_OTHERWISE: Readonly<Record<string, (place: string) => string>> = {
  // The functions that take the two parts name places in them.
  safeHours: (place) => place.replace(/^(?:sump|bearing)\.(?=.*\.)/, ''),
  // A file has many problems at once, and the error lists them with their places.
  readSheet: (place) => `${place}: `,
  readShelf: (place) => `${place}: `,
};
/** Of more objects than this in one call every so-manieth is tried: a gas trace has hundreds of readings alike. */
const MOST_OBJECTS = 150;

describe.each(Object.entries(registry))('%s', (name, target) => {
  it('refuses a field that it does not know, in every object that it is given', async () => {
    const tried = target.sound.flatMap((args, n) =>
      placesIn(target, args).map((path) => ({ args, path, at: `call ${n} args${showPath(path)}` })),
    );
    const complaints: string[] = [];
    for (const { args, path, at } of tried) {
      const flaw = await flawOf(name, target, args, path);
      if (flaw !== undefined) complaints.push(`${at} ${flaw}`);
    }
    expect(complaints).toEqual([]);
  });
});

/** The objects of a call, but for what another function made: that is passed on as it came. */
function placesIn(target: Calls, args: readonly unknown[]): readonly Path[] {
  const places = objectsIn(args).filter(
    ([argument]) => !(target.madeBy !== undefined && argument === 0),
  );
  const stride = Math.ceil(places.length / MOST_OBJECTS);
  return places.filter((_, i) => i % stride === 0);
}

/** What is wrong with how a call takes a stranger in one of its objects. */
async function flawOf(name: string, target: Calls, args: readonly unknown[], path: Path) {
  const object = { ...(valueAt(args, path) as object), strangr: 1 };
  const from = showPath([...path.slice(1), 'strangr']).replace(/^\./, '');
  const place = NAMED_OTHERWISE[name]?.(from) ?? from;
  try {
    await target.run(replaced(args, path, object) as readonly unknown[]);
  } catch (error) {
    const flaw = flawOfError(error);
    if (flaw !== undefined) return flaw;
    const { parameter, message } = error as Error & { readonly parameter: string };
    const named = parameter.endsWith(place) || message.includes(`\n  ${place}`);
    return named ? undefined : `refuses ${parameter}: ${message}`;
  }
  return 'takes it';
}
