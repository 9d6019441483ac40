/** One problem in an inspection sheet or a shed file. */
export interface FileProblem {
  /** Its place: `rods[1].journal.readings[3].diameter`. */
  readonly path: string;
  /** What is wrong, in one or two sentences. */
  readonly message: string;
}
