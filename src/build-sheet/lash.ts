import { type AssemblySettings, describeValve, VALVE_KINDS } from '../assembly/index.js';
import type { Wording } from '../judging/index.js';
import type { Entry } from '../pages/index.js';

type Kind = (typeof VALVE_KINDS)[number];

const settingOf = ({ valves }: AssemblySettings, kind: Kind) =>
  valves.find(({ valve }) => valve === kind);

/** The lash that is ground off stems: it is read and set before the engine is closed, as the valves come out for it. */
export function lashByStem(settings: AssemblySettings, wording: Wording): readonly Entry[] {
  return VALVE_KINDS.flatMap((kind) => {
    const setting = settingOf(settings, kind);
    return setting?.setBy === 'stem' ? lashOf(settings, kind, wording) : [];
  });
}

/** The lash of all valves, where the engine is timed; one that was ground off stems is read once more. */
export function lashToSet(settings: AssemblySettings, wording: Wording): readonly Entry[] {
  return VALVE_KINDS.flatMap((kind): readonly Entry[] =>
    settingOf(settings, kind)?.setBy === 'stem'
      ? [{ write: `Valve lash, ${kind}, read once more; found` }]
      : lashOf(settings, kind, wording),
  );
}

/** The lash that is set hot, once the engine has run. */
export function lashHot(settings: AssemblySettings, wording: Wording): readonly Entry[] {
  return VALVE_KINDS.flatMap((kind): readonly Entry[] => {
    const setting = settingOf(settings, kind);
    const { lash } = setting ? describeValve(setting, wording) : {};
    return lash && setting?.set === 'hot'
      ? [{ write: `Valve lash, ${kind}: ${lash}; set to` }]
      : [];
  });
}

/** The lash of one kind of valve, with what to mind. */
function lashOf(settings: AssemblySettings, kind: Kind, wording: Wording): readonly Entry[] {
  const setting = settingOf(settings, kind);
  const { lash, notes } = setting ? describeValve(setting, wording) : { notes: [] };
  const name = `Valve lash, ${kind}`;
  const toWrite = setting?.set === 'hot' ? 'cold, before the first start, set to' : 'set to';
  return [
    ...notes.map((note) => `${name}: ${note}`),
    { write: lash ? `${name}: ${lash}; ${toWrite}` : `${name}, by the maker's manual` },
  ];
}
