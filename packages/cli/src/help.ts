/** `hitchwright --help`. */
export const generalHelp = `hitchwright: will this implement go on that tractor?

  hitchwright check FILE [--json] [--units us|metric]
                         [--svg OUT] [--side OUT] [--plots OUT]
                         [--top OUT] [--drive-plots OUT] [--shaft OUT]
                         [--balance OUT] [--slope OUT]
      Reads a setup (tractor, perhaps a coupler, implement, perhaps a drive
      shaft) and says whether it hooks up, runs, lifts and stays upright, by
      how much it misses, what to measure, and which parts cure it at what cost.
      FILE is a setup in JSON; - reads standard input.
        --json             the whole answer as JSON on standard output
        --units            us (inches first) or metric (millimetres first);
                           otherwise the setup's own "units", else us
        --svg OUT          writes the rear view, to scale, to the file OUT
        --side OUT         writes the side view in three positions of the lift
        --plots OUT        writes attitude and lift against ball height
        --top OUT          writes the drive from above
        --drive-plots OUT  writes overlap and joint angles against ball height
        --shaft OUT        writes the drive shaft by itself: where to measure
                           and, where a cure cuts it, what to cut
        --balance OUT      writes the axle loads as a see-saw, at the height
                           where the front axle has least to spare
        --slope OUT        writes the ideal tipping limits at rest

  hitchwright measure FILE [--json] [--units us|metric]
      Says what to measure next, what settles most for its time first, with
      what, how closely and where it decides; what is too close for a tape;
      and what there is no need to measure. Exit codes as of check.

  hitchwright shafts FILE [--json] [--units us|metric]
      Tries every drive shaft among the setup's parts in the setup and says of
      each whether it serves at every position, and why not; the best first.

  hitchwright sheet FILE --out SHEET.pdf [--units us|metric] [--paper letter|a4]
                         [--date YYYY-MM-DD] [--for NAME] [--by NAME]
                         [--number TEXT] [--revision TEXT] [--site ADDRESS]
      Prints the sheet that is handed over: the answer, drawings to scale, the
      findings, cures, readings, cautions, and lines to sign. With --site it
      bears a code that opens the setup on that page, where its link scans well.
      The same input and date give the same bytes.

  hitchwright drawing FILE --view NAME --out FILE.svg|FILE.dxf|FILE.pdf
                         [--units us|metric] [--paper letter|a4] [--date DAY]
      Writes one drawing. NAME is rear, side, lift (three heights), top, shaft,
      plots, drive-plots, balance or slope; the first five also as DXF, at true
      size in millimetres.

  hitchwright pinplan FILE [--json] [--units us|metric]
                         [--out OUT.svg|OUT.dxf|OUT.pdf] [--paper letter|a4]
                         [--date DAY]
      Says where lower and upper pins would have to sit for the implement to
      take the coupler, from where they are, what has to stay free about them,
      or why moving pins does not help. The tractor may be empty for a frame.

  hitchwright listing FILE [--html|--bare|--json] [--units us|metric]
                         [--machine implement|coupler] [--price "640.00 USD"]
                         [--link ADDRESS]
      One machine for a shop page: dimensions with what they are measured
      between, a drawing, what is not measured yet. --html writes the block and
      its schema.org data, --bare the block without any style.

  hitchwright chart YARD [--json] [--units us|metric] [--tractor NAME]
                         [--left-out TEXT] [--out OUT.html|OUT.pdf]
                         [--paper letter|a4] [--date DAY]
      Every implement of a yard with every coupler, tractor by tractor. YARD is
      a file such as examples/sample-yard.json. Where it is only a part of the
      yard, --left-out says in sentences what is not in it: the chart says that
      it is of a part, and this after it.

  hitchwright schema
      Prints the JSON Schema of a setup.

How figures are written in a setup
  683                             a number is millimetres (degrees, kilograms ...)
  "26 7/8 in"  "68,3 cm"          as people write them, with the unit
  {"value": "26 7/8 in", "plusMinus": "1/16 in", "method": "tape"}
  {"between": ["26 in", "27 in"]}                    somewhere in there
  {"adjustable": {"between": ["25 in", "30 in"]}}    can be set anywhere in there
  {"adjustable": {"at": ["18 in", "20 1/2 in"]}}     can be set to these holes
  left out, or null               not known: the class of the category stands in
                                  where there is one, otherwise it is asked for

Exit codes of check (none of them says that a setup is safe to run)
  0  works: hooks up, runs where it is driven,    1  internal fault
     lifts and stays upright                      2  bad input, all
  3  works with parts                                errors listed
  4  measure first
  5  will not hook up, not run, not lift or not stay upright
Exit codes of shafts are those of the drive with the best shaft: 0 where one
serves. sheet and drawing end with 0 once the file is written.
pinplan ends with 0 where there is a plan or nothing has to move, with 4 where
something has to be measured first, with 5 where moving pins does not help or
the machine is not to be altered; listing and chart end with 0.

Examples
  hitchwright check examples/setups/box-blade-on-coupler.json
  hitchwright check my-setup.json --units metric --svg rear-view.svg
  cat my-setup.json | hitchwright check - --json
  hitchwright measure examples/setups/flail-measure-first.json
  hitchwright shafts examples/setups/tiller-driven-direct.json
  hitchwright sheet my-setup.json --out sheet.pdf --paper a4 --for "D. Marlow"
  hitchwright drawing my-setup.json --view rear --out rear.dxf
  hitchwright pinplan examples/setups/box-blade-on-coupler.json --out plan.dxf
  hitchwright listing my-setup.json --machine coupler --html

The operator's manuals, the makers and local rules come before any answer here.
`;
