package ovenloom.cli.command;

import java.io.PrintWriter;
import java.time.InstantSource;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** All commands. */
@Command(name = "ovenloom", sortOptions = false, synopsisSubcommandLabel = "COMMAND",
    abbreviateSynopsis = true,
    commandListHeading = "%nCommands%n", optionListHeading = "%nOptions%n", versionProvider = Version.class,
    description = "Plans who does what, when and where, so that everything reaches the table on time.")
public final class Ovenloom implements Runnable {

  /** Held here, since a logger that nobody holds forgets its level. */
  private static final Logger STATISTICS = Logger.getLogger("io.micrometer");

  private final Kit kit;

  @Spec
  private CommandSpec spec;

  @SuppressWarnings("unused") // picocli looks at it
  @Option(names = "--version", versionHelp = true, description = "Print the version.")
  private boolean version;

  @Option(names = "--trace", scope = ScopeType.INHERIT,
      description = {"Show where in the program a fault of ours is.", "Please send it with your report."})
  private boolean trace;

  /**
   * Commands that print here.
   *
   * @param out results
   * @param err everything else
   * @param stop Ctrl-C
   * @param clock what time it is
   */
  public Ovenloom(PrintWriter out, PrintWriter err, Terminal terminal, Stop stop, InstantSource clock) {
    this.kit = new Kit(out, err, terminal, stop, clock);
  }

  /** Does what is typed, and returns the exit code. */
  public int run(String... args) {
    STATISTICS.setLevel(Level.OFF);
    CommandLine commands = commands();
    try {
      return commands.execute(args);
    } catch (StackOverflowError | OutOfMemoryError tooMuch) {
      return Complaint.ourFault(tooMuch, commands, trace);
    } finally {
      kit.out().flush();
      kit.err().flush();
    }
  }

  private CommandLine commands() {
    CommandLine commands = new CommandLine(this).addSubcommand(new Solve(kit))
        .addSubcommand(new Check(kit))
        .addSubcommand(new Show(kit))
        .addSubcommand(new Heat(kit))
        .addSubcommand(new Explain(kit))
        .addSubcommand(new Compare(kit))
        .addSubcommand(new Batch(kit));
    commands.addMixin("help", new HelpOptions());
    commands.getSubcommands().values().forEach(command -> command.addMixin("help", new HelpOptions()));
    return commands.setOut(kit.out())
        .setErr(kit.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(kit.terminal().colour() ? Ansi.ON : Ansi.OFF))
        .setUsageHelpWidth(HelpText.width(kit.terminal()))
        .setExecutionStrategy(HelpText::orElseRun)
        .setParameterExceptionHandler((mistake, args) -> Complaint.wrong(mistake))
        .setExecutionExceptionHandler((fault, command, parsed) -> Complaint.ourFault(fault, command, trace));
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "say what to do");
  }
}
