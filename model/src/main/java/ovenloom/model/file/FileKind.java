package ovenloom.model.file;

import java.nio.file.Path;

/** What a file holds, told by its keys. */
public enum FileKind {

  /** An event and its variations, for {@link WhatIfFile}. */
  WHAT_IF("a what-if file"),

  /** A plan with its event, for {@link PlanFile}. */
  PLAN("a plan"),

  /** An event, for {@link ProblemFile}. */
  PROBLEM("a problem");

  private final String words;

  FileKind(String words) {
    this.words = words;
  }

  /** With its article. */
  public String inWords() {
    return words;
  }

  /** One that says nothing else is taken for a problem, and so is one that cannot be read: who reads it tells what is wrong with it. */
  public static FileKind of(Path file) {
    Desk desk = new Desk();
    Folder folder = PlanFile.folder(file, desk);
    Written written = folder == null ? null : new Includes(folder, desk).first(file, Limits.PLAN);
    if (!(written instanceof Written.Keyed keyed)) {
      return PROBLEM;
    }
    if (keyed.entry(WhatIfFile.KEY) != null) {
      return WHAT_IF;
    }
    return keyed.entry(PlanReader.VERSION_KEY) == null ? PROBLEM : PLAN;
  }
}
