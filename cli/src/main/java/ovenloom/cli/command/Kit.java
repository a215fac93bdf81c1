package ovenloom.cli.command;

import java.io.PrintWriter;

/** What a command works with. */
record Kit(PrintWriter out, PrintWriter err, Terminal terminal, Stop stop) {}
