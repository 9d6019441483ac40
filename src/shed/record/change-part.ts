import { didYouMean, type Given, isSameData, rawItems } from '../../reading/index.js';
import { nameOf, type RawPart } from '../checks/names.js';
import { PLACES } from '../checks/places.js';
import type { DoneWork } from '../works.js';
import { canBeDoneOn, undoneBy } from './undone.js';
import type { CamePart } from './work-file.js';

/** A refusal, at its place in the record of work. */
export type Refuse = (path: string, message: string) => void;

/** Says where a value in the shed file came from: both paths begin at the part. */
export type Moved = (inShed: string, inWork: string) => void;

/** A part as its file holds it after the work, and the fields that changed as they were before. */
export interface ChangedPart {
  readonly part: Given;
  readonly before: Given;
}

/** Puts what came back into a part: what was measured, what no longer holds, and the faults that are gone. */
export function changePart(
  { section, part }: RawPart,
  { name, fields, done = [], repaired = [] }: CamePart,
  refuse: Refuse,
  moved: Moved,
): ChangedPart {
  const whole = new Holder(part);
  const lists = new Map(PLACES[section].map(({ list }) => [list, rawItems(part[list])]));
  const places = new Map(
    [...lists].map(([list, items]) => [list, items.map((place) => new Holder(place))]),
  );
  const placeIn = (list: string, wanted: string | undefined, path: string) => {
    const all = places.get(list) ?? [];
    const found = all.find(({ was }) => nameOf(was) === wanted);
    if (found === undefined) {
      const names = all.map((place) => nameOf(place.was));
      refuse(path, notThere(wanted, names, `a place of "${name}"`));
    }
    return found;
  };

  for (const [field, value] of Object.entries(fields)) {
    if (!lists.has(field) || !Array.isArray(value) || !Array.isArray(part[field])) {
      whole.set(field, value);
      moved(`.${field}`, `.${field}`);
      continue;
    }
    rawItems(value).forEach((given, i) => {
      const { name: its, repaired: mended, ...others } = given;
      const place = placeIn(field, nameOf({ name: its }), `.${field}[${i}].name`);
      if (place === undefined) return;
      const at = (places.get(field) ?? []).indexOf(place);
      for (const [key, each] of Object.entries(others)) {
        place.set(key, each);
        moved(`.${field}[${at}].${key}`, `.${field}[${i}].${key}`);
      }
      place.repair(textsIn(mended), `.${field}[${i}].repaired`, refuse);
    });
  }
  whole.repair(repaired, '.repaired', refuse);
  done.forEach((work, i) => {
    const path = `.done[${i}]`;
    if (!canBeDoneOn(work.work, section)) {
      refuse(`${path}.work`, `"${work.work}" is not done on "${name}", which is in ${section}`);
      return;
    }
    for (const { list, fields: undone } of undoneBy(work.work)) {
      if (list === undefined) {
        for (const field of undone) whole.forget(field);
        continue;
      }
      if (!lists.has(list)) continue;
      const those = work.places
        ? work.places.flatMap((each, k) => placeIn(list, each, `${path}.places[${k}]`) ?? [])
        : (places.get(list) ?? []);
      for (const place of those) for (const field of undone) place.forget(field);
    }
  });

  for (const [list, all] of places) {
    if (all.every(({ isSame }) => isSame)) continue;
    whole.hold(
      list,
      all.map(({ now }) => now),
      all.flatMap(({ was, before, isSame }) => (isSame ? [] : [{ name: was['name'], ...before }])),
    );
  }
  return { part: whole.now, before: whole.before };
}

const textsIn = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((each) => typeof each === 'string') : [];

/** The message for a name that is not there. */
export function notThere(
  wanted: string | undefined,
  known: readonly (string | undefined)[],
  what: string,
): string {
  const names = known.filter((each) => each !== undefined);
  const question = didYouMean(wanted, names);
  const some = names.length === 0 ? 'there is none' : `there are ${names.slice(0, 30).join(', ')}`;
  return `${JSON.stringify(wanted ?? '')} is not ${what}; ${question ? `${question} ` : ''}${some}`;
}

/** An object of the file that fields are replaced in. */
class Holder {
  readonly was: Given;
  now: Given;
  before: Given = {};
  readonly #set = new Set<string>();

  constructor(was: Given) {
    this.was = was;
    this.now = was;
  }

  get isSame(): boolean {
    return this.now === this.was;
  }

  /** Puts a new value in, and keeps the old one. */
  set(field: string, value: unknown): void {
    this.#set.add(field);
    if (!isSameData(this.was[field], value)) this.hold(field, value, this.was[field]);
  }

  hold(field: string, value: unknown, old: unknown): void {
    this.now = { ...this.now, [field]: value };
    if (old !== undefined) this.before = { ...this.before, [field]: old };
  }

  /** Takes out what no longer holds, unless it was measured anew. */
  forget(field: string): void {
    const { [field]: old, ...others } = this.now;
    if (this.#set.has(field) || old === undefined) return;
    this.now = others;
    this.before = { ...this.before, [field]: old };
  }

  /** Takes faults out. */
  repair(faults: readonly string[], path: string, refuse: Refuse): void {
    if (faults.length === 0) return;
    const old = textsIn(this.now['faults']);
    faults.forEach((fault, i) => {
      if (old.includes(fault)) return;
      const question = didYouMean(fault, old);
      const has = old.length === 0 ? 'none is listed' : `listed are ${old.join(', ')}`;
      refuse(`${path}[${i}]`, `"${fault}" is not one of its faults; ${question ?? has}`);
    });
    const left = old.filter((fault) => !faults.includes(fault));
    if (left.length > 0) this.hold('faults', left, old);
    else this.forget('faults');
  }
}

/** What was done, in words, for the history. */
export function workInWords({
  what,
  done = [],
}: Pick<CamePart, 'what' | 'done'>): string | undefined {
  const works = done.map(
    ({ work, step, places }: DoneWork) =>
      `${work}${places ? ` ${places.join(', ')}` : ''}${step === undefined ? '' : ` to ${step}`}`,
  );
  const all = [...(what ? [what] : []), ...works];
  return all.length === 0 ? undefined : all.join('; ');
}
