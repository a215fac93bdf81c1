package ovenloom.cli.compare;

import java.util.List;

/** What is said of one that is compared with the first; nothing of the first itself but why it has no plan. */
public record Said(String name, List<String> sentences) {
  public Said {
    sentences = List.copyOf(sentences);
  }
}
