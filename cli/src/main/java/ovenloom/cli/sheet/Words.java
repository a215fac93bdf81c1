package ovenloom.cli.sheet;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Filling;

/** What things in this kitchen are called, as one who works there would point at them. */
public record Words(Kitchen kitchen) {

  /** What a burner is called that nobody gave a name: any other of its size will do. */
  private static final Pattern NUMBERED = Pattern.compile("(small|medium|large) burner \\d+");
  private static final Pattern NUMBERED_SHELF = Pattern.compile("shelf \\d{1,6}");

  /** {@code the oven} where there is but one. */
  public String oven(String name) {
    return kitchen.ovens().size() == 1 ? "the oven" : "the " + name;
  }

  String ovenAlone(String name) {
    return kitchen.ovens().size() == 1 ? "Oven" : capital(name);
  }

  /** {@code fan off, }; nothing where the oven has but one mode. */
  public String mode(String oven, String mode) {
    if (Objects.requireNonNull(kitchen.oven(oven)).modes().size() < 2) {
      return "";
    }
    return switch (mode) {
      case Oven.STILL -> "fan off, ";
      case Oven.FAN -> "fan on, ";
      default -> mode + ", ";
    };
  }

  /** {@code lower rack}; {@code 2nd rack from the bottom of 5}; {@code racks 2 to 4 of 5 from the bottom}. */
  public String racks(String oven, List<Integer> racks) {
    int count = Objects.requireNonNull(kitchen.oven(oven)).racks().size();
    List<Integer> different = racks.stream().distinct().sorted().toList();
    if (different.size() == 1) {
      int rack = different.getFirst();
      boolean isCounted = count > 3 && rack > 0 && rack < count - 1;
      return isCounted ? ordinal(rack + 1) + " rack from the bottom of " + count
          : level(rack, count) + " rack";
    }
    if (different.size() == count) {
      return count == 2 ? "both racks" : "all " + count + " racks";
    }
    if (count > 3) {
      return "racks " + numbers(different.stream().map(rack -> rack + 1).toList()) + " of " + count
          + " from the bottom";
    }
    return and(different.stream().map(rack -> level(rack, count)).toList()) + " racks";
  }

  /** {@code batch 2}; {@code batches 2 and 3}; {@code batches 2 to 4}. */
  public static String batches(Batches batches) {
    return batches(IntStream.rangeClosed(batches.first(), batches.last()).boxed().toList());
  }

  static String batches(Collection<Integer> rising) {
    return (rising.size() == 1 ? "batch " : "batches ") + numbers(List.copyOf(rising));
  }

  /** {@code 2 and 3}; {@code 2 to 4}. */
  private static String numbers(List<Integer> rising) {
    boolean unbroken = rising.getLast() - rising.getFirst() == rising.size() - 1;
    return unbroken && rising.size() > 2 ? rising.getFirst() + " to " + rising.getLast()
        : and(rising.stream().map(number -> Integer.toString(number)).toList());
  }

  private static String level(int rack, int count) {
    return switch (count) {
      case 1 -> "only";
      case 2 -> rack == 0 ? "lower" : "upper";
      default -> rack == 0 ? "bottom" : rack == count - 1 ? "top" : "middle";
    };
  }

  private static String ordinal(int number) {
    return switch (number) {
      case 1 -> "1st";
      case 2 -> "2nd";
      case 3 -> "3rd";
      default -> number + "th";
    };
  }

  /** {@code the kitchen fridge, top shelf}. */
  public String shelves(String store, List<String> shelves) {
    boolean isOne = shelvesOf(store).size() == 1;
    return isOne ? "the " + store : "the " + store + ", " + shelvesAlone(store, shelves);
  }

  /** The same of a place that food goes into: {@code the walk-in, shelves 2 and 3 from the top}. */
  String ontoShelves(String store, List<String> shelves) {
    List<String> all = shelvesOf(store);
    boolean isCounted = all.size() > 1
        && shelves.stream().allMatch(name -> name.equals("shelf " + (all.indexOf(name) + 1)));
    return shelves(store, shelves) + (isCounted ? " from the top" : "");
  }

  /** {@code top shelf}; {@code shelves 2 and 3}. */
  public String shelvesAlone(String store, List<String> shelves) {
    List<String> different = shelvesOf(store).stream().filter(shelves::contains).toList();
    if (different.size() > 1 && different.stream().allMatch(name -> NUMBERED_SHELF.matcher(name).matches())) {
      List<Integer> numbers = different.stream()
          .map(name -> Integer.valueOf(name.substring(6)))
          .sorted()
          .toList();
      return "shelves " + numbers(numbers);
    }
    boolean saysSo = different.stream().anyMatch(name -> name.matches(".*(shelf|drawer|rack|door|\\d).*"));
    String kind = saysSo ? "" : different.size() == 1 ? " shelf" : " shelves";
    return and(different) + kind;
  }

  private List<String> shelvesOf(String store) {
    return Objects.requireNonNull(kitchen.store(store)).shelves().stream().map(Shelf::name).toList();
  }

  /** {@code a large burner}; the size only where burners differ. */
  public String burners(List<String> names) {
    boolean named = names.stream().anyMatch(name -> !NUMBERED.matcher(name).matches());
    if (named) {
      return "the " + and(names);
    }
    boolean alike = kitchen.burners().stream().map(Burner::size).distinct().count() == 1;
    return counted(names.stream().map(name -> alike ? "burner" : size(name) + " burner").toList(), "a ");
  }

  private String size(String burner) {
    return Objects.requireNonNull(kitchen.burner(burner)).size().name().toLowerCase(Locale.ROOT);
  }

  /** {@code tub and 2 x half sheet}. */
  static String vessels(List<Filling> fillings) {
    return vessels(fillings, "");
  }

  /** {@code the tub and 2 x half sheet}, with a word before what there is but one of. */
  static String vessels(List<Filling> fillings, String one) {
    List<String> pieces = fillings.stream()
        .flatMap(filling -> Collections.nCopies(filling.count(), filling.vessel()).stream())
        .toList();
    return counted(pieces, one);
  }

  /** {@code  (salad bowl)}; nothing where there is none. */
  static String in(List<Filling> fillings) {
    return fillings.isEmpty() ? "" : " (" + vessels(fillings) + ")";
  }

  /** {@code a large burner and 2 x small burner}. */
  static String counted(List<String> names, String one) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    names.forEach(name -> counts.merge(name, 1, Integer::sum));
    return and(counts.entrySet().stream().map(each -> counted(each.getValue(), each.getKey(), one)).toList());
  }

  public static String counted(int count, String name) {
    return counted(count, name, "");
  }

  private static String counted(int count, String name, String one) {
    return count == 1 ? one + name : count + " x " + name;
  }

  /** {@code a, b and c}. */
  public static String and(List<String> all) {
    if (all.size() < 2) {
      return String.join("", all);
    }
    return String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.getLast();
  }

  /** {@code Fridge, top shelf}, for a column of its own. */
  static String bare(String name) {
    return capital(name.replaceFirst("^(the|a) ", ""));
  }

  static String small(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }

  public static String capital(String words) {
    return words.isEmpty() ? words
        : words.substring(0, words.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT)
            + words.substring(words.offsetByCodePoints(0, 1));
  }
}
