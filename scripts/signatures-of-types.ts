import ts from 'typescript';
import type {
  ConstantSignature,
  FieldsShape,
  Signature,
  ValueShape,
} from '../src/mathjs/shapes.js';

/** What the functions of one room take and give, and the types that they share, by name. */
export interface Signatures {
  readonly functions: ReadonlyMap<string, Signature>;
  readonly constants: ReadonlyMap<string, ConstantSignature>;
  readonly types: ReadonlyMap<string, ValueShape>;
}

/** Reads signatures from declarations. Named objects are written once and referred to by name. */
export class SignatureReader implements Signatures {
  readonly functions = new Map<string, Signature>();
  readonly constants = new Map<string, ConstantSignature>();
  readonly types = new Map<string, ValueShape>();

  constructor(
    private readonly checker: ts.TypeChecker,
    private readonly isOurs: (declaration: ts.Declaration) => boolean,
  ) {}

  /** Reads one function, of overloads the first; or one constant that is made of quantities. */
  read(name: string, room: string, symbol: ts.Symbol): void {
    this.#readConstant(name, room, symbol);
    const declaration = symbol.declarations?.find(ts.isFunctionDeclaration);
    const [signature] = this.checker.getSignaturesOfType(
      this.checker.getTypeOfSymbol(symbol),
      ts.SignatureKind.Call,
    );
    if (!declaration || !signature) return;
    this.functions.set(name, {
      room,
      takes: signature.parameters.map((parameter) => ({
        name: parameter.name,
        shape: this.of(this.checker.getTypeOfSymbol(parameter)),
        ...(isOptional(parameter) && { optional: true }),
      })),
      gives: this.of(this.checker.getReturnTypeOfSignature(signature)),
      says: this.#saysOf(symbol),
    });
  }

  /** Units and domains can be called, and are no constants. Tables of words hold no quantity. */
  #readConstant(name: string, room: string, symbol: ts.Symbol): void {
    if (!symbol.declarations?.some(ts.isVariableDeclaration)) return;
    const type = this.checker.getTypeOfSymbol(symbol);
    if (type.getCallSignatures().length > 0 || !this.#holdsQuantity(type)) return;
    this.constants.set(name, { room, is: this.of(type), says: this.#saysOf(symbol) });
  }

  #holdsQuantity(type: ts.Type): boolean {
    if (this.quantity(type) !== undefined) return true;
    if (type.getCallSignatures().length > 0) return false;
    const inside =
      this.checker.isArrayType(type) || this.checker.isTupleType(type)
        ? this.checker.getTypeArguments(type as ts.TypeReference)
        : type.flags & ts.TypeFlags.Object
          ? type.getProperties().map((field) => this.checker.getTypeOfSymbol(field))
          : [];
    return inside.some((each) => this.#holdsQuantity(each));
  }

  #saysOf(symbol: ts.Symbol): string {
    return firstSentence(ts.displayPartsToString(symbol.getDocumentationComment(this.checker)));
  }

  private of(given: ts.Type): ValueShape {
    const type = this.checker.getNonNullableType(given);
    if (type.flags & (ts.TypeFlags.Unknown | ts.TypeFlags.Any)) return 'anything';
    if (type.flags & ts.TypeFlags.Instantiable) {
      const constraint = this.checker.getBaseConstraintOfType(type);
      // `Q extends number` is a quantity of whatever dimension it is used for.
      if (constraint && constraint.flags & ts.TypeFlags.Number) return 'quantity';
      return constraint && constraint !== type ? this.of(constraint) : 'anything';
    }
    const quantity = this.quantity(type);
    if (quantity) return quantity;
    const symbol = type.aliasSymbol ?? type.getSymbol();
    const declaration = symbol?.declarations?.[0];
    if (!symbol || !declaration || symbol.name.startsWith('__') || !this.isOurs(declaration)) {
      return this.laidOut(type);
    }
    if (symbol.name === 'Unit') return 'unit';
    const name = this.nameOf(type, symbol);
    if (!this.types.has(name)) {
      this.types.set(name, 'anything');
      this.types.set(name, this.laidOut(type));
    }
    return `#${name}`;
  }

  /** The dimension of a quantity; `quantity` where it is left open. */
  private quantity(type: ts.Type): ValueShape | undefined {
    const brand =
      !type.isUnion() &&
      type.getProperties().find(({ escapedName }) => `${escapedName}`.startsWith('__@dimension'));
    if (!brand) return type.flags & ts.TypeFlags.Number ? 'number' : undefined;
    const dimension = this.checker.getTypeOfSymbol(brand);
    return dimension.isStringLiteral() ? (dimension.value as ValueShape) : 'quantity';
  }

  private nameOf(type: ts.Type, symbol: ts.Symbol): string {
    const reference = type as ts.TypeReference;
    const isReference =
      'objectFlags' in type &&
      ((type as ts.ObjectType).objectFlags & ts.ObjectFlags.Reference) !== 0;
    const own = type.aliasSymbol
      ? (type.aliasTypeArguments ?? [])
      : isReference
        ? this.checker.getTypeArguments(reference).slice(0, reference.target.typeParameters?.length)
        : [];
    const words = own.map((argument) => this.wordFor(argument));
    return words.length === 0 ? symbol.name : `${symbol.name}<${words.join()}>`;
  }

  private wordFor(type: ts.Type): string {
    if (type.isStringLiteral()) return type.value;
    const shape = this.of(type);
    return typeof shape === 'string' ? shape.replace('#', '') : 'anything';
  }

  private laidOut(type: ts.Type): ValueShape {
    const parts = type.isUnion() ? type.types : [type];
    const words = parts.flatMap((part) => wordOf(part) ?? []);
    const others = parts.filter((part) => wordOf(part) === undefined);
    const shapes = others.map((part) => (parts.length > 1 ? this.of(part) : this.object(part)));
    // The compiler keeps the members of a union in no order of the code's.
    const either = unique([...shapes, ...oneOf(words)].sort(byText));
    return either.length === 1 ? (either[0] as ValueShape) : { either };
  }

  private object(type: ts.Type): ValueShape {
    if (type.flags & ts.TypeFlags.String) return 'text';
    if (this.checker.isArrayType(type) || this.checker.isTupleType(type)) {
      const items = this.checker.getTypeArguments(type as ts.TypeReference);
      const [first, ...more] = unique(items.map((item) => this.of(item)).sort(byText));
      return {
        list: more.length === 0 && first ? first : { either: [first ?? 'anything', ...more] },
      };
    }
    if (type.getCallSignatures().length > 0) return 'function';
    if (!(type.flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection))) return 'anything';
    const [index] = this.checker.getIndexInfosOfType(type);
    if (index && type.getProperties().length === 0) return { each: this.of(index.type) };
    const fields = inOrder(type).map((field) => {
      const key = isOptional(field) ? `${field.name}?` : field.name;
      return [key, this.of(this.checker.getTypeOfSymbol(field))] as const;
    });
    return { fields: Object.fromEntries(fields.sort(needed)) } satisfies FieldsShape;
  }
}

