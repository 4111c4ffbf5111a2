package lanewarden.rules;

/** Who of a division is checked. */
public enum Who implements Worded {
  /** Every competitor. */
  EVERYONE("everyone"),
  /** Those drawn at random. */
  RANDOM_SHARE("random share"),
  /** Those who ask for it. */
  ON_REQUEST("on request"),
  /** Those whom a judge names. */
  NAMED_BY_JUDGE("named by a judge"),
  /** Nobody: the limit holds, but it is not measured at this event. */
  NOT_MEASURED("not measured");

  private final String word;

  Who(String word) {
    this.word = word;
  }

  /** As the rule book writes it. */
  @Override
  public String word() {
    return word;
  }
}
