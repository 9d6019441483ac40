const WIDTH = 96;

/** A heading, underlined, and its lines. */
export function section(heading: string, lines: readonly string[]): string {
  return [heading, '-'.repeat(heading.length), ...lines].join('\n');
}

/** Breaks a sentence into lines, those after the first indented. */
export function paragraph(text: string, indent: number): string[] {
  const lead = /^ */.exec(text)?.[0] ?? '';
  const lines: string[] = [];
  let line = lead;
  for (const word of text.trim().split(' ')) {
    const glue = line.trim() === '' ? '' : ' ';
    if (line.trim() !== '' && line.length + glue.length + word.length > WIDTH) {
      lines.push(line);
      line = ' '.repeat(indent) + word;
    } else line += glue + word;
  }
  return [...lines, line];
}

/** A table: the first column to the left, the others to the right. */
export function columns(
  heading: readonly string[],
  rows: readonly (readonly string[])[],
): string[] {
  const all = [heading, ...rows];
  const widths = heading.map((_, i) => Math.max(...all.map((row) => (row[i] ?? '').length)));
  return all.map((row) =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
      .join('   '),
  );
}
