// Exit codes, as listed by `--help`.
export const DONE = 0;
export const BAD_FILE = 1;
export const BAD_COMMAND = 2;
export const NOT_PROVEN = 3;
export const UNWRITTEN = 4;
export const NO_SOLVER = 5;
