import { RebuildInputError } from '../quantities/index.js';
import { exampleOfShape, madeOfWord } from './say-example.js';
import { choicesOf, fieldsOf } from './say-shape.js';
import type { ValueShape } from './shapes.js';
import { unitByName } from './unit-names.js';

/** A call that a field is missing in. */
export interface LackingCall {
  /** The only object that it takes. */
  readonly given: unknown;
  readonly shape: ValueShape;
  readonly run: (given: unknown) => unknown;
}

/**
 * The refusal of a field that is missing, with all that are missing beside it and what each may be; nothing for any
 * other error. A restorer who is told of them one at a time tries five times.
 */
export function allMissing(error: unknown, call: LackingCall): RebuildInputError | undefined {
  if (!isMissing(error)) return undefined;
  const named = error.parameter.match(/\w+/g) ?? [];
  // The places of a list are named by the list: readings[0].diameter.
  const path = Array.isArray(call.given) ? named.slice(1) : named;
  const place = placeAt(path.slice(0, -1), call);
  const lacks = place?.lacks ?? [];
  if (!place || !lacks.includes(path.at(-1) ?? '')) return undefined;
  const examples = examplesOf(error, lacks, call);
  const maker = madeOfWord(place.shape, undefined);
  const said = (field: string) => {
    const made = maker?.gives.includes(field) ? `${maker.call}.${field}` : undefined;
    const shape = place.fields[field] ?? 'anything';
    return `e.g. ${made ?? examples.get(field) ?? exampleOfShape(shape)}`;
  };
  const [own = '', ...others] = [...lacks].sort(
    (one, other) => Number(other === path.at(-1)) - Number(one === path.at(-1)),
  );
  const rest = others.map((field) => `${field}, ${said(field)}`).join('; ');
  const soIs = others.length === 0 ? '' : `; so ${others.length === 1 ? 'is' : 'are'} ${rest}`;
  return new RebuildInputError({
    parameter: error.parameter,
    value: undefined,
    shown: 'is',
    expected: error.expected,
    problem: `missing, ${said(own)}${soIs}`,
    hint: 'Every size has its unit.',
  });
}

const isMissing = (error: unknown): error is RebuildInputError =>
  error instanceof RebuildInputError &&
  error.value === undefined &&
  / is missing;/.test(error.message);

/** The object at a path of names and numbers, and the needed fields that it lacks. */
function placeAt(path: readonly string[], { given, shape }: LackingCall) {
  let [at, own]: readonly [unknown, ValueShape] = [given, shape];
  for (const step of path) {
    const list = choicesOf(own).find((one) => typeof one === 'object' && 'list' in one);
    const fields = fieldsOf(own);
    own =
      typeof list === 'object' && 'list' in list && /^\d+$/.test(step)
        ? list.list
        : (fields[step] ?? fields[`${step}?`] ?? 'anything');
    at = Object(at)[step];
  }
  if (typeof at !== 'object' || at === null) return undefined;
  const fields = fieldsOf(own);
  const has = at as Readonly<Record<string, unknown>>;
  const lacks = Object.keys(fields).filter((key) => !key.endsWith('?') && has[key] === undefined);
  return { shape: own, fields, lacks };
}

/** What each field may be by its own domain: put in one after the other, until something else is refused. */
function examplesOf(
  first: RebuildInputError,
  lacks: readonly string[],
  { given, run }: LackingCall,
): ReadonlyMap<string, string> {
  const examples = new Map<string, string>();
  if (first.parameter !== first.parameter.match(/\w+/)?.[0]) return examples;
  let [filled, error]: readonly [object, unknown] = [given as object, first];
  while (isMissing(error) && lacks.includes(error.parameter) && !examples.has(error.parameter)) {
    const [, name = '', number] = /^(\w+)\((-?[\d.]+)\)$/.exec(error.example ?? '') ?? [];
    const unit = unitByName.get(name);
    if (!unit || number === undefined) break;
    examples.set(error.parameter, `${number} ${name}`);
    // The last is not put in: then all would be worked out.
    if (examples.size === lacks.length) break;
    filled = { ...filled, [error.parameter]: unit(Number(number)) };
    error = errorOf(() => run(filled));
  }
  return examples;
}

function errorOf(run: () => unknown): unknown {
  try {
    run();
    return undefined;
  } catch (error) {
    return error;
  }
}
