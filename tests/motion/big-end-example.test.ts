import { expect, it, vi } from 'vitest';

it('one plain run prints a healthy and a loose bearing side by side', async () => {
  const log = vi.spyOn(console, 'log').mockImplementation(() => {});
  try {
    await import('../../examples/big-end.js');
    const lines = log.mock.calls.map(([line]) => String(line));
    expect(lines[0]).toBe('one plain run, kept flooded');
    expect(lines).toHaveLength(8);
    const [healthy, loose] = [...(lines[3]?.matchAll(/([\d.]+) µm/g) ?? [])].map(([, film]) =>
      Number(film),
    );
    // Which is right is for the orbit's own tests; here the loose one must look as bad as it is.
    expect(healthy).toBeGreaterThan(5 * (loose ?? Number.NaN));
    const [quiet, hard] = [...(lines[7]?.matchAll(/([\d.]+) mm\/s/g) ?? [])].map(([, v]) =>
      Number(v),
    );
    expect(hard).toBeGreaterThan(4 * (quiet ?? Number.NaN));
  } finally {
    log.mockRestore();
  }
});
