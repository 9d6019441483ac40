import { writeFileSync } from 'node:fs';
import { it } from 'vitest';
import { registry } from './registry.js';

it('prints', async () => {
  const out: string[] = [];
  for (const [name, { run, provoked }] of Object.entries(registry)) {
    for (const [cause, args] of Object.entries(provoked)) {
      try {
        await run(args);
        out.push(`${name} / ${cause}: GIVES`);
      } catch (e) {
        out.push(`${name} / ${cause}\n    ${(e as Error).message}`);
      }
    }
  }
  writeFileSync('/tmp/w/perf/messages.txt', out.join('\n'));
}, 600000);
