import {
  type Application,
  type CommentDisplayPart,
  Converter,
  type ProjectReflection,
} from 'typedoc';

/**
 * Names the rooms as they are imported, and the guides by their titles. A guide stands with the lessons or with the
 * other guides in the sidebar.
 */
export function nameRoomsAndGuides(app: Application): void {
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => nameAll(project));
}

function nameAll({ children = [], documents = [], readme = [] }: ProjectReflection): void {
  for (const room of children) {
    room.name = room.name === 'index' ? 'crankwright' : `crankwright/${room.name}`;
  }
  // The page of a guide, and the first page, bear the title already.
  takeTitle(readme);
  for (const guide of documents) {
    guide.name = takeTitle(guide.content).replaceAll('`', '');
    guide.frontmatter['group'] ??= 'Guides';
  }
}

/** Takes the title off the first part of a text. */
function takeTitle([first]: readonly CommentDisplayPart[]): string {
  const [line = '', title] = /^\s*# (.+)\n/.exec(first?.text ?? '') ?? [];
  if (!first || title === undefined) throw new Error('a guide does not begin with a title');
  first.text = first.text.slice(line.length);
  return title;
}
