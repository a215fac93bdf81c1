package ovenloom.cli.command;

import java.util.Locale;
import ovenloom.cli.sheet.BreakList;
import ovenloom.cli.sheet.ShortageList;
import ovenloom.model.menu.Event;
import ovenloom.solver.search.Found;

/** What is said where a search comes to no plan: why its best try is none, and what may help. */
record NoneFound(Kit kit) {

  /** Prints it; whoever thought it had a plan, and had none, is at fault. */
  int print(Event event, Found found) {
    String count = BreakList.count(found.breaks());
    if (found.isOurFault()) {
      kit.err()
          .println("ovenloom: this is our fault, not yours: the search takes its best try for a plan, but "
              + count);
    } else {
      kit.err()
          .printf(Locale.ENGLISH, "ovenloom: no plan found in %,d schedules. The best try is no plan: %s%n",
              found.schedules(), count);
    }
    kit.err().print(BreakList.of(event, found.breaks(), kit.terminal().width()));
    kit.err().print(ShortageList.of(found.shortages(), kit.terminal().width()));
    kit.err()
        .println(
            found.isOurFault() ? "  Please report it, with the problem file. Another --seed may find a plan."
                : "  Look longer (--for 2min), or give what breaks first more room: hours, pans, keeps.");
    return found.isOurFault() ? Answer.OUR_FAULT : Answer.NONE_FOUND;
  }
}