/** The fields of a type; the compiler keeps those of a mapped type in no order of the code's. */
function inOrder(type: ts.Type): ts.Symbol[] {
  const isMapped = ((type as ts.ObjectType).objectFlags & ts.ObjectFlags.Mapped) !== 0;
  const fields = type.getProperties();
  return isMapped ? fields.toSorted((a, b) => (a.name < b.name ? -1 : 1)) : fields;
}

/** What must be given before what may be left out. */
const needed = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]) =>
  Number(a.endsWith('?')) - Number(b.endsWith('?'));

const byText = (a: ValueShape, b: ValueShape) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1);

function isOptional(symbol: ts.Symbol): boolean {
  const declaration = symbol.valueDeclaration;
  return (
    (symbol.flags & ts.SymbolFlags.Optional) !== 0 ||
    (declaration !== undefined &&
      ts.isParameter(declaration) &&
      (declaration.questionToken !== undefined || declaration.initializer !== undefined))
  );
}

function wordOf(type: ts.Type): string | number | boolean | undefined {
  if (type.isStringLiteral() || type.isNumberLiteral()) return type.value;
  if (!(type.flags & ts.TypeFlags.BooleanLiteral)) return undefined;
  return (type as ts.Type & { readonly intrinsicName: string }).intrinsicName === 'true';
}

function oneOf(words: readonly (string | number | boolean)[]): readonly ValueShape[] {
  if (words.length === 0) return [];
  const isTruth = words.every((word) => typeof word === 'boolean');
  return [isTruth ? 'truth' : { oneOf: [...words].sort() }];
}

function unique(shapes: readonly ValueShape[]): readonly ValueShape[] {
  return [...new Map(shapes.map((shape) => [JSON.stringify(shape), shape])).values()];
}

/** The first sentence of the first paragraph, on one line. */
function firstSentence(text: string): string {
  const [paragraph = ''] = text.split(/\n\s*\n/);
  const line = paragraph
    .replace(/\{@link (\w+)\}/g, '$1')
    .replace(/\s+/g, ' ')
    .trim();
  return /^.*?[.](?=\s+[A-Z]|$)/.exec(line)?.[0] ?? line;
}
