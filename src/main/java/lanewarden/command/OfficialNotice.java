package lanewarden.command;

import lanewarden.station.KeyOffice;

/** Tells of an official as the ledger has one. */
final class OfficialNotice {

  private OfficialNotice() {}

  static Notice of(KeyOffice.Official official) {
    String state = official.suspension().map(KeyOffice.Suspended::inWords).orElse("may sign");
    String role = official.judge() ? "judge" : "official";
    return Notice.of(
            "official", official.thumbprint() + "  " + official.name() + ", " + role + ", " + state)
        .with("official", official.name())
        .with("role", role)
        .with("thumbprint", official.thumbprint())
        .with("maySign", official.suspension().isEmpty())
        .with("state", state);
  }
}
