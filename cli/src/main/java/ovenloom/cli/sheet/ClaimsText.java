package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.solver.proof.Claim;

/** Which claims clash, in the words of a kitchen. */
public final class ClaimsText {

  private ClaimsText() {}

  /**
   * All of them, a line each.
   *
   * @param width of a line, in characters
   */
  public static String of(List<Claim> claims, int width) {
    Page page = new Page(width, false);
    if (claims.isEmpty()) {
      return page.line("What must be done one after the other takes longer than there is.").toString();
    }
    page.line("These cannot all be; it would help to give way in any one of them:");
    claims.forEach(claim -> page.line("- " + words(claim)));
    return page.toString();
  }

  private static String words(Claim claim) {
    return switch (claim.kind()) {
      case TAKES -> "%s takes %s.".formatted(claim.step(), claim.what());
      case KEEPS -> "What comes of %s keeps no longer.".formatted(claim.step());
      case ATTENDED -> "Somebody is there for %s.".formatted(claim.step());
    };
  }
}
