/** What `--help` prints. */
export const HELP = `crankwright - from micrometer readings to what to do with an engine

  crankwright report FILE   an inspection sheet, or a shelf of parts: what to do, and why
  crankwright plan FILE     a shelf of parts: the most engines it makes, for the least money
  crankwright schema sheet  the JSON Schema of an inspection sheet; schema shelf: of a shelf

FILE is JSON. Without it, or where it is -, it is read from standard input.

Options of report and plan
  --units inch|metric       units to print in; by default those of the file
  --json                    print the result as data, in SI units, for other programs
  --readings FILE           CSV of readings that joins a shelf:
                            part, feature, station, angle, reading

Options of plan
  --build-sheet             print the sheet for the bench instead: text, a page for each engine
  --markdown                print the build sheet as Markdown
  --at-most N               build at most N engines
  --no-buying               buy nothing
  --most-per-engine PRICE   the most that one engine may cost, e.g. "400 EUR"
  --reserve NAME            keep a part back; may be given several times
  --must-build NAME         build this block in any case; may be given several times
  --time-limit SECONDS      stop after so long, with the best plan there is by then

  --help, --version

Exit codes
  0  done
  1  the file has mistakes, or cannot be read; each mistake is named with its place
  2  the command is wrong
  3  a plan was printed that is not proven to be the best: the time was up
`;
