package lanewarden.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.audit.findings.VerificationOutcome;
import lanewarden.audit.wording.OutcomeMark;
import lanewarden.audit.wording.ReadingMark;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.Hold;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Standing;

/**
 * How the station's instrument was verified and the line held, as tables of the report.
 *
 * @param any whether there is anything to print
 */
record VerificationSheet(boolean any, List<Round> rounds, List<Held> holds) {

  /**
   * A verification.
   *
   * @param shots station and reference of each
   * @param figures bias and spread beside their limits, computed anew
   */
  record Round(
      String entry,
      String time,
      String occasion,
      String reference,
      String shots,
      OutcomeMark outcome,
      String figures,
      String official) {}

  /** A hold, and how it ended. */
  record Held(
      String entry, String time, String reason, String checks, String end, String official) {}

  static VerificationSheet of(Standing standing, Map<String, String> names) {
    List<Round> rounds =
        standing.verifications().stream().map(round -> round(round, names)).toList();
    List<Held> holds = standing.holds().stream().map(hold -> held(hold, names)).toList();
    return new VerificationSheet(!rounds.isEmpty() || !holds.isEmpty(), rounds, holds);
  }

  private static Round round(InstrumentVerification round, Map<String, String> names) {
    Fact.VerificationBegan began = round.began();
    return new Round(
        String.valueOf(round.number()),
        Wording.time(round.at()),
        began.occasion(),
        began.known() == null ? began.reference() : began.reference() + ", " + began.known(),
        round.shots().stream().map(VerificationSheet::shot).collect(Collectors.joining("; ")),
        outcome(round),
        VerificationOutcome.of(round).words(),
        official(round.signer(), names));
  }

  private static String shot(InstrumentVerification.Shot shot) {
    boolean typed = shot.fact().source().equals(ReadingMark.TYPED);
    return shot.fact().speed()
        + (typed ? " (typed)" : "")
        + " against "
        + (shot.reference() == null ? "nothing" : shot.reference());
  }

  private static OutcomeMark outcome(InstrumentVerification round) {
    Optional<Fact.VerificationEnded> ended = round.ended().map(InstrumentVerification.Ended::fact);
    if (ended.isEmpty()) {
      return new OutcomeMark("–", "not ended", "open");
    }
    if (ended.get().reason() != null) {
      String brokenOff = "broken off: " + ended.get().reason();
      return VerificationOutcome.of(round).convicts()
          ? new OutcomeMark("▲", "out of its limits, " + brokenOff, "over")
          : new OutcomeMark("–", brokenOff, "open");
    }
    return ended.get().passed()
        ? new OutcomeMark("●", "within its limits", "within")
        : new OutcomeMark("▲", "out of its limits", "over");
  }

  private static Held held(Hold hold, Map<String, String> names) {
    return new Held(
        String.valueOf(hold.number()),
        Wording.time(hold.at()),
        hold.fact().reason(),
        Wording.numbers(hold.fact().checks()),
        hold.lifted()
            .map(
                lifted ->
                    lifted.verification() == null
                        ? "lifted by hand: " + lifted.reason()
                        : "lifted by verification " + lifted.verification())
            .orElse("not lifted"),
        official(hold.signer(), names));
  }

  private static String official(String signer, Map<String, String> names) {
    return names.getOrDefault(signer, "unknown key " + Wording.shortHash(signer));
  }
}
