package lanewarden.station;

/**
 * What an official does with the check at the line, between its call and its verdict. Nothing of it
 * while the line is held or not clear.
 *
 * <p>Belongs to one {@link Station} and works under its lock; any thread may call.
 */
public final class Officiating {
  private final Station station;

  Officiating(Station station) {
    this.station = station;
  }

  /**
   * Declares a reading of the check at the line void; a verdict that rested on it falls, and the
   * rule is asked anew.
   *
   * @param reading the sequence of its entry
   * @param reason in the official's words
   */
  public void declareVoid(long reading, String reason) throws StationException {
    act(check -> check.voided(reading, reason));
  }

  /** Declares the last reading that stands void. */
  public void declareLastVoid(String reason) throws StationException {
    act(check -> check.lastVoided(reason));
  }

  /**
   * Lets a reading of the check at the line count that is in doubt.
   *
   * @param reading the sequence of its entry
   * @param reason in the official's words
   */
  public void keep(long reading, String reason) throws StationException {
    act(check -> check.kept(reading, reason));
  }

  /** Lets the first reading in doubt count. */
  public void keepFirst(String reason) throws StationException {
    act(check -> check.firstKept(reason));
  }

  /**
   * States bow and arrow of the check at the line as they were weighed. A verdict that rested on
   * other figures falls, and the rule is asked anew.
   */
  public void state(SetUpText figures) throws StationException {
    act(check -> check.stated(figures));
  }

  /** Ticks a condition of the rule, in its own words, for the check at the line. */
  public void tick(String condition) throws StationException {
    act(check -> check.ticked(condition));
  }

  /** Ticks every condition that is not ticked yet. */
  public void tickAll() throws StationException {
    act(OpenCheck::allTicked);
  }

  private void act(OpenCheck.Act act) throws StationException {
    station.sign(
        book -> {
          CheckView atLine = book.atLine();
          new StopGate(book.standing()).requireClear();
          new InstrumentGate(book.standing()).requireNoHold();
          return act.facts(new OpenCheck(atLine));
        });
  }
}
