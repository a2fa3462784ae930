/** `hitchwright --help`. */
export const generalHelp = `hitchwright: will this implement go on that tractor?

  hitchwright check FILE [--json] [--units us|metric]
                         [--svg OUT] [--side OUT] [--plots OUT]
      Reads a setup (tractor, perhaps a coupler, implement) and says whether it
      hooks up and lifts, by how much it misses, what to measure and which parts
      cure it.
      FILE is a setup in JSON; - reads standard input.
        --json         the whole answer as JSON on standard output
        --units        us (inches first) or metric (millimetres first);
                       otherwise the setup's own "units", else us
        --svg OUT      writes the rear view, to scale, to the file OUT
        --side OUT     writes the side view in three positions of the lift
        --plots OUT    writes attitude and lift against ball height

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

Exit codes (hook-up and lift: none of them says that a setup is safe to run)
  0  hooks up and lifts      3  hooks up with parts, and lifts   1  internal fault
  4  measure first           5  will not hook up, or not lift    2  bad input, all
                                                                    errors listed

Examples
  hitchwright check examples/setups/box-blade-on-coupler.json
  hitchwright check my-setup.json --units metric --svg rear-view.svg
  cat my-setup.json | hitchwright check - --json

The operator's manuals, the makers and local rules come before any answer here.
`;
