/** What `--help` prints. */
export const HELP = `crankwright - what to do with an engine, from your micrometer readings

  crankwright report FILE   report on an inspection sheet or a shed file: what
                            to do with each part, and why
  crankwright plan FILE     plan from a shed file: the most engines the parts
                            make, for the least money
  crankwright done SHED WORK      print the shed file with what came back from
                            the shop in it, or the filled-in boxes
  crankwright diff OLD NEW  what differs between two shed files, and what that
                            changed in the plan
  crankwright schema WHICH  print the JSON Schema of a file, for an editor
  crankwright new WHICH     print a new file to fill in; on a terminal and
                            without options it asks what it must know
  crankwright new readings FILE   print a CSV with a row to fill for all that
                            was not measured of the parts in a shed
  crankwright calc 'EXPRESSION'   work out sizes with their units, as
                            '2-1/8 in to mm', and call any function of the
                            library; without one standard input is read
  crankwright repl          the same at a prompt
  crankwright worksheet TOPIC   print problems to practise on

FILE is JSON. If it is left out or is -, standard input is read.
WHICH is sheet or shed; of schema also work, a record of work for done.
TOPIC is measuring, crankshaft, bearings, oil film, cylinders, fits, fasteners,
motion, timing, valves or oil, or words such as ring gap.

Options of report and plan
  --units inch|metric       units to print in; by default those of the file
  --json                    print the result as JSON, in SI units
  --why                     tell also why other steps were passed over, and
                            place by place what fits as it is
  --readings FILE           CSV with the readings of a shed; its columns are
                            part, feature, station, angle, reading
  --html FILE               write a web page with pictures instead, to read, to
                            print and to keep; - prints it
  --force                   write over the page if it is there already

Options of plan
  --build-sheet             print the build sheet instead of the plan, as plain
                            text with a form feed before every engine
  --boxes ENGINE            print the boxes of the build sheet of this engine as
                            JSON, to fill in for done: "engine 1", or the name
                            of its block
  --markdown                print the build sheet as Markdown
  --at-most N               build at most N engines
  --no-buying               buy no parts
  --most-per-engine PRICE   cost limit for each engine: "400 EUR"
  --reserve NAME            keep this part back; can be repeated
  --must-build NAME         build this block if possible; can be repeated
  --holds-with CHANCE       every clearance must hold with this chance, as
                            0.95; the shed must describe its instruments
  --chances                 print also how likely each number of engines is,
                            where parts were not measured; with --html on
                            the page
  --time-limit SECONDS      stop after this time, or a few seconds later, with
                            the best plan so far

Options of done and diff
  --readings FILE           CSV with the readings of the shed, or of the newer
  --old-readings FILE       of diff: CSV with the readings of the older shed
  --units, --json           of diff: as for plan
  --output FILE, --force    of done: as for new

Options of calc and repl
  --units inch|metric       units that results of functions and of sums come in;
                            by default inch. A size typed, or converted with
                            to, keeps its own
  --json                    of calc: print the results as JSON, in SI units

Options of worksheet
  --seed N                  which sheet; the same seed prints the same sheet
  --count N                 how many problems; by default 10
  --answers                 print the worked answers too, after a form feed
  --check "N: ANSWER"       check an answer to problem N, as "3: 22 thou", and
                            print no sheet; can be repeated
  --units inch|metric       by default inch
  --markdown                print it as Markdown, with equations in TeX

Options of new
  --name NAME               name of the engine
  --units inch|metric       units of the file; by default those of the sizes
  --cylinders N, --mains N  how many, a rod to each cylinder;
                            0 mains for rolling bearings
  --rod-journal SIZES       the maker's sizes of a standard one, as
                            "1.6245 in to 1.6250 in"; a shed needs them
  --main-journal SIZES      the same of a main journal
  --bore SIZES              the same of a bore
  --lubrication splash|pump     of a shed: how the oil gets to the bearings
  --cores N                 of a shed: how many engines its parts come from
  --csv                     of a shed: print the CSV to fill instead
  --output FILE             write to this file
  --force                   write over it if it is there already

  -h, --help                print this help
  --version                 print the version

Exit codes
  0  done
  1  the file cannot be read, or has mistakes; each is listed with its place
  2  the command line is wrong, or an expression of calc
  3  the plan is printed, but not fully proven: the time was up or the solver
     failed; the plan says which
  4  the output cannot be written, for example because the disk is full
  5  the solver could not be loaded
`;
