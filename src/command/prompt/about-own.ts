import { about } from './about.js';
import type { Session } from './session.js';
import { whatHas } from './taken-names.js';

/** What is known of a name: the value that it was given here, or what the library has by it. */
export const aboutOwn = (session: Session, name: string): string =>
  session.scope.has(name)
    ? `${name} is ${session.show(session.scope.get(name))}`
    : about(name, session.units, whatHas(name, session.loaded));
