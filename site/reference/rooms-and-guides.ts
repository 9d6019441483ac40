import { type Application, Converter, type ProjectReflection } from 'typedoc';

/**
 * Names the rooms as they are imported, and the guides by their titles. A guide stands with the lessons or with the
 * other guides in the sidebar.
 */
export function nameRoomsAndGuides(app: Application): void {
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => nameAll(project));
}

function nameAll({ children = [], documents = [] }: ProjectReflection): void {
  for (const room of children) {
    room.name = room.name === 'index' ? 'crankwright' : `crankwright/${room.name}`;
  }
  for (const guide of documents) {
    const [first, ...rest] = guide.content;
    const title = /^\s*# (.+)\n/.exec(first?.text ?? '');
    if (!first || !title) throw new Error(`${guide.name}: its guide does not begin with a title`);
    guide.name = (title[1] as string).replaceAll('`', '');
    guide.content = [{ ...first, text: first.text.slice(title[0].length) }, ...rest];
    guide.frontmatter['group'] ??= 'Guides';
  }
}
