/** The command as it was typed is wrong: an option that there is not, a value that cannot be. */
export class WrongCommand extends Error {}
