import type { UnitSystem } from '../quantities/index.js';
import type { Typed } from './arguments.js';
import { oneOf } from './values.js';
import { WrongCommand } from './wrong-command.js';

/** A request to put what came back into a shed file. */
export interface DoneRequest {
  readonly command: 'done';
  readonly file: string;
  readonly work: string;
  readonly readings?: string;
  readonly output?: string;
  readonly force: boolean;
}

/** A request to tell what differs between two shed files. */
export interface DiffRequest {
  readonly command: 'diff';
  readonly older: string;
  readonly newer: string;
  readonly oldReadings?: string;
  readonly readings?: string;
  readonly units?: UnitSystem;
  readonly json: boolean;
}

/** Reads the command line of `done`. */
export function readDone(typed: Typed): DoneRequest {
  const [file, work] = twoFiles(typed, 'a shed file and a record of work');
  const [readings, output] = [first(typed, 'readings'), first(typed, 'output')];
  const force = typed.options.has('force');
  if (force && output === undefined) throw new WrongCommand('--force needs --output');
  return {
    command: 'done',
    file,
    work,
    ...(readings !== undefined && { readings }),
    ...(output !== undefined && { output }),
    force,
  };
}

/** Reads the command line of `diff`. */
export function readDiff(typed: Typed): DiffRequest {
  const [older, newer] = twoFiles(typed, 'the older shed file and the newer one');
  const [oldReadings, readings] = [first(typed, 'old-readings'), first(typed, 'readings')];
  const units = first(typed, 'units');
  return {
    command: 'diff',
    older,
    newer,
    ...(oldReadings !== undefined && { oldReadings }),
    ...(readings !== undefined && { readings }),
    ...(units !== undefined && { units: oneOf(units, ['inch', 'metric'], '--units') }),
    json: typed.options.has('json'),
  };
}

const first = ({ options }: Typed, name: 'readings' | 'old-readings' | 'output' | 'units') =>
  options.get(name)?.[0];

function twoFiles({ command, operands }: Typed, what: string): readonly [string, string] {
  const [one, other, more] = operands;
  if (one === undefined || other === undefined) throw new WrongCommand(`${command} needs ${what}`);
  if (more !== undefined) throw new WrongCommand(`${command}: "${more}" is one too many`);
  return [one, other];
}
