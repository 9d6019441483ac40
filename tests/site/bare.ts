/** The letters and digits of a report alone: without lines under headings, boxes, rules to write on, and spaces. */
export const bare = (text: string): string =>
  text
    .replace(/^(?:-{3,}|={3,})$/gm, '')
    .replaceAll('[ ]', '')
    .replaceAll(/caution: /gi, 'Caution:')
    .replace(/[\s_]/g, '');
