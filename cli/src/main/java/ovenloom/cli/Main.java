package ovenloom.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.OutputStream;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

@Command(name = "ovenloom", mixinStandardHelpOptions = true, versionProvider = Version.class,
    description = "Plans who does what, when and where, so that everything reaches the table on time.",
    exitCodeOnExecutionException = Main.OUR_FAULT)
final class Main implements Runnable {
  static final int OUR_FAULT = 3;

  @Spec
  private CommandSpec spec;

  public static void main(String[] args) {
    System.exit(run(utf8(System.out), utf8(System.err), args));
  }

  static int run(PrintWriter out, PrintWriter err, String... args) {
    return new CommandLine(new Main()).setOut(out)
        .setErr(err)
        .setParameterExceptionHandler(Main::wrong)
        .execute(args);
  }

  private static int wrong(ParameterException mistake, String[] args) {
    var command = mistake.getCommandLine();
    command.getErr().println("ovenloom: " + mistake.getMessage());
    UnmatchedArgumentException.printSuggestions(mistake, command.getErr());
    command.getErr().println("  Try: " + command.getCommandSpec().qualifiedName() + " --help");
    return command.getCommandSpec().exitCodeOnInvalidInput();
  }

  private static PrintWriter utf8(OutputStream stream) {
    return new PrintWriter(stream, true, UTF_8);
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "say what to do");
  }
}
