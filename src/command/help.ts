/** What `--help` prints. */
export const HELP = `crankwright - from micrometer readings to what to do with an engine

  crankwright report FILE   an inspection sheet, or a shed of parts: what to do
                            with each, and why
  crankwright plan FILE     a shed of parts: the most engines it makes, for the
                            least money
  crankwright schema WHICH  the JSON Schema of a sheet or a shed, for an editor

FILE is JSON. Without it, or where it is -, it is read from standard input.
WHICH is sheet or shed.

Options of report and plan
  --units inch|metric       units to print in; by default those of the file
  --json                    print the result as data, in SI units
  --readings FILE           CSV of readings that joins a shed:
                            part, feature, station, angle, reading

Options of plan
  --build-sheet             print the sheet for the bench instead, as plain text
                            with a form feed before every engine
  --markdown                print the build sheet as Markdown
  --at-most N               build at most N engines
  --no-buying               buy nothing
  --most-per-engine PRICE   the most that any one engine may cost: "400 EUR"
  --reserve NAME            keep a part back; may be given several times
  --must-build NAME         build this block if it can be; several times, too
  --time-limit SECONDS      stop after so long, or some seconds later, with the
                            best plan found by then

  -h, --help                print this
  --version                 print the version

Exit codes
  0  done
  1  the file has mistakes, each named with its place, or it cannot be read
  2  the command is wrong
  3  a plan is printed, but not all of it is proven: the time was up, or the
     solver failed; the plan says which
  4  the output cannot be written, because the disk is full for one
  5  the solver could not be loaded
`;
