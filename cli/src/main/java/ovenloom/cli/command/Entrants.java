package ovenloom.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Words;
import ovenloom.model.file.FileKind;
import ovenloom.model.file.Mistake;
import ovenloom.model.file.PlanFile;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.file.WhatIf;
import ovenloom.model.file.WhatIfFile;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.solver.place.Extents;
import ovenloom.solver.proof.Proof;

/** What is to be compared, as it stands in files. */
final class Entrants {

  /** How many columns a screen has room for. */
  private static final int MOST = 6;

  private final Kit kit;
  private final @Nullable Path root;
  private final List<Entrant> all = new ArrayList<>();
  private final Set<Mistake> notes = new LinkedHashSet<>();
  private String title = "";

  /**
   * One of them.
   *
   * @param sources the files its event came from
   * @param plan absent where it is still to be planned
   */
  record Entrant(String name, Event event, List<Plan.Source> sources, @Nullable Plan plan) {}

  /** None yet. */
  Entrants(Kit kit, @Nullable Path root) {
    this.kit = kit;
    this.root = root;
  }

  List<Entrant> all() {
    return List.copyOf(all);
  }

  /** What is worth a look in the problems. */
  List<Mistake> notes() {
    return List.copyOf(notes);
  }

  /** What the comparison is called. */
  String title() {
    return title;
  }

  /** Takes in plans and problems, or all variations of one what-if file; or says why not, with what the program is to end with. */
  int read(List<Path> files) {
    Path first = files.getFirst();
    if (files.size() > 1) {
      return readAll(files);
    }
    return FileKind.of(first) == FileKind.WHAT_IF ? variations(first)
        : Complaint.wrong(kit.err(), "there is nothing to compare " + first + " with",
            "Name another plan or problem, or a what-if file alone.");
  }

  private int variations(Path file) {
    return switch (WhatIfFile.read(file, Root.of(root, file))) {
      case Reading.Mistaken<WhatIf>(var mistakes) -> Complaint.about(kit.err(), file, mistakes);
      case Reading.Understood<WhatIf>(WhatIf whatIf, var sources, var none) -> addAll(whatIf, file);
    };
  }

  private int addAll(WhatIf whatIf, Path file) {
    if (whatIf.size() < 2) {
      return nothingToCompare(file);
    }
    if (whatIf.size() > MOST) {
      return Complaint.wrong(kit.err(),
          file + " has " + whatIf.size() + " variations, and there is room for " + MOST + " side by side",
          "Plan all of them: ovenloom batch " + file + " -o DIR");
    }
    title = whatIf.name();
    int answer = Answer.A_PLAN;
    for (int i = 0; i < whatIf.size() && answer == Answer.A_PLAN; i++) {
      String name = whatIf.variation(i).name();
      Reading<Event> reading = whatIf.event(i);
      if (reading instanceof Reading.Mistaken<Event> mistaken && mistaken.isWellWritten()) {
        Complaint.about(kit.err(), Path.of(name), mistaken.mistakes());
      } else {
        answer = add(reading, file, name);
      }
    }
    return answer == Answer.A_PLAN && all.size() < 2 ? nothingToCompare(file) : answer;
  }

  private int nothingToCompare(Path file) {
    return Complaint.wrong(kit.err(), file + " has no two variations to compare that can be done",
        "Add a choice to one of its axes.");
  }

  private int readAll(List<Path> files) {
    if (files.size() > MOST) {
      return Complaint.wrong(kit.err(),
          "there is room for " + MOST + " side by side, and not for " + files.size(),
          "Make them variations of a what-if file, and plan it with: ovenloom batch");
    }
    List<String> names = names(files);
    title = Words.and(names);
    int answer = Answer.A_PLAN;
    for (int i = 0; i < files.size() && answer == Answer.A_PLAN; i++) {
      answer = add(files.get(i), names.get(i));
    }
    return answer;
  }

  /** Without folders and endings, where that tells them apart. */
  private static List<String> names(List<Path> files) {
    List<String> bare = files.stream()
        .map(file -> String.valueOf(file.getFileName()).replaceFirst("(?<=.)\\.\\w+$", ""))
        .toList();
    return bare.stream().distinct().count() == bare.size() ? bare
        : files.stream().map(Path::toString).toList();
  }

  private int add(Path file, String name) {
    return switch (FileKind.of(file)) {
      case WHAT_IF -> Complaint.wrong(kit.err(), file + " has variations of its own, and is compared alone",
          "Leave out the other files, or this one.");
      case PLAN -> switch (PlanFile.read(file)) {
        case Reading.Mistaken<Plan>(var mistakes) -> Complaint.about(kit.err(), file, mistakes);
        case Reading.Understood<Plan>(Plan plan, var sources, var none) -> add(plan, file, name);
      };
      case PROBLEM -> add(ProblemFile.read(file, Root.of(root, file), null), file, name);
    };
  }

  private int add(Plan plan, Path file, String name) {
    if (!new Printer(kit).passes(plan, file.toString())) {
      return Answer.NO;
    }
    Proof proof = new Proof(Extents.of(plan.event()));
    proof.findBound(1);
    all.add(new Entrant(name, plan.event(), plan.sources(), plan.with(proof.bound())));
    return Answer.A_PLAN;
  }

  private int add(Reading<Event> reading, Path file, String name) {
    return switch (reading) {
      case Reading.Mistaken<Event>(var mistakes) -> Complaint.about(kit.err(), file, mistakes);
      case Reading.Understood<Event>(Event event, var sources, var worthALook) -> {
        notes.addAll(worthALook);
        all.add(new Entrant(name, event, sources, null));
        yield Answer.A_PLAN;
      }
    };
  }
}
