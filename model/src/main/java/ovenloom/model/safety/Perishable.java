package ovenloom.model.safety;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Kind;

/**
 * Which food must be kept hot or cold: raw animal food, and what has been cooked, but for bread. Tags say otherwise: {@code tcs},
 * {@code not tcs}. Source: FDA Food Code 2017, 1-201.10(B), in states' adoptions; that bread need not is common practice.
 */
public final class Perishable {

  private static final String YES = "tcs";
  private static final String NO = "not tcs";
  private static final String RAW = "raw";

  private Perishable() {}

  /** Whether a dish of such tags need be neither hot nor cold, whatever is in it. */
  public static boolean isNever(List<String> tags) {
    return tags.contains(NO);
  }

  /** Whether it must be once it has been cooked. */
  public static boolean isOnceCooked(@Nullable Kind kind) {
    return kind != Kind.BREAD;
  }

  /** Whether it must be from its first step on, before anything is cooked, and afterwards, though it be bread. */
  public static boolean isFromTheStart(List<String> tags) {
    return tags.contains(YES) || tags.stream().anyMatch(tag -> tag.startsWith(RAW));
  }
}
