package lanewarden.station;

import lanewarden.journal.Objection;

/**
 * What is said to whoever signs a protest, a ruling or a correction that has an objection against
 * it.
 */
final class Objected {

  private Objected() {}

  static Trouble trouble(Objection objection) {
    return new Trouble(
        "Nothing was signed.",
        "Were it signed, it would have no effect: " + objection.words() + ".",
        remedy(objection),
        code(objection),
        Trouble.Kind.USAGE);
  }

  private static String code(Objection objection) {
    return switch (objection) {
      case NO_JUDGE -> "NOT-A-JUDGE";
      case OWN_CHECK -> "OWN-CHECK";
      case IS_RECHECK -> "CHECK-IS-RECHECK";
      case CHECK_RUNS -> "CHECK-RUNNING";
      case NO_PROTEST -> "PROTEST-WITHOUT-EFFECT";
      case RULED_ALREADY -> "PROTEST-RULED";
      case RECHECK_RUNS -> "RECHECK-RUNNING";
      case OTHER_CHECK -> "RULING-OTHER-CHECK";
      case OTHER_ARCHER -> "RULING-OTHER-ARCHER";
      case NO_OUTCOME -> "RECHECK-UNSETTLED";
      case DISMISSED -> "RULING-CONTRADICTS";
      case SAME_PERSON -> "SECOND-PERSON";
      case CONFIRMED_ALREADY -> "CORRECTION-CONFIRMED";
      case RULED_ON -> "CORRECTION-RULED-ON";
      case MEASURED -> "READING-MEASURED";
      case NO_DIVISION -> "NO-SUCH-DIVISION";
      case NOTHING_NEW -> "CORRECTION-SAME";
    };
  }

  private static String remedy(Objection objection) {
    return switch (objection) {
      case NO_JUDGE -> "Have a judge sign it: one whom the organizer enrolled as such.";
      case OWN_CHECK -> "Have another judge sign it; another key of the same judge will not do.";
      case IS_RECHECK ->
          "File against the check in dispute; after a ruling, that may be done again.";
      case CHECK_RUNS -> "Finish the check, or end it with a reason.";
      case NO_PROTEST -> "File a protest against the check in dispute, and go on with that one.";
      case RULED_ALREADY -> "If there is something new, file another protest.";
      case RECHECK_RUNS -> "Finish the recheck first, and let the archer go.";
      case OTHER_CHECK -> "Name the check in dispute, or a recheck under this protest.";
      case OTHER_ARCHER ->
          "If a bib or a division was entered wrongly, correct it first; else recheck again, or let"
              + " the check in dispute stand.";
      case NO_OUTCOME -> "Recheck again, or let the check in dispute stand.";
      case DISMISSED -> "Uphold the protest, or let the check in dispute stand.";
      case SAME_PERSON ->
          "Have somebody else confirm it; another key of the same official will not do.";
      case CONFIRMED_ALREADY -> "Nothing is to be done: it is in effect.";
      case RULED_ON ->
          "File another protest against the check in dispute, have a judge rule that it counts by"
              + " itself, and then correct it.";
      case MEASURED -> "If it was a misread, file a protest and check again.";
      case NO_DIVISION -> "Give the code of a division of the rule book that governs the check.";
      case NOTHING_NEW -> "Look at the number of the check, and at what stands there.";
    };
  }
}
