package ovenloom.cli.command;

import java.util.LinkedHashMap;
import java.util.Map;

/** What the exit code says. */
final class Answer {

  static final int A_PLAN = 0;
  static final int NO = 1;
  static final int WRONG = 2;
  static final int OUR_FAULT = 3;
  static final int NONE_FOUND = 4;

  private Answer() {}

  /** For {@code --help}, in their order. */
  static Map<String, String> inWords() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put(" " + A_PLAN, "a plan; or nothing wrong");
    words.put(" " + NO, "an honest no: it cannot be done, or the plan failed the audit");
    words.put(" " + WRONG, "the command or the file is wrong");
    words.put(" " + OUR_FAULT, "our fault");
    words.put(" " + NONE_FOUND, "no plan found in the time given");
    return words;
  }
}
