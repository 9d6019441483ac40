import { it } from 'vitest';
import { planBuilds, readShelf } from 'crankwright/shelf';
import { planCalls } from './calls/plan.js';
import { hostiles, pathsIn, replaced, showPath } from './hostile.js';
import { complaint } from './outcome.js';
import { plainShelf } from '../shelf/shelves.js';

it('extra', async () => {
  const single = planCalls.planBuilds.sound[0]![0] as object;
  const target = planCalls.planBuilds;
  const rich = { ...single,
    pistonSets: (single as any).pistonSets.map((p: any) => ({ ...p, count: 1 })),
    ringSets: (single as any).ringSets.map((p: any) => ({ ...p, count: 1 })),
    machining: [{ work: 'bore', shop: 'x', price: { amount: 3, currency: 'EUR' } }],
    toBuy: { rods: [{ ...(single as any).rods[0], name: 'rod 2', price: { amount: 3, currency: 'EUR' } }] },
    engine: { ...(single as any).engine, rodsPerJournal: 1 },
  };
  const found = new Map<string, string[]>();
  for (const path of pathsIn([rich])) {
    const s = showPath(path);
    if (!/count|machining|toBuy|rodsPer/.test(s)) continue;
    console.log(s);
    for (const { name, make } of hostiles) {
      if (/rodsPer/.test(s) && (name === "1e-9" || name === "5e-324")) continue;
      const flaw = await complaint(target, replaced([rich], path, make()) as unknown[]);
      if (flaw) { const k = `${s} ${flaw}`; found.set(k, [...(found.get(k) ?? []), name]); }
    }
  }
  for (const [k, v] of found) console.log(k.slice(0, 200), '::', v.join(', '));
  for (const currency of [NaN, '', null, {}]) {
    const p = await planBuilds(single as any, { mostPerEngine: { amount: 1, currency: currency as any } }).then((x) => x.builds.length, (e) => e.message);
    console.log('currency', currency, p);
  }
  for (const t of [5e-324, 1e-9]) console.log(t, JSON.stringify((await planBuilds(single as any, { timeLimit: t as any })).proof));
  void readShelf; void plainShelf;
  // Infinity / NaN in results though no refusal
  for (const path of pathsIn([single])) for (const { name, make } of hostiles) {
    const r = await planBuilds(...(replaced([single], path, make()) as [any])).catch(() => undefined);
    if (r && /null/.test(JSON.stringify(r))) console.log('null/NaN in result', showPath(path), name);
  }
}, 1e6);
