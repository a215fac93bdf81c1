package ovenloom.cli.command;

import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Part;
import ovenloom.cli.sheet.View;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import picocli.CommandLine.Option;

/** Which part of a plan to show. */
final class ViewOptions {

  @Option(names = "--cook", paramLabel = "NAME",
      description = {"What one cook does, and what goes to the table.",
          "In small or capital letters, as all names here."})
  private @Nullable String cook;

  @Option(names = "--oven", paramLabel = "NAME", description = {"What concerns one oven.",
      "What goes in and comes out, is turned or probed in it, and its dial."})
  private @Nullable String oven;

  @Option(names = "--shelf", paramLabel = "NAME",
      description = {"What concerns one shelf, or a cold or hot place.",
          "\"fridge\", \"fridge, top shelf\" or \"fridge/top\"."})
  private @Nullable String shelf;

  @Option(names = "--next", paramLabel = "TIME", converter = TimeOption.class,
      description = {"What is under way, and what is to be done for so long.",
          "From the present moment, unless --at says when: 1h, 90min."})
  private @Nullable Duration next;

  @Option(names = "--at", paramLabel = "WHEN",
      description = {"The same, from then on; for an hour without --next.",
          "17:40, on the day of the event; \"Saturday 17:40\"; \"day before 17:40\"; \"2026-10-10 17:40\"."})
  private @Nullable String at;

  @Option(names = "--strips",
      description = {"All of it as strips of time, a line for a place or a cook.",
          "As fine as COLUMNS allow; the last hours before each course once more, and finer."})
  private boolean strips;

  /** The options by which a part was asked for; none where all is to be shown. */
  List<String> asked() {
    List<String> asked = new ArrayList<>(views());
    if (next != null) {
      asked.add("--next");
    }
    if (at != null) {
      asked.add("--at");
    }
    if (strips) {
      asked.add("--strips");
    }
    return asked;
  }

  /** Whether strips were asked for, and no part of them. */
  boolean isStrips() {
    return strips && asked().size() == 1;
  }

  private List<String> views() {
    List<String> views = new ArrayList<>();
    if (cook != null) {
      views.add("--cook");
    }
    if (oven != null) {
      views.add("--oven");
    }
    if (shelf != null) {
      views.add("--shelf");
    }
    return views;
  }

  Asked<Part> part(Event event, InstantSource clock) {
    return switch (view(event)) {
      case Asked.Wrong<View>(var lines) -> new Asked.Wrong<>(lines);
      case Asked.For<View>(View view) -> next == null && at == null
          ? new Asked.For<>(new Part(view, null))
          : during(view, event, clock);
    };
  }

  private Asked<Part> during(View view, Event event, InstantSource clock) {
    return switch (new Window(at, next).of(event, clock)) {
      case Asked.Wrong<Stretch>(var lines) -> new Asked.Wrong<>(lines);
      case Asked.For<Stretch>(Stretch when) -> new Asked.For<>(new Part(view, when));
    };
  }

  private Asked<View> view(Event event) {
    Viewable parts = new Viewable(event);
    if (views().size() > 1) {
      return new Asked.Wrong<>(
          List.of(String.join(" and ", views()) + " show different parts of a plan", "Ask for one."));
    }
    if (strips) {
      return new Asked.Wrong<>(List.of("--strips shows all of a plan",
          "Leave it out, or "
              + asked().stream().filter(each -> !each.equals("--strips")).collect(Collectors.joining(" and "))
              + "."));
    }
    if (cook != null) {
      return parts.cooks().asked(cook);
    }
    if (oven != null) {
      return parts.ovens().asked(oven);
    }
    return shelf == null ? new Asked.For<>(new View.Whole()) : parts.shelves().asked(shelf);
  }
}
