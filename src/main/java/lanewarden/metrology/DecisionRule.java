package lanewarden.metrology;

/** On which side of an upper limit a reading's uncertainty counts (JCGM 106:2012, 8). */
public enum DecisionRule {
  /** The reading is held against the limit as it is: the risk is shared (8.2). */
  SIMPLE_ACCEPTANCE,
  /** Only a reading below the limit by the guard band passes: doubt counts against the archer. */
  GUARDED_ACCEPTANCE,
  /** Only a reading above the limit by the guard band fails: doubt counts for the archer. */
  GUARDED_REJECTION;

  /** Where the acceptance limit lies from the limit: −1 below, 0 on it, +1 above. */
  int side() {
    return switch (this) {
      case SIMPLE_ACCEPTANCE -> 0;
      case GUARDED_ACCEPTANCE -> -1;
      case GUARDED_REJECTION -> 1;
    };
  }
}
