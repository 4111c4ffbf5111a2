package lanewarden.kiosk.checkup;

import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.SelfCheck;

/** The words of the screen for what a check-up looks at, and how it stands. */
record PointWords(Texts texts) {

  /** What a point is about. */
  String of(SelfCheck.Subject subject) {
    return texts.of(
        switch (subject) {
          case CLOCK -> "checkup.clock";
          case DISK -> "checkup.disk";
          case LOG -> "checkup.log";
          case PORT -> "checkup.port";
          case LEDGER -> "checkup.ledger";
          case ORGANIZER_KEY -> "checkup.organizer-key";
          case OFFICIALS -> "checkup.officials";
          case JUDGE -> "checkup.judge";
          case RULE_BOOK -> "checkup.rule-book";
          case ROSTER -> "checkup.roster";
          case INSTRUMENT -> "checkup.instrument";
          case VERIFICATION -> "checkup.verification";
        });
  }

  /** How a point stands. */
  String of(SelfCheck.State state) {
    return texts.of(
        switch (state) {
          case GOOD -> "checkup.good";
          case ATTENTION -> "checkup.attention";
          case WRONG -> "checkup.wrong";
        });
  }

  /** How all of it stands, in a sentence. */
  String of(SelfCheck found) {
    long wrong = found.count(SelfCheck.State.WRONG);
    long attention = found.count(SelfCheck.State.ATTENTION);
    return switch (found.worst()) {
      case GOOD -> texts.of("checkup.all-good");
      case ATTENTION -> texts.of("checkup.some-attention", attention);
      case WRONG -> texts.of("checkup.some-wrong", wrong, attention);
    };
  }

  /** The sign beside the word. */
  static Sign sign(SelfCheck.State state) {
    return switch (state) {
      case GOOD -> Sign.WITHIN;
      case ATTENTION -> Sign.NOT_DECIDED;
      case WRONG -> Sign.OVER;
    };
  }
}
