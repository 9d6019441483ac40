import { say } from '../judging/internal.js';
import { degree, format, type UnitSystem } from '../quantities/index.js';
import type { StillToRead } from './shape.js';

/** What is still to be read of a journal or bore, in words. */
export const sayStillToRead = (lacks: StillToRead, units: UnitSystem): string =>
  lacks.kind === 'second angle'
    ? `a second angle at station ${say(lacks.station, 'length', units)}`
    : `a second station at angle ${format(lacks.angle, degree)}`;
