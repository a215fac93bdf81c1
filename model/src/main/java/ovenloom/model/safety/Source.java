package ovenloom.model.safety;

/**
 * Where a limit is written.
 *
 * @param edition the one it was checked in
 */
public record Source(String document, String edition, String section) {

  /** Whether nobody in authority says so: it binds who chooses it, and nobody else. */
  boolean isPractice() {
    return document.contains("practice of the trade");
  }

  @Override
  public String toString() {
    return document + " " + edition + ", " + section;
  }
}
