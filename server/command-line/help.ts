/** What `--help` prints. */
export const help = `Checks shelves: deflection, strength, brackets and their fixing.

  npm run --silent check -- [--json] FILE.json [FILE.json ...]

FILE.json is a check document; - is standard input.

One file prints the summary, a table of checks, assumptions, warnings and
cautions. Several files print one line each.

  --json   print the whole result; with several files one result a line, where
           the line of a file with bad input holds {"file", "errors"}
  --help   print this

Exit code:
  0  everything holds
  1  something does not hold
  2  bad input: a file that can't be read, or a document with errors; each error
     stands on standard error with the path of its field
  3  nothing fails, but something can't be said
  4  a fault of the tool itself
Of several files the first of 4, 2, 1, 3 that occurs decides, else 0.
`;
