package ovenloom.model.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Every table of keys a problem file knows, by the name it has in the schema. */
final class AllKeys {

  private AllKeys() {}

  static Map<String, Keys> tables() {
    Map<String, Keys> all = new LinkedHashMap<>();
    all.put("event", EventReader.EVENT);
    all.put("course", EventReader.COURSE);
    all.put("calendar", EventReader.CALENDAR);
    all.put("kitchen", KitchenReader.KITCHEN);
    all.put("oven", OvenReader.OVEN);
    all.put("rack", OvenReader.RACK);
    all.put("burner", BurnerReader.BURNER);
    all.put("store", StoreReader.STORE);
    all.put("shelf", StoreReader.SHELF);
    all.put("vessel", VesselReader.VESSEL);
    all.put("appliance", VesselReader.APPLIANCE);
    all.put("cook", CookReader.COOK);
    all.put("taken", HoursReader.TAKEN);
    all.put("dish", DishReader.DISH);
    all.put("made of", MatterReader.MADE_OF);
    all.put("step", StepReader.STEP);
    all.put("stage", BakeReader.STAGE);
    all.put("moment", HandsReader.HANDS);
    all.put("gap", LinksReader.GAP);
    return all;
  }

  static List<String> names() {
    return tables().values().stream().flatMap(keys -> keys.names().stream()).distinct().toList();
  }

  static Stream<Map.Entry<String, Keys>> entries() {
    return tables().entrySet().stream();
  }
}
