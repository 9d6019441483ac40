import type { Page } from 'playwright-core';

/** An event of a trace of the browser. */
interface Traced {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Time that the processor worked on it [µs], once it is over. */
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

/**
 * How long the processor worked on each task of the page's main thread, in milliseconds, while something was done. The
 * page cannot answer before a task is over. Unlike the time by the clock, it does not grow with what else the machine does.
 */
export async function tasksWhile(page: Page, act: () => Promise<void>): Promise<readonly number[]> {
  const browser = page.context().browser();
  if (!browser) throw new Error('this page has no browser');
  await browser.startTracing(page, { categories: ['toplevel'] });
  await act();
  const traced = JSON.parse((await browser.stopTracing()).toString());
  const events = traced.traceEvents as readonly Traced[];
  const placeOf = ({ pid, tid }: Traced) => `${pid}:${tid}`;
  const mains = new Set(
    events
      .filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain')
      .map(placeOf),
  );
  return (
    events
      .filter((event) => event.name.endsWith('RunTask') && mains.has(placeOf(event)))
      // The task that was under way when the trace ended has no time.
      .flatMap(({ tdur }) => (tdur === undefined ? [] : [tdur / 1000]))
  );
}
