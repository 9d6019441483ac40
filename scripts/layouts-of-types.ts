import ts from 'typescript';

/** The layout of a named type, written down as a constant. */
export interface Constant {
  readonly declaration: ts.Declaration;
  readonly text: string;
  /** A function that guards it besides. */
  readonly guard?: string;
  /** Names of the constants that it refers to. */
  readonly uses: ReadonlySet<string>;
}

/**
 * The layouts of types and of the named types that they are made of, by name, those that others
 * refer to first. A type that is declared where it is not to be named is written out where it is used.
 * Guards are those of types by name.
 */
export function layoutsOf(
  checker: ts.TypeChecker,
  types: readonly ts.Type[],
  isNamed: (declaration: ts.Declaration) => boolean,
  guards: Readonly<Record<string, string>>,
): ReadonlyMap<string, Constant> {
  const layouts = new Layouts(checker, isNamed, guards);
  for (const type of types) layouts.of(type);
  return layouts.constants;
}

class Layouts {
  readonly constants = new Map<string, Constant>();
  /** Types that are being written, to find those that contain themselves. */
  private readonly open = new Set<string>();
  private uses = new Set<string>();

  constructor(
    private readonly checker: ts.TypeChecker,
    private readonly isNamed: (declaration: ts.Declaration) => boolean,
    private readonly guards: Readonly<Record<string, string>>,
  ) {}

  /** The name of a constant, or the layout itself where the type has no name of its own. */
  of(given: ts.Type): string {
    if (given.flags & ts.TypeFlags.Unknown) return "'anything'";
    // A field that may be absent may be undefined, which JSON does not tell from absent.
    const type = this.checker.getNonNullableType(given);
    const symbol = type.aliasSymbol ?? type.getSymbol();
    const declaration = symbol?.declarations?.[0];
    const isNamed = declaration && this.isNamed(declaration) && !symbol.name.startsWith('__');
    if (!isNamed || isNumber(type)) return this.laidOut(type);
    const name = this.nameOf(type, symbol);
    if (this.open.has(name)) throw new Error(`${name} would contain itself.`);
    if (!this.constants.has(name)) {
      const outer = this.uses;
      const uses = new Set<string>();
      this.uses = uses;
      this.open.add(name);
      const text = this.laidOut(type);
      this.open.delete(name);
      const guard = this.guards[symbol.name];
      this.constants.set(name, { declaration, text, uses, ...(guard !== undefined && { guard }) });
      this.uses = outer;
    }
    this.uses.add(name);
    return name;
  }

  /** `grindPlanLayout`; `findingLengthLayout` of `Finding<'length'>`. All quantities are laid out alike. */
  private nameOf(type: ts.Type, symbol: ts.Symbol): string {
    const words = this.argumentsOf(type).flatMap((argument) => {
      if (argument.isStringLiteral()) return [argument.value];
      return isNumber(argument) ? [] : [argument.getSymbol()?.name ?? ''];
    });
    return `${uncapital([symbol.name, ...words.map(capital)].join(''))}Layout`;
  }

  private argumentsOf(type: ts.Type): readonly ts.Type[] {
    if (type.aliasSymbol) return type.aliasTypeArguments ?? [];
    if (!hasFlag(type, ts.ObjectFlags.Reference)) return [];
    const reference = type as ts.TypeReference;
    const own = reference.target.typeParameters?.length ?? 0;
    return this.checker.getTypeArguments(reference).slice(0, own);
  }

  private laidOut(type: ts.Type): string {
    const parts = type.isUnion() ? type.types : [type];
    const words = parts.flatMap((part) => wordOf(part) ?? []).sort();
    const objects = parts.filter(isObject).sort(byPlace);
    const others = parts.filter((part) => wordOf(part) === undefined && !objects.includes(part));
    const either = new Set([
      ...others.map((part) => this.primitive(part)),
      ...oneOf(words),
      ...this.oneObjectOf(objects),
    ]);
    const [only = '', ...more] = either;
    return more.length === 0 ? only : `{ either: [${[...either].join(', ')}] }`;
  }

  private primitive(type: ts.Type): string {
    if (isNumber(type)) return "'number'";
    if (type.flags & ts.TypeFlags.String) return "'string'";
    throw new Error(`There is no layout of ${this.checker.typeToString(type)}.`);
  }

  /** Objects of which it may be one, told apart by a field if there is one that tells them apart. */
  private oneObjectOf(types: readonly ts.Type[]): readonly string[] {
    const layouts = types.map((type) => (types.length > 1 ? this.of(type) : this.object(type)));
    if (types.length < 2) return layouts;
    const by = this.discriminator(types);
    if (by === undefined) return layouts;
    return [`{ by: '${by}', variants: [${layouts.map((each) => `\n  ${each},`).join('')}\n] }`];
  }

