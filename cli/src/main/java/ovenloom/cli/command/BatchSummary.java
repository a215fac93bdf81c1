package ovenloom.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.list.Parquet;
import ovenloom.cli.list.RunColumn;
import ovenloom.cli.list.RunColumns;
import ovenloom.cli.list.RunList;
import ovenloom.cli.page.RunsPage;
import ovenloom.cli.sheet.Harmless;
import ovenloom.cli.sheet.TallySheet;
import ovenloom.model.file.Reading;
import ovenloom.model.file.WhatIf;
import ovenloom.model.file.WholeFile;
import ovenloom.model.measure.Calendar;
import ovenloom.model.menu.Event;
import ovenloom.model.tally.Tally;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;
import ovenloom.solver.batch.Results;

/**
 * What is written once a batch has ended, or was stopped: of the runs that were asked for and have their result.
 *
 * @param plans absent where none are kept
 */
record BatchSummary(Kit kit, Path folder, WhatIf variations, @Nullable PlanFolder plans) {

  private static final String TABLE = "runs.csv";
  private static final String PAGE = "runs.html";
  private static final String PARQUET = "runs.parquet";

  /**
   * Writes it.
   *
   * @param runs those that were come to, in their order
   */
  void write(Results results, List<String> runs) throws IOException {
    Tally tally = new Tally(variations.axes());
    List<RunColumn> columns = RunColumns.of(variations.axes(), calendar());
    WholeFile.write(file -> list(results, runs, tally, RunList.in(file, columns)), folder.resolve(TABLE));
    WholeFile.write(RunsPage.of(tally, variations.name(), variations.size()), folder.resolve(PAGE));
    print(tally, results.count() - tally.all().answers().all());
    if (plans != null) {
      tellOfPlansNotKept(tally.all().answers().of(Answer.PLAN) - plans.count(runs));
    }
    if (Parquet.isPossible()) {
      Parquet.write(folder.resolve(TABLE), columns, folder.resolve(PARQUET));
      say(TABLE + " is there as " + PARQUET + ", too.");
    }
  }

  private static void list(Results results, List<String> runs, Tally tally, RunList list)
      throws IOException {
    try (list) {
      for (String run : runs) {
        Result result = results.of(run);
        if (result != null) {
          tally.add(result);
          list.add(result);
        }
      }
    }
  }

  /** By the clock of the event as it is; where that cannot be done, of the first variation that can. */
  private Calendar calendar() {
    return switch (variations.base()) {
      case Reading.Understood<Event>(Event event, var sources, var notes) -> event.calendar();
      case Reading.Mistaken<Event> impossible -> firstCalendar();
    };
  }

  private Calendar firstCalendar() {
    for (long index = 0; index < variations.size(); index++) {
      if (variations.event(index) instanceof Reading.Understood<Event> good) {
        return good.value().calendar();
      }
    }
    return new Calendar(LocalDate.EPOCH, null);
  }

  private void print(Tally tally, long others) {
    kit.out()
        .print(TallySheet.of(tally, variations.name(), variations.size(), kit.terminal().width(),
            kit.terminal().colour()));
    if (others > 0) {
      say("Not told of here: " + others + " more in results.jsonl, of other runs or not come to this time.");
    }
    say("In " + folder + ": results.jsonl, " + TABLE + ", " + PAGE + ".");
  }

  private void tellOfPlansNotKept(long some) {
    if (some > 0) {
      say("Plans of " + some + (some == 1 ? " run" : " runs")
          + " done before are not kept. With another folder all are.");
    }
  }

  private void say(String words) {
    kit.out().println(Harmless.text(words));
  }
}
