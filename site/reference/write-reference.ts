import {
  Application,
  type DeclarationReflection,
  ReflectionKind,
  TSConfigReader,
  TypeDocReader,
} from 'typedoc';
import { type CardName, cards } from '../cards.js';

/** Where the reference tells of the function of a card, seen from the folder of the site. */
export type Reference = (name: CardName) => string | undefined;

/** Writes the reference from the sources and the guides; fails on what is not documented and on a broken link. */
export async function writeReference(out: string): Promise<Reference> {
  const app = await Application.bootstrapWithPlugins({ out }, [
    new TypeDocReader(),
    new TSConfigReader(),
  ]);
  const project = await app.convert();
  if (!project) throw new Error('the sources cannot be converted');
  app.validate(project);
  await app.generateOutputs(project);
  if (app.logger.hasErrors() || app.logger.hasWarnings()) process.exit(1);
  const functions = project.getReflectionsByKind(
    ReflectionKind.Function,
  ) as DeclarationReflection[];
  return (name) => {
    const found = functions.find((each) => each.name === cards[name].of.name);
    return found && app.renderer.router?.getFullUrl(found);
  };
}
