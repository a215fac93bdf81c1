package ovenloom.model.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import ovenloom.model.menu.Event;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Take;
import ovenloom.model.variation.Variation;

/**
 * One event and variations of it, made one by one when they are asked for: there may be many thousands. Whoever asks, one event is read at a
 * time.
 */
public final class WhatIf {

  /** Enough to meet each of many choices often. */
  private static final int DRAWS = 50_000;

  private final String name;
  private final Written.Keyed event;
  private final List<Axis> axes;
  private final List<List<Written>> patches;
  private final List<List<String>> patchesInFull;
  private final Take take;
  private final Includes includes;
  private final String written;

  /**
   * What a file says.
   *
   * @param event the base
   * @param patches for each axis one for each of its choices
   */
  WhatIf(String name, Written.Keyed event, List<Axis> axes, List<List<Written>> patches, Take take,
      Includes includes) {
    this.name = name;
    this.event = event;
    this.axes = List.copyOf(axes);
    this.patches = List.copyOf(patches);
    this.take = take;
    this.includes = includes;
    InFull inFull = new InFull(includes.at(new Desk()));
    patchesInFull = patches.stream()
        .map(axis -> axis.stream().map(inFull::of).map(JsonText::of).toList())
        .toList();
    written = JsonText.of(inFull.of(event));
  }

  public String name() {
    return name;
  }

  public List<Axis> axes() {
    return axes;
  }

  /** The event as it is written, in JSON, with what stands in its files in their place: with a variation's patches all that it is made of. */
  public String written() {
    return written;
  }

  /** How many variations are asked for. */
  public long size() {
    return take.size(axes);
  }

  /** One of them, counted from 0. */
  public Variation variation(long index) {
    return variation(take.picks(axes, index));
  }

  private Variation variation(List<Integer> picks) {
    Map<String, String> choices = new LinkedHashMap<>();
    List<String> changes = new ArrayList<>();
    for (int i = 0; i < axes.size(); i++) {
      choices.put(axes.get(i).name(), axes.get(i).choices().get(picks.get(i)));
      changes.add(patchesInFull.get(i).get(picks.get(i)));
    }
    return new Variation(choices, changes);
  }

  /** The event as one variation, counted from 0, has it; or what is wrong with it, at its place in the files. */
  public Reading<Event> event(long index) {
    return event(take.picks(axes, index));
  }

  /** The event as it is, without any patch. */
  public Reading<Event> base() {
    return with(List.of());
  }

  Reading<Event> event(List<Integer> picks) {
    return with(picked(picks));
  }

  /** With one choice alone. */
  Reading<Event> event(int axis, int choice) {
    return with(List.of(patches.get(axis).get(choice)));
  }

  private List<Written> picked(List<Integer> picks) {
    List<Written> picked = new ArrayList<>();
    for (int i = 0; i < picks.size(); i++) {
      picked.add(patches.get(i).get(picks.get(i)));
    }
    return picked;
  }

  private synchronized Reading<Event> with(List<Written> changes) {
    Desk desk = new Desk();
    Includes here = includes.at(desk);
    return ProblemFile.event(new EventPatch(here, desk).over(event, changes), desk, here, null);
  }

  /** Whether one of so many variations that have a choice can be read; which are looked at is drawn by lot, so that all others are met. */
  boolean isEverRead(int axis, int choice, int most) {
    SplittableRandom lot = new SplittableRandom(1);
    int looked = 0;
    for (int draw = 0; draw < DRAWS && looked < most; draw++) {
      List<Integer> picks = take.picks(axes, lot.nextLong(size()));
      if (picks.get(axis) == choice) {
        looked++;
        if (!(event(picks) instanceof Reading.Mistaken<Event> mistaken) || mistaken.isWellWritten()) {
          return true;
        }
      }
    }
    return false;
  }
}
