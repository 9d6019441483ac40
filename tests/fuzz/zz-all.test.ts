import { appendFileSync, writeFileSync } from 'node:fs';
import { it } from 'vitest';
import { planCalls } from './calls/plan.js';
import { hostiles, pathsIn, replaced, showPath, without } from './hostile.js';
import { complaint } from './outcome.js';

const from = Number(process.env['FROM'] ?? 0);
it('all', async () => {
  const target = planCalls.planBuilds;
  console.log(JSON.stringify(await target.run(target.sound[0]!), null, 1).slice(0, 3000));
  const t0 = Date.now();
  for (let i = 0; i < 10; i++) await target.run(target.sound[0]!);
  console.log('ms each', (Date.now() - t0) / 10);
  const cases = target.sound.flatMap((args, n) => pathsIn(args).filter(p => n === 0 || p[0] === 1).flatMap((path) => [
    ...hostiles.map(({ name, make }) => ({ at: `call ${n} args${showPath(path)}`, wrong: name, args: () => replaced(args, path, make()) })),
    { at: `call ${n} args${showPath(path)}`, wrong: 'removed', args: () => without(args, path) },
  ]));
  console.log(cases.length);
  for (let i = from; i < cases.length; i++) {
    const c = cases[i]!;
    writeFileSync('/tmp/fz/at', `${i} ${c.at} ${c.wrong}`);
    const t = Date.now();
    const flaw = await complaint(target, c.args() as readonly unknown[]);
    const ms = Date.now() - t;
    if (flaw !== undefined || ms > 1000) appendFileSync('/tmp/fz/log', `${i} ${c.at} [${c.wrong}] ${ms}ms ${flaw}\n`);
  }
  console.log('total', Date.now() - t0);
}, 1e6);
