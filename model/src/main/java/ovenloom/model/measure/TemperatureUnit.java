package ovenloom.model.measure;

/** The scales found on oven dials. */
public enum TemperatureUnit {
  CELSIUS, FAHRENHEIT, GAS
}
