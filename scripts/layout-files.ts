import { relative, resolve } from 'node:path';
import ts from 'typescript';
import { type Constant, layoutsOf } from './layouts-of-types.js';

const root = resolve(import.meta.dirname, '..');
const src = `${root}/src`;

/** What functions take that another function of the library made, by the file of its type. */
const TAKEN = {
  'bearings/explain.ts': ['ClearanceExplanation'],
  'bearings/orbit/orbit-types.ts': ['BigEndOrbit'],
  'crankshaft/grind-types.ts': ['GrindPlan'],
  'cylinders/bore-types.ts': ['BorePlan'],
  'cylinders/compression/compression-ratio.ts': ['CompressionRatio'],
  'fasteners/tightening-plan.ts': ['TighteningPlan'],
  'fasteners/torque-setting.ts': ['TorqueSetting'],
  'teaching/exercise-types.ts': ['Exercise'],
  'teaching/worked-types.ts': ['WorkedFormula'],
  'teaching/worksheet.ts': ['Worksheet'],
  'timing/timing-card.ts': ['TimingCard'],
  'measuring/odd-types.ts': ['OddReading'],
  'sheet/action-types.ts': ['Action'],
  'sheet/inspect.ts': ['Inspection'],
  'motion/stand-down.ts': ['PistonStandDown'],
  'planning/diff-plans.ts': ['PlanDifference'],
  'planning/chance-types.ts': ['EngineChances'],
  'planning/plan-types.ts': ['Plan'],
  'sheet/sheet.ts': ['Sheet'],
  'shed/shed.ts': ['Shed'],
  'shed/record/diff-types.ts': ['ShedDifference'],
  'shed/triage/triage-types.ts': ['Triage', 'TriagedPart'],
};

/** What guards a type besides, and the file of `judging` it stands in. */
const GUARDS: Readonly<Record<string, { readonly guard: string; readonly file: string }>> = {
  Finding: { guard: 'guardFinding', file: 'finding' },
};

/** The text of every file of layouts, by its path below `src`: one for each room that has a type among them. */
export function layoutFiles(): ReadonlyMap<string, string> {
  const { config } = ts.readConfigFile(`${root}/tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent({ ...config, include: [] }, ts.sys, root);
  const paths = Object.keys(TAKEN).map((file) => `${src}/${file}`);
  const program = ts.createProgram(paths, options);
  const checker = program.getTypeChecker();
  const taken = Object.entries(TAKEN).flatMap(([file, names]) => {
    const source = program.getSourceFile(`${src}/${file}`);
    const exported = source && checker.getSymbolAtLocation(source)?.exports;
    return names.map((name) => {
      const symbol = exported?.get(ts.escapeLeadingUnderscores(name));
      if (!symbol) throw new Error(`${file} has no ${name}.`);
      return checker.getDeclaredTypeOfSymbol(symbol);
    });
  });
  const guards = Object.fromEntries(
    Object.entries(GUARDS).map(([name, { guard }]) => [name, guard]),
  );
  const isNamed = (declaration: ts.Declaration) => canName(roomOf(declaration));
  const constants = layoutsOf(checker, taken, isNamed, guards);
  const rooms = new Set([...constants.values()].map(({ declaration }) => roomOf(declaration)));
  return new Map([...rooms].map((room) => [`${room}/layouts.ts`, fileOf(room, constants)]));
}

/** Whether a layout can stand there: the library's own, and not below `judging`, where layouts are read. */
const canName = (room: string): boolean => room !== '..' && room !== 'quantities';

/** The first folder below `src`; `..` outside of it. */
function roomOf(declaration: ts.Declaration): string {
  return relative(src, declaration.getSourceFile().fileName).split('/')[0] ?? '';
}

function fileOf(room: string, constants: ReadonlyMap<string, Constant>): string {
  const own = [...constants].filter(([, { declaration }]) => roomOf(declaration) === room);
  const used = new Set(own.flatMap(([, { uses }]) => [...uses]));
  const lent = room === 'judging' ? (file: string) => `judging/${file}` : () => 'judging/internal';
  const from = new Map<string, string[]>();
  const take = (file: string, name: string) => from.set(file, [...(from.get(file) ?? []), name]);
  take(lent('layout'), 'Layout');
  for (const name of [...used].sort()) {
    const other = roomOf((constants.get(name) as Constant).declaration);
    if (other !== room) take(`${other}/layouts`, name);
  }
  for (const { guard, file } of Object.values(GUARDS)) {
    if (own.some(([, constant]) => constant.guard === guard)) take(lent(file), guard);
  }
  const imports = [...from].sort().map(([file, names]) => {
    const path = file.startsWith(`${room}/`) ? `.${file.slice(room.length)}` : `../${file}`;
    const type = names.join() === 'Layout' ? 'type ' : '';
    return `import ${type}{ ${names.join(', ')} } from '${path}.js';`;
  });
  return [
    '// How what functions take from each other is laid out. Made by `npm run layouts` from the types.',
    ...imports,
    '',
    ...own.map(
      ([name, constant]) => `export const ${name} = ${guarded(constant)} satisfies Layout;`,
    ),
    '',
  ].join('\n');
}

const guarded = ({ text, guard }: Constant): string =>
  guard === undefined ? text : text.replace(/ }$/, `, also: ${guard} }`);
