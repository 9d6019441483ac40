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
  const [first] = readme;
  // The first page bears its title already.
  if (first) first.text = first.text.slice(titleOf(readme).line.length);
  for (const guide of documents) {
    guide.name = titleOf(guide.content).title.replaceAll('`', '');
    // The formatter of Markdown does not know front matter, so the title tells what a guide is.
    guide.frontmatter['group'] = guide.name.startsWith('Lesson: ') ? 'Lessons' : 'Guides';
  }
}

/** The title of a text, and the line that it takes. */
function titleOf([first]: readonly CommentDisplayPart[]): { line: string; title: string } {
  const [line = '', title] = /^\s*# (.+)\n/.exec(first?.text ?? '') ?? [];
  if (title === undefined) throw new Error('a guide does not begin with a title');
  return { line, title };
}
