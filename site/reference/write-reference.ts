import { Application, ReflectionKind, Renderer, TSConfigReader, TypeDocReader } from 'typedoc';
import { type CardName, cards } from '../cards.js';
import { linkToPages } from './links.js';
import { nameRoomsAndGuides } from './rooms-and-guides.js';
import { findByWords } from './search.js';

/** Where the reference tells of the function of a card, seen from the folder of the site. */
export type Reference = (name: CardName) => string | undefined;

/** Writes the reference from the sources and the guides; fails on what is not documented and on a broken link. */
export async function writeReference(out: string): Promise<Reference> {
  const app = await Application.bootstrapWithPlugins({ out }, [
    new TypeDocReader(),
    new TSConfigReader(),
  ]);
  nameRoomsAndGuides(app);
  findByWords(app);
  linkToPages(app);
  const project = await app.convert();
  if (!project) throw new Error('the sources cannot be converted');
  app.validate(project);
  const urls = new Map<string, string>();
  app.renderer.on(Renderer.EVENT_END, () => {
    for (const each of project.getReflectionsByKind(ReflectionKind.Function)) {
      urls.set(each.name, app.renderer.router?.getFullUrl(each) ?? '');
    }
  });
  await app.generateOutputs(project);
  if (app.logger.hasErrors() || app.logger.hasWarnings()) {
    throw new Error('the reference has the faults above');
  }
  return (name) => urls.get(cards[name].of.name);
}
