package ovenloom.cli.calendar;

import java.nio.charset.StandardCharsets;

/** Lines of at most 75 octets in UTF-8 (RFC 5545, 3.1), none of them broken within a letter. The library counts letters instead. */
record Folded(String unfolded) {

  private static final int OCTETS = 75;
  private static final String BREAK = "\r\n ";

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    int octets = 0;
    for (int point : unfolded.codePoints().toArray()) {
      String letter = Character.toString(point);
      int more = letter.getBytes(StandardCharsets.UTF_8).length;
      boolean isEnd = point == '\r' || point == '\n';
      if (!isEnd && octets + more > OCTETS) {
        text.append(BREAK);
        octets = 1;
      }
      text.append(letter);
      octets = isEnd ? 0 : octets + more;
    }
    return text.toString();
  }
}
