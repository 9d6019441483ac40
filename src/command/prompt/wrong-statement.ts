/** Thrown for a statement that cannot be worked out; the message is all there is to say. */
export class WrongStatement extends Error {}

/** What is said of a result or a reading that is no finite number. */
export const NOT_FINITE = 'this has no finite value; is something divided by zero?';
