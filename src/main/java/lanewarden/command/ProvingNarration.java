package lanewarden.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.station.Trouble;
import lanewarden.station.VerificationView;
import lanewarden.station.VerificationView.Held;
import lanewarden.station.VerificationView.Round;
import lanewarden.station.VerificationView.Shot;
import lanewarden.station.VerificationView.State;

/** Tells in words what is done to know that the instrument is good, and what it means. */
final class ProvingNarration {

  private ProvingNarration() {}

  /** How it stands when one comes to the line: what goes on, and what keeps the line. */
  static List<Notice> of(VerificationView now) {
    List<Notice> told = new ArrayList<>();
    now.running().ifPresent(round -> told.addAll(round(Optional.empty(), round)));
    now.held().ifPresent(held -> told.add(held(held)));
    if (now.running().isEmpty()) {
      now.last().ifPresent(round -> told.add(ended(round)));
      now.callsLeft().ifPresent(left -> told.add(left(left)));
      now.stop().ifPresent(stop -> told.add(stop(stop)));
    }
    if (!now.again().isEmpty()) {
      told.add(again(now));
    }
    return told;
  }

  /** What changed. */
  static List<Notice> between(VerificationView before, VerificationView now) {
    List<Notice> told = new ArrayList<>();
    for (int i = Math.max(0, before.rounds().size() - 1); i < now.rounds().size(); i++) {
      Optional<Round> known =
          i < before.rounds().size() ? Optional.of(before.rounds().get(i)) : Optional.empty();
      told.addAll(round(known, now.rounds().get(i)));
    }
    // Another reason of the same hold is a verification since, out of limits too
    if (!now.held().equals(before.held())) {
      told.add(now.held().map(ProvingNarration::held).orElseGet(ProvingNarration::lifted));
    }
    if (now.running().isEmpty() && now.stop().isPresent() && !now.stop().equals(before.stop())) {
      told.add(stop(now.stop().get()));
    }
    if (!now.again().equals(before.again()) && !now.again().isEmpty()) {
      told.add(again(now));
    }
    return told;
  }

  private static List<Notice> round(Optional<Round> before, Round now) {
    List<Notice> told = new ArrayList<>();
    if (before.isEmpty()) {
      told.add(began(now));
    }
    List<Shot> known = before.map(Round::taken).orElse(List.of());
    for (Shot shot : now.taken()) {
      if (!known.contains(shot)) {
        told.add(shot(shot, now));
      }
    }
    if (now.state() != State.RUNNING && before.filter(b -> b.state() == now.state()).isEmpty()) {
      told.add(ended(now));
    }
    return told;
  }

  private static Notice began(Round round) {
    return Notice.of(
            "verify",
            round.occasion()
                + ": "
                + round.shots()
                + " shots against the "
                + round.reference()
                + "; bias at most "
                + round.mostBias()
                + ", spread at most "
                + round.mostSpread())
        .with("verification", round.number())
        .with("occasion", round.occasion())
        .with("shots", round.shots());
  }

  private static Notice shot(Shot shot, Round round) {
    String words =
        shot.number()
            + ": "
            + shot.speed()
            + ", "
            + shot.source()
            + shot.reference()
                .map(reference -> ", against " + reference)
                .orElse("; now type what the second instrument shows: reference SPEED");
    Notice told =
        Notice.of("shot", words)
            .with("verification", round.number())
            .with("shot", shot.number())
            .with("speed", shot.speed().toString());
    return shot.reference().isEmpty()
        ? told
        : told.with("reference", shot.reference().get().toString())
            .with("bias", shot.biasInWords().orElseThrow());
  }

  private static Notice ended(Round round) {
    String word =
        switch (round.state()) {
          case PASSED -> "GOOD: ";
          case OUT -> "OUT OF LIMITS: ";
          case BROKEN_OFF, RUNNING -> "";
        };
    return Notice.of("verified", word + round.words())
        .with("verification", round.number())
        .with("passed", round.state() == State.PASSED);
  }

  private static Notice left(int calls) {
    return Notice.of("calls", "competitors until the next verification: " + calls)
        .with("callsLeft", calls);
  }

  private static Notice held(Held held) {
    return Notice.of("HELD", held.reason() + "; checks in question: " + held.checks().size())
        .with("hold", held.number())
        .with("checks", held.checks());
  }

  private static Notice lifted() {
    return Notice.of("lifted", "the line is no longer held");
  }

  private static Notice stop(Trouble stop) {
    return Notice.of("stop", stop.what() + " " + stop.remedy()).with("code", stop.code());
  }

  private static Notice again(VerificationView now) {
    return Notice.of("again", "to be checked again: " + String.join(", ", now.again()))
        .with("competitors", now.again());
  }
}
