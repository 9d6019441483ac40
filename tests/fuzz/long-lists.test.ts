import { RebuildInputError } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { type Path, pathsIn, replaced, showPath } from './hostile.js';
import { registry } from './registry.js';

/** More than a function can be called with as arguments of its own. */
const MANY = 200_000;

const lists = Object.entries(registry).flatMap(([name, { sound, run, madeBy }]) => {
  const found = new Map<
    string,
    { args: readonly unknown[]; path: Path; list: readonly unknown[] }
  >();
  for (const args of madeBy === undefined ? sound : []) {
    for (const path of pathsIn(args)) {
      const list = path.reduce<unknown>(
        (inner, key) => (inner as Record<string | number, unknown>)[key],
        args,
      );
      const form = showPath(path).replace(/\[\d+\]/g, '[]');
      if (Array.isArray(list) && list.length > 0) found.set(form, { args, path, list });
    }
  }
  return [...found.values()].map((each) => ({ name, run, at: showPath(each.path), ...each }));
});

describe('a list of two hundred thousand', () => {
  it.each(lists)('is taken or refused: $name $at', async ({ run, args, path, list }) => {
    const long = Array.from({ length: MANY }, (_, i) => list[i % list.length]);
    const start = performance.now();
    try {
      await run(replaced(args, path, long) as readonly unknown[]);
      console.log('TAKEN', showPath(path), performance.now() - start);
    } catch (error) {
      console.log(
        'REFUSED',
        showPath(path),
        performance.now() - start,
        String(error).slice(0, 150),
      );
      expect(error).toBeInstanceOf(RebuildInputError);
    }
  });
});
