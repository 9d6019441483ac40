import loadHighs, { type Highs, type Model } from 'highs';

/** HiGHS as it is. */
export const highs: Highs = await loadHighs();

/** HiGHS of which the models behave otherwise in some way. */
export function highsWith(changes: (native: Model) => Partial<Model>): Highs {
  const createModel = (data: Parameters<Highs['createModel']>[0]) => {
    const native = highs.createModel(data);
    return {
      options: native.options,
      info: native.info,
      setSolution: (solution: Parameters<Model['setSolution']>[0]) => native.setSolution(solution),
      run: (callbacks: Parameters<Model['run']>[0]) => native.run(callbacks),
      getModelStatus: () => native.getModelStatus(),
      getSolution: () => native.getSolution(),
      dispose: () => native.dispose(),
      ...changes(native),
    };
  };
  return { ...highs, createModel } as Highs;
}

/** HiGHS of which a solve fails, in its own way, whenever it is said to. */
export function highsFailing(fails: () => boolean): Highs {
  const run = () => {
    throw new highs.errors.HighsError('run failed with HiGHS status -1', 'run');
  };
  return highsWith(() => (fails() ? { run } : {}));
}
