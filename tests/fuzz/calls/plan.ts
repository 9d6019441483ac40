import {
  buildSheet,
  describePart,
  inspect,
  planReport,
  readShelf,
  triageReport,
} from 'crankwright/shelf';
import { noEngine, twoEngines } from '../../shelf/plan/plans.js';
import { plainShelf } from '../../shelf/shelves.js';
import { calls } from './calls.js';

const triage = inspect(readShelf(plainShelf()));
const [first, ...others] = triage.parts.map((part) => [part, { units: 'inch' }] as const);

export const planCalls = {
  describePart: calls(describePart, {
    madeBy: 'inspect',
    sound: first ? [first, ...others] : [],
    provoked: {
      'not a part': [{}, { units: 'inch' }],
      'unknown unit system': [first?.[0], { units: 'imperial' }],
      'no wording': [first?.[0]],
    },
  }),
  triageReport: calls(triageReport, {
    madeBy: 'inspect',
    sound: [[triage], [triage, { units: 'metric' }]],
    provoked: {
      'not a triage': [{}, { units: 'inch' }],
      'no triage': [],
      'unknown unit system': [triage, { units: 'imperial' }],
    },
  }),
  planReport: calls(planReport, {
    madeBy: 'planBuilds',
    sound: [[twoEngines], [noEngine], [twoEngines, { units: 'metric' }]],
    provoked: {
      'not a plan': [{}, { units: 'inch' }],
      'no plan': [],
      'unknown unit system': [twoEngines, { units: 'imperial' }],
    },
  }),
  buildSheet: calls(buildSheet, {
    madeBy: 'planBuilds',
    sound: [[twoEngines], [noEngine], [twoEngines, { units: 'metric', format: 'text' }]],
    provoked: {
      'not a plan': [{ units: 'inch' }],
      'no plan': [],
      'unknown option': [twoEngines, { unit: 'inch' }],
      'unknown unit system': [twoEngines, { units: 'imperial' }],
      'unknown format': [twoEngines, { format: 'html' }],
    },
  }),
};
