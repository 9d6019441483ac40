/** Thrown for a wrong command line: an unknown option, an impossible value. */
export class WrongCommand extends Error {
  override readonly name = 'WrongCommand';
}
