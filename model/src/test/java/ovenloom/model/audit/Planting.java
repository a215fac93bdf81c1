package ovenloom.model.audit;

/** What is planted, where its limit is written, and which rule is to find it. The rows are those of docs/safety-rows.md. */
enum Planting {
  /** Row F22: Food Code 3-501.19(B), 4 h. F28: FSIS, Danger Zone, 2 h, in air over 90 F 1 h. F41: FSA 2007, 42-49, 4 h. */
  LEFT_OUT_FIVE_MINUTES_TOO_LONG("safe"),

  /** Rows F01 to F04: Food Code 3-401.11(A) and (B)(2). F27, F37: USDA-FSIS chart. F42: FSA advice. */
  COOKED_ONE_DEGREE_SHORT("safe"),

  /** Row F10: Food Code 3-403.11(A). F27: USDA-FSIS chart. F42: FSA advice. */
  HEATED_AGAIN_ONE_DEGREE_SHORT("safe"),

  /** Row F11: Food Code 3-403.11(D), 41 F to 165 F in 2 h. */
  HEATED_AGAIN_TOO_SLOWLY("safe"),

  /** Row F14: Food Code 3-501.14(A). F44: practice of the trade. */
  COOLED_IN_TOO_DEEP_A_PAN("safe"),

  /** As above. */
  COOLED_IN_TOO_WARM_A_FRIDGE("safe"),

  /** Row F18: Food Code 3-501.16(A)(2). F28: FSIS, Danger Zone. F40: FSA 2007, 27-31. */
  KEPT_ONE_DEGREE_TOO_WARM("safe"),

  /** Row F17: Food Code 3-501.16(A)(1). F28: FSIS, Danger Zone. F38: Wales 2006, schedule 4 paragraph 6. */
  KEPT_HOT_ONE_DEGREE_TOO_COOL("safe"),

  /** Row F19: Food Code 3-501.17. F29: Cold Food Storage Chart. */
  KEPT_A_DAY_TOO_LONG("days kept"),

  /** Row F24, Food Code 3-302.11(A)(1)-(2), with R01 and R03. */
  RAW_ONE_SHELF_TOO_HIGH("raw below"),

  /** The card says so: it is written for food as cold as its fridge. */
  BAKED_FIVE_MINUTES_TOO_SHORT("long enough");

  private final String rule;

  Planting(String rule) {
    this.rule = rule;
  }

  String rule() {
    return rule;
  }
}
