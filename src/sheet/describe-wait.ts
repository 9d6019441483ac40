import { journalWords } from '../reading/index.js';
import type { Wait } from './waiting.js';

/** What is not to be done before something is read again, or measured at all. */
export function describeWait({ work, until, again }: Wait): string {
  const read = `${until.join(' and ')} ${until.length === 1 ? 'is' : 'are'} ${again ? 'read again' : 'measured'}`;
  if (work === 'cylinders') {
    return `bore nothing and buy no pistons before ${read}${again ? '' : ': all cylinders of one engine share one size, and that may need a larger one'}`;
  }
  if (work === 'crankshaft')
    return `grind nothing on the crankshaft and buy no shells before ${read}`;
  const journals = journalWords(work);
  return `grind none of the ${journals} and buy no shells for them before ${read}${again ? '' : `: the ${journals} share one size, and that may need a smaller one`}`;
}
