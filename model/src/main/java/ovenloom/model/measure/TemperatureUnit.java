package ovenloom.model.measure;

/** The scales found on oven dials. */
public enum TemperatureUnit {
  /** Degrees Celsius. */
  CELSIUS("c, celsius, centigrade, ℃"),
  /** Degrees Fahrenheit. */
  FAHRENHEIT("f, fahrenheit, ℉"),
  /** The marks of a British gas oven. */
  GAS("");

  private final String words;

  TemperatureUnit(String words) {
    this.words = words;
  }

  /** What may stand behind a number of degrees; nothing may for gas, whose word comes first. */
  String words() {
    return words;
  }
}
