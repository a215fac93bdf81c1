package ovenloom.cli.command;

import java.io.PrintWriter;
import java.time.InstantSource;

/** What a command works with. */
record Kit(PrintWriter out, PrintWriter err, Terminal terminal, Stop stop, InstantSource clock) {}
