package lanewarden.rules;

/** Whether what equals a limit still keeps it. */
public enum Side implements Worded {
  /** A figure equal to the limit keeps it. */
  AT_MOST("at most"),
  /** A figure equal to the limit exceeds it. */
  BELOW("below");

  private final String word;

  Side(String word) {
    this.word = word;
  }

  /** As the rule book writes it. */
  @Override
  public String word() {
    return word;
  }

  /**
   * Whether the limit is kept.
   *
   * @param comparison of the figure with the limit, as {@link Comparable#compareTo} gives it
   */
  boolean keeps(int comparison) {
    return this == AT_MOST ? comparison <= 0 : comparison < 0;
  }
}
