package ovenloom.model.check;

/**
 * What was found, and about what.
 *
 * @param fatal whether there can be no plan because of it
 */
public record Finding(Subject subject, Trouble trouble, boolean fatal) {

  static Finding fatal(Subject subject, Trouble trouble) {
    return new Finding(subject, trouble, true);
  }

  static Finding note(Subject subject, Trouble trouble) {
    return new Finding(subject, trouble, false);
  }
}
