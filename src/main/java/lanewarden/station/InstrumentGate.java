package lanewarden.station;

import java.util.Locale;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Hold;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Occasion;
import lanewarden.journal.Standing;

/** What keeps the line from going on until its instrument is known to be good. */
record InstrumentGate(Standing standing) {

  /** Why nobody is called; empty where somebody may be. */
  Optional<Trouble> closed() {
    return standing
        .hold()
        .map(this::held)
        .or(() -> standing.verification().map(InstrumentGate::running))
        .or(() -> standing.verificationDue().map(this::due));
  }

  /** Refuses a call while it is closed. */
  void requireOpen() throws StationException {
    refuse(closed());
  }

  /** Refuses whatever could bring a verdict while the line is held. */
  void requireNoHold() throws StationException {
    refuse(standing.hold().map(this::held));
  }

  /**
   * The reason to sign when the line closes.
   *
   * @return empty where there is none and none is needed
   * @throws StationException if one is needed, or a verification still runs
   */
  Optional<String> reasonToClose(String reason) throws StationException {
    refuse(standing.verification().map(InstrumentGate::running));
    if (reason.isBlank() && standing.verificationDueAtEnd()) {
      throw StationException.misstep(
          Trouble.VERIFICATION_DUE,
          "The line was not closed.",
          "The instrument is to be verified at the end, and was not since the last check.",
          "Verify it, or close with the reason why not: it is signed.");
    }
    return reason.isBlank() ? Optional.empty() : Optional.of(Reason.of(reason));
  }

  private static void refuse(Optional<Trouble> trouble) throws StationException {
    if (trouble.isPresent()) {
      throw StationException.stuck(trouble.get());
    }
  }

  private Trouble held(Hold hold) {
    int checks = hold.fact().checks().size();
    return new Trouble(
        "The line is held: nobody is called and no verdict is given.",
        capital(reason(hold))
            + (checks == 0
                ? "."
                : ". Since the last good verification "
                    + (checks == 1 ? "1 check was" : checks + " checks were")
                    + " decided, now in question."),
        (hold.byHand()
                ? "Lift it with a reason when the doubt is gone. Where the instrument is verified here,"
                    + " a verification within its limits lifts it too."
                : "Find out what is wrong with the instrument and mend it, then verify it again:"
                    + " within its limits, the hold is lifted.")
            + (standing.current().filter(check -> check.outcome().isEmpty()).isPresent()
                ? " The check at the line must be ended before a verification."
                : ""),
        "STATION-HELD",
        Trouble.Kind.USAGE);
  }

  /**
   * Why the line is held, by what was last found: a verification out of its limits puts on no
   * second hold where one of its kind stands.
   */
  String reason(Hold hold) {
    return standing.verifications().stream()
        .filter(later -> !hold.byHand() && later.number() > hold.number())
        .flatMap(later -> later.ended().flatMap(end -> out(later, end.fact())).stream())
        .reduce((earlier, later) -> later)
        .orElse(hold.fact().reason());
  }

  private static Optional<String> out(
      InstrumentVerification verification, Fact.VerificationEnded end) {
    return Comparison.of(verification)
        .filter(Comparison::convicts)
        .map(seen -> seen.outInWords() + (end.reason() == null ? "" : ", " + end.words()));
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A verification that goes on. */
  static Trouble running(InstrumentVerification running) {
    return new Trouble(
        "A verification of the instrument goes on.",
        running.awaitsReference()
            ? "Shot " + running.shots().size() + " waits for the second instrument's value."
            : running.shots().size() + " of " + running.began().shots() + " shots are taken.",
        running.awaitsReference()
            ? "Type that value, or break the verification off with a reason."
            : "Shoot what is missing, or break the verification off with a reason.",
        "VERIFICATION-RUNNING",
        Trouble.Kind.USAGE);
  }

  private Trouble due(Occasion occasion) {
    return new Trouble(
        "A verification of the instrument is due before the next competitor.",
        occasion == Occasion.OPENING
            ? "The line opened, and the instrument was not verified since."
            : "Competitors called since the last good verification: as many as may be, "
                + standing.verificationPlan().every()
                + ".",
        "Verify the instrument: shoot through it and the reference.",
        Trouble.VERIFICATION_DUE,
        Trouble.Kind.USAGE);
  }
}
