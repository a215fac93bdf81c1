package ovenloom.cli.list;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import ovenloom.model.variation.Result;

/**
 * A column of the table of runs.
 *
 * @param isNumber whether whole numbers stand in it and nothing else; words, if not
 * @param cell what stands in it; null where there is nothing to tell
 */
public record RunColumn(String name, boolean isNumber, Function<Result, @Nullable String> cell) {

  String shown(Result result) {
    String words = cell.apply(result);
    return words == null ? "" : isNumber ? words : Shown.asWords(words);
  }
}
