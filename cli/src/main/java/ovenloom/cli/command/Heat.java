package ovenloom.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Harmless;
import ovenloom.cli.sheet.LifeDrawing;
import ovenloom.cli.sheet.LifeSheet;
import ovenloom.model.file.PlanFile;
import ovenloom.model.file.Reading;
import ovenloom.model.life.Life;
import ovenloom.model.life.Track;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Plan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "heat", sortOptions = false, abbreviateSynopsis = true,
    description = "Prints how warm a dish of a plan is predicted to be, from its first step to the table.")
final class Heat implements Callable<Integer> {

  private final Kit kit;

  @Parameters(index = "0", paramLabel = "PLAN", description = "A plan that solve has written.")
  private Path file;

  @Parameters(index = "1", paramLabel = "DISH", description = "One of its dishes.")
  private String name;

  @Option(names = "--batch", paramLabel = "N", defaultValue = "1", description = "Which batch of it; 1.")
  private int batch;

  @Option(names = "-o", paramLabel = "SVG", description = "Draw it here as well.")
  private @Nullable Path drawing;

  Heat(Kit kit) {
    this.kit = kit;
  }

  @Override
  public Integer call() {
    return switch (PlanFile.read(file)) {
      case Reading.Mistaken<Plan>(var mistakes) -> Complaint.about(kit.err(), file, mistakes);
      case Reading.Understood<Plan>(Plan plan, var sources, var notes) -> print(plan);
    };
  }

  private int print(Plan plan) {
    List<Dish> dishes = plan.event().dishes().stream().filter(Dish::food).toList();
    Optional<Dish> dish = dishes.stream().filter(each -> each.name().equalsIgnoreCase(name)).findFirst();
    if (dish.isEmpty()) {
      return Complaint.wrong(kit.err(), "there is no dish \"" + name + "\" in " + file,
          "It has: " + String.join(", ", dishes.stream().map(Dish::name).toList()));
    }
    if (batch < 1 || batch > dish.get().batches()) {
      return Complaint.wrong(kit.err(), dish.get().name() + " has no batch " + batch,
          "It is made in " + dish.get().batches() + ".");
    }
    int printed = new Printer(kit).print(plan, file.toString(), () -> told(plan, dish.get()));
    Track track = printed == Answer.A_PLAN && drawing != null ? Life.of(plan, 1).of(dish.get(), batch) : null;
    return track == null ? printed
        : new Target(Objects.requireNonNull(drawing)).write(LifeDrawing.of(plan, track), kit.err());
  }

  private String told(Plan plan, Dish dish) {
    Track track = Life.of(plan, 1).of(dish, batch);
    return track == null
        ? Harmless.text(
            dish.name() + " is not followed: it goes nowhere.\n")
        : LifeSheet.of(plan, track, dish, batch, kit.terminal().width(), kit.terminal().colour());
  }
}
