package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.OvenLog.Doing;

/** Oven logs for tests, in a still oven. */
public final class Logs {

  private final String oven;
  private String mode = Oven.STILL;
  private int days;
  private final List<OvenLog.Span> spans = new ArrayList<>();

  private Logs(String oven) {
    this.oven = oven;
  }

  /** {@code aLog("oven").warming(230, "17:39", "18:00").at(230, "18:00", "18:30")}. */
  public static Logs aLog(String oven) {
    return new Logs(oven);
  }

  /** From here on. */
  public Logs mode(String wanted) {
    mode = wanted;
    return this;
  }

  public Logs warming(int celsius, String from, String to) {
    return span(Doing.WARMING, celsius, from, to);
  }

  public Logs cooling(int celsius, String from, String to) {
    return span(Doing.COOLING, celsius, from, to);
  }

  public Logs at(int celsius, String from, String to) {
    return span(Doing.AT, celsius, from, to);
  }

  /** Some days before: {@code daysBefore(1).warming(230, "19:39", "20:00")}. */
  Logs daysBefore(int count) {
    days = count;
    return this;
  }

  private Logs span(Doing doing, int celsius, String from, String to) {
    spans.add(new OvenLog.Span(doing, Setting.celsius(celsius), mode,
        Clock.between(from, to).shiftedBy(-1440 * days)));
    return this;
  }

  public OvenLog log() {
    return new OvenLog(oven, spans);
  }
}
