package lanewarden.journal;

/**
 * What speaks against a protest, a ruling or the confirmation of a correction. One that has an
 * objection against it changes nothing, whoever signed it.
 */
public enum Objection {
  /** Only judges rule: those whose key was last enrolled as one, and not suspended since. */
  NO_JUDGE("it is signed with a key that was not enrolled as a judge's at the time"),
  /** Nobody rules on a check of their own, be it that they only corrected it or held it up. */
  OWN_CHECK(
      "it is signed by somebody who signed something of the check in dispute or a recheck of it"
          + " (at the line, a correction, a hold), with the same key or another of theirs, or with"
          + " the organizer's, which names nobody"),
  /** A recheck is no matter of its own: what is disputed is the check that it stands beside. */
  IS_RECHECK("it is filed against a recheck, which stands beside the check in dispute"),
  /** Nobody can dispute what is not decided. */
  CHECK_RUNS("the check in dispute goes on, and has come to nothing yet"),
  /** The protest has an objection against it itself. */
  NO_PROTEST("the protest has no effect itself"),
  /** A ruling stands until there is another protest. */
  RULED_ALREADY("the protest had its ruling"),
  /** A recheck under the protest is at the line. */
  RECHECK_RUNS("a recheck was still at the line"),
  /** The check that is to count has nothing to do with the protest. */
  OTHER_CHECK("the check that is to stand is neither the one in dispute nor a recheck of it"),
  /** The recheck is of somebody else, or was judged by another division's rule. */
  OTHER_ARCHER(
      "the recheck that is to stand is of another bib or another division than the check in"
          + " dispute"),
  /** The recheck that is to count came to nothing. */
  NO_OUTCOME("the recheck that is to stand was not decided, or its instrument is in doubt"),
  /** Who dismisses a protest lets the check in dispute stand. */
  DISMISSED("it dismisses the protest, and yet lets another check stand"),
  /** A correction needs two persons. */
  SAME_PERSON(
      "it is signed by the person who made the correction, with the same key or another of theirs,"
          + " or with the organizer's, which names nobody"),
  /** A correction is confirmed once. */
  CONFIRMED_ALREADY("it had been confirmed before"),
  /** A recheck counts for an archer by a ruling, and would go on counting for another one. */
  RULED_ON(
      "by a ruling a recheck counts in the place of the check in dispute, and the ruling rests on"
          + " the bib and the division of both"),
  /** Bytes of an instrument are evidence. */
  MEASURED("the reading was measured, and only a typed one can be corrected"),
  /** Nothing could judge the check. */
  NO_DIVISION("the rule book of the check has no such division"),
  /** It says what stands there already. */
  NOTHING_NEW("it changes nothing");

  private final String words;

  Objection(String words) {
    this.words = words;
  }

  /** The objection as a clause, for example behind "It has no effect: ". */
  public String words() {
    return words;
  }
}
