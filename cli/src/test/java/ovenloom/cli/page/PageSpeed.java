package ovenloom.cli.page;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import ovenloom.model.file.PlanFile;
import ovenloom.model.file.Reading;
import ovenloom.model.plan.Plan;

/** How long the first page of a Java takes, and how large it is: {@code PageSpeed PLAN}. */
public final class PageSpeed {

  private static final double NANOS_A_SECOND = 1e9;
  private static final double A_MEGABYTE = 1e6;

  private PageSpeed() {}

  public static void main(String[] args) {
    if (PlanFile
        .read(Path.of(args[0])) instanceof Reading.Understood<Plan>(Plan plan, var sources, var notes)) {
      long from = System.nanoTime();
      String page = PlanPage.of(plan);
      double seconds = (System.nanoTime() - from) / NANOS_A_SECOND;
      System.out.printf(Locale.ROOT, "%d runs, %.2f s, %.1f MB%n", plan.placements().size(), seconds,
          page.getBytes(StandardCharsets.UTF_8).length / A_MEGABYTE);
    }
  }
}
