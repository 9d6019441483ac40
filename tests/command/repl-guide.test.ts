import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { runText } from '../../src/command/prompt/run-text.js';
import { Session } from '../../src/command/prompt/session.js';
import { root } from '../support/repo.js';

const guide = ['docs/repl.md', 'README.md']
  .map((file) => readFileSync(`${root}/${file}`, 'utf8'))
  .join('\n');
const shown = [...guide.matchAll(/```text\n([\s\S]*?)```/g)]
  .map(([, block = '']) => block)
  .filter((block) => block.startsWith('> '));

it('shows at the prompt what the prompt says', async () => {
  expect(shown.length).toBe(4);
  const session = await Session.begin('inch');
  for (const block of shown) {
    const typed = [...block.matchAll(/^> (.*)$/gm)].map(([, line = '']) => line);
    const said = typed.map((line) => {
      const { done, notes, wrong } = runText(session, line);
      const values = done.map(({ value }) => session.show(value));
      return [`> ${line}`, ...notes, ...values, ...(wrong ? [wrong.message] : [])].join('\n');
    });
    expect(`${said.join('\n')}\n`).toBe(block);
  }
});
