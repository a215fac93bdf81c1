package ovenloom.model.safety;

/**
 * Where a limit is written.
 *
 * @param edition the one it was checked in
 */
public record Source(String document, String edition, String section) {

  @Override
  public String toString() {
    return document + " " + edition + ", " + section;
  }
}
