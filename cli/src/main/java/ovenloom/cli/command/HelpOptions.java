package ovenloom.cli.command;

import picocli.CommandLine.Option;

/** Help, as short as fits a screen or all of it; which, {@link HelpText} sees from how it was asked for. */
final class HelpOptions {

  @SuppressWarnings("unused") // picocli looks at it
  @Option(names = {"-h", "--help"}, usageHelp = true, order = 100,
      description = "-h prints a short help, --help all there is to know.")
  private boolean asked;
}
