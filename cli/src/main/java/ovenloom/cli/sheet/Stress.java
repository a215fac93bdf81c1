package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What stands out among the sentences of an act: what goes to the table, and what to take care of. */
record Stress(Ink ink, int from, int to) {

  private static final Pattern CAUTION = Pattern
      .compile("(Leave your (work|break) for it|If it is (less|warmer),|Must be )[^.]*\\.");

  private static final Pattern TABLE = Pattern.compile("To the table[^.]*\\.");

  /** The lines of a text, each part of it in its colour. */
  static List<String> inked(List<String> lines) {
    String text = String.join(" ", lines);
    List<Stress> all = Stream.concat(in(text, TABLE, Ink.TABLE), in(text, CAUTION, Ink.CAUTION))
        .sorted(Comparator.comparingInt(Stress::from))
        .toList();
    List<String> inked = new ArrayList<>();
    int begins = 0;
    for (String line : lines) {
      inked.add(inked(line, begins, all));
      begins += line.length() + 1;
    }
    return inked;
  }

  private static Stream<Stress> in(String text, Pattern sentence, Ink ink) {
    return sentence.matcher(text)
        .results()
        .map((MatchResult each) -> new Stress(ink, each.start(), each.end()));
  }

  private static String inked(String line, int begins, List<Stress> all) {
    StringBuilder inked = new StringBuilder();
    int done = 0;
    for (Stress each : all) {
      int from = Math.clamp(each.from() - begins, done, line.length());
      int to = Math.clamp(each.to() - begins, from, line.length());
      inked.append(line, done, from).append(each.ink().on(line.substring(from, to)));
      done = to;
    }
    return inked.append(line.substring(done)).toString();
  }
}