  /** The first field that all of them must have and that is another word in each. */
  private discriminator([first, ...others]: readonly ts.Type[]): string | undefined {
    const wordsIn = (type: ts.Type | undefined, field: string) => {
      const symbol = type?.getProperty(field);
      if (!symbol || symbol.flags & ts.SymbolFlags.Optional) return [];
      const of = this.checker.getTypeOfSymbol(symbol);
      const words = (of.isUnion() ? of.types : [of]).map(wordOf);
      return words.includes(undefined) ? [] : words;
    };
    return first?.getProperties().find(({ name }) => {
      const words = [first, ...others].map((type) => wordsIn(type, name));
      const all = words.flat();
      return words.every((some) => some.length > 0) && new Set(all).size === all.length;
    })?.name;
  }

  private object(type: ts.Type): string {
    if (this.checker.isTupleType(type)) {
      const items = this.checker.getTypeArguments(type as ts.TypeReference);
      const [item, ...others] = new Set(items.map((each) => this.of(each)));
      if (others.length > 0) throw new Error('There is no layout of lists of unlike things.');
      return `{ list: ${item}, length: ${items.length} }`;
    }
    if (this.checker.isArrayType(type)) {
      const [item] = this.checker.getTypeArguments(type as ts.TypeReference);
      return `{ list: ${this.of(item as ts.Type)} }`;
    }
    const [index] = this.checker.getIndexInfosOfType(type);
    if (index && type.getProperties().length === 0) return `{ each: ${this.of(index.type)} }`;
    if (index || type.getCallSignatures().length > 0) {
      throw new Error(`There is no layout of ${this.checker.typeToString(type)}.`);
    }
    // The compiler keeps the fields of a mapped type in no order of the code's.
    const isMapped = hasFlag(type, ts.ObjectFlags.Mapped);
    const properties = type.getProperties();
    const fields = (isMapped ? properties.toSorted(byName) : properties).map((field) => {
      const isOptional = field.flags & ts.SymbolFlags.Optional;
      const key = keyOf(isOptional ? `${field.name}?` : field.name);
      return `${key}: ${this.of(this.checker.getTypeOfSymbol(field))}`;
    });
    return `{ fields: { ${fields.join(', ')} } }`;
  }
}

/** A number, whatever it is the quantity of. */
function isNumber(type: ts.Type): boolean {
  if (type.flags & ts.TypeFlags.Number) return true;
  return type.isIntersection() && type.types.some(isNumber);
}

const isObject = (type: ts.Type): boolean =>
  !isNumber(type) && (type.flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection)) !== 0;

const hasFlag = (type: ts.Type, flag: ts.ObjectFlags): boolean =>
  isObject(type) && ((type as ts.ObjectType).objectFlags & flag) !== 0;

/** A word, number or truth as the code writes it, if the type is just that. */
function wordOf(type: ts.Type): string | undefined {
  if (type.isStringLiteral()) return quoted(type.value);
  if (type.isNumberLiteral()) return String(type.value);
  return type.flags & ts.TypeFlags.BooleanLiteral
    ? (type as ts.Type & { readonly intrinsicName: string }).intrinsicName
    : undefined;
}

function oneOf(words: readonly string[]): readonly string[] {
  if (words.length === 0) return [];
  return [words.join() === 'false,true' ? "'boolean'" : `{ oneOf: [${words.join(', ')}] }`];
}

/** In the order of the code, which the compiler does not keep. */
function byPlace(a: ts.Type, b: ts.Type): number {
  const placeOf = ({ symbol }: ts.Type) => {
    const declaration = symbol?.declarations?.[0];
    const place = String(declaration?.pos ?? 0).padStart(9, '0');
    return `${declaration?.getSourceFile().fileName}:${place}`;
  };
  return placeOf(a) < placeOf(b) ? -1 : 1;
}

const quoted = (word: string): string => `'${word.replaceAll("'", "\\'")}'`;
const keyOf = (name: string): string => (/^\w+$/.test(name) ? name : quoted(name));
const byName = (a: ts.Symbol, b: ts.Symbol): number => (a.name < b.name ? -1 : 1);
const capital = (word: string): string => word.slice(0, 1).toUpperCase() + word.slice(1);
const uncapital = (word: string): string => word.slice(0, 1).toLowerCase() + word.slice(1);
