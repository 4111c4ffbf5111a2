package lanewarden.kiosk.setups;

import lanewarden.kiosk.look.Texts;

/** What is written to a file of what was found. */
enum Copy {
  /** Tables and pictures. */
  PAPER,
  /** A line a set-up. */
  TABLE,
  /** A line a shot, to go on with. */
  SHOTS;

  /** What it is, in words. */
  String named(Texts texts) {
    return switch (this) {
      case PAPER -> texts.of("setups.copy.paper");
      case TABLE -> texts.of("setups.copy.table");
      case SHOTS -> texts.of("setups.copy.shots");
    };
  }
}
