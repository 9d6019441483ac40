import { FileError, inspect, readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { type Json, spoilt } from './sheets.js';

/** The problems that a sheet is refused for. */
function problemsIn(changes: Readonly<Record<string, Json>>): readonly string[] {
  try {
    readSheet(spoilt(changes));
    return [];
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    return error.problems.map(({ path, message }) => `${path}: ${message}`);
  }
}

describe('shells that were found in a bearing', () => {
  const housing = (inches: string) => ({ 'rods[0].housingBore': `${inches} in` });

  it('are inspected where they may have run there, however badly', () => {
    // The big end of the example is 1.7507 in and its shells leave about 2 thou: 60 thou more.
    expect(problemsIn(housing('1.8107'))).toEqual([]);
    const [rod] = inspect(readSheet(spoilt(housing('1.8107')))).rods?.bearings ?? [];
    expect(rod?.fitted?.explanation.outcome).toBe('too loose, unexplained');
  });

  it('are refused where they were never one bearing with journal and housing', () => {
    const [problem, ...others] = problemsIn(housing('1.8507'));
    expect(problem).toMatch(
      /^rods\[0\]\.fittedShells: .* is outside .* Check digits, units and bearings\.$/,
    );
    expect(others).toEqual([]);
  });
});
