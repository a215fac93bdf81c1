package ovenloom.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import ovenloom.cli.sheet.Harmless;
import ovenloom.model.file.Fault;
import ovenloom.model.file.FileKind;
import ovenloom.model.file.Mistake;
import ovenloom.model.file.MistakeText;
import ovenloom.model.file.Reading;
import ovenloom.model.file.WhatIfFile;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said when a command cannot do what was asked. All begin with the program's name. */
final class Complaint {

  /** Letters that say nothing: the dashes. */
  private static final int ALIKE = 2;

  private Complaint() {}

  static int wrong(ParameterException mistake) {
    CommandLine command = mistake.getCommandLine();
    PrintWriter err = command.getErr();
    if (mistake instanceof UnmatchedArgumentException unknown && unknown.isUnknownOption()) {
      err.println("ovenloom: " + Harmless.text(noSuchOption(unknown.getUnmatched().getFirst(), command)));
    } else {
      err.println("ovenloom: " + Harmless.text(String.valueOf(mistake.getMessage())));
      UnmatchedArgumentException.printSuggestions(mistake, err);
    }
    err.println("  Try: " + command.getCommandSpec().qualifiedName() + " --help");
    return Answer.WRONG;
  }

  /** With the one that begins most alike, if one does. */
  private static String noSuchOption(String typed, CommandLine command) {
    String nearest = "";
    for (String known : command.getCommandSpec().optionsMap().keySet()) {
      nearest = alike(known, typed) > Math.max(ALIKE, alike(nearest, typed)) ? known : nearest;
    }
    return "there is no option \"" + typed + "\""
        + (nearest.isEmpty() ? "" : "; did you mean " + nearest + "?");
  }

  /** How many letters they begin with in common. */
  private static int alike(String one, String other) {
    int mismatch = Arrays.mismatch(one.toCharArray(), other.toCharArray());
    return mismatch < 0 ? one.length() : mismatch;
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
    boolean isWellWritten = new Reading.Mistaken<>(mistakes).isWellWritten();
    err.println(
        "ovenloom: " + Harmless.text(file + ": " + (isWellWritten ? cannotBe(mistakes) : count(mistakes))));
    err.print(Harmless.text(MistakeText.of(mistakes)));
    return isWellWritten ? Answer.NO : Answer.WRONG;
  }

  /** The same of a file that was to be of some kind: where it is plainly of another, that and no more. */
  static int about(PrintWriter err, Path file, FileKind asked, List<Mistake> mistakes) {
    FileKind kind = FileKind.of(file);
    boolean mayBeNothing = kind == FileKind.PROBLEM && mistakes.stream().noneMatch(Complaint::isNoWhatIf);
    if (kind == asked || mayBeNothing) {
      return about(err, file, mistakes);
    }
    return wrong(err, file + " is " + kind.inWords() + ", not " + asked.inWords(), switch (kind) {
      case WHAT_IF -> "Plan its variations with compare or batch; check says what is wrong with it.";
      case PLAN -> "Look at it with show, explain or heat.";
      case PROBLEM -> "Plan it with solve; a what-if file names it as its event.";
    });
  }

  private static boolean isNoWhatIf(Mistake mistake) {
    return mistake.fault() instanceof Fault.MissingKey(String key, String of) && key.equals(WhatIfFile.KEY);
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
    return wrong(err, List.of(lines));
  }

  static int wrong(PrintWriter err, List<String> lines) {
    err.println("ovenloom: " + Harmless.text(String.join("\n  ", lines)));
    return Answer.WRONG;
  }
}
