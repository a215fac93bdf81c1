package ovenloom.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import ovenloom.model.file.Fault;
import ovenloom.model.file.Mistake;
import ovenloom.model.file.MistakeText;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said when a command cannot do what was asked. All begin with the program's name. */
final class Complaint {

  private Complaint() {}

  static int wrong(ParameterException mistake) {
    CommandLine command = mistake.getCommandLine();
    PrintWriter err = command.getErr();
    err.println("ovenloom: " + Harmless.text(String.valueOf(mistake.getMessage())));
    UnmatchedArgumentException.printSuggestions(mistake, err);
    err.println("  Try: " + command.getCommandSpec().qualifiedName() + " --help");
    return Answer.WRONG;
  }

  static int ourFault(Throwable fault, CommandLine command, boolean trace) {
    PrintWriter err = command.getErr();
    err.println("ovenloom: this is our fault, not yours: " + Harmless.text(String.valueOf(fault)));
    if (trace) {
      fault.printStackTrace(err);
    } else {
      err.println("  Run it again with --trace, and please report what it prints.");
    }
    return Answer.OUR_FAULT;
  }

  /** What keeps a file from being used: it is wrong, or it is well written and asks for what cannot be done. */
  static int about(PrintWriter err, Path file, List<Mistake> mistakes) {
    boolean isWellWritten = mistakes.stream().allMatch(each -> each.fault() instanceof Fault.Impossible);
    err.println(
        "ovenloom: " + Harmless.text(file + ": " + (isWellWritten ? cannotBe(mistakes) : count(mistakes))));
    err.print(Harmless.text(MistakeText.of(mistakes)));
    return isWellWritten ? Answer.NO : Answer.WRONG;
  }

  private static String cannotBe(List<Mistake> reasons) {
    return "well written, and it cannot be done"
        + (reasons.size() == 1 ? "" : ", for " + reasons.size() + " reasons");
  }

  private static String count(List<Mistake> mistakes) {
    return mistakes.size() == 1 ? "a mistake" : mistakes.size() + " mistakes";
  }

  /** Lines after the first are indented. */
  static int wrong(PrintWriter err, String... lines) {
    err.println("ovenloom: " + Harmless.text(String.join("\n  ", lines)));
    return Answer.WRONG;
  }
}
