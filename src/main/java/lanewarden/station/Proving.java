package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lanewarden.chronograph.Signal;
import lanewarden.chronograph.TypedEntry;
import lanewarden.journal.Fact;
import lanewarden.journal.Hold;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Occasion;
import lanewarden.journal.Standing;
import lanewarden.metrology.Deviation;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * What an official does to know that the station's own instrument is good: verify it, hold the line
 * and lift the hold. Shots come from the instrument, or are typed as readings are.
 *
 * <p>Belongs to one {@link Station} and works under its lock; any thread may call.
 */
public final class Proving {
  private final Station station;
  private final Optional<VerificationPlan> plan;
  private final TypedEntry typedEntry;
  private boolean closing;

  Proving(Station station, Optional<VerificationPlan> plan, TypedEntry typedEntry) {
    this.station = station;
    this.plan = plan;
    this.typedEntry = typedEntry;
  }

  /**
   * Begins a verification, when nobody is at the line; a decided check is closed by it.
   *
   * @throws StationException if none is planned, one goes on, a check is running, the line is not
   *     clear, or it is held by one with narrower limits
   */
  public void begin() throws StationException {
    station.sign(this::begun);
  }

  private List<Fact> begun(Book book) throws StationException {
    station.practising().requireResting();
    new StopGate(book.standing()).requireClear();
    if (plan.isEmpty()) {
      throw StationException.misstep(
          "VERIFICATION-UNPLANNED",
          "No verification was begun.",
          EventFolder.SETTINGS + " does not say how the instrument is verified.",
          "Add the table [" + VerificationPlan.TABLE + "] to it and open the line anew.");
    }
    Standing standing = book.standing();
    if (standing.verification().isPresent()) {
      throw StationException.stuck(InstrumentGate.running(standing.verification().get()));
    }
    requireAsStrict(plan.get(), standing);
    List<Fact> facts = new ArrayList<>();
    Optional<CheckView> atLine = book.check();
    if (atLine.isPresent()) {
      facts.add(new OpenCheck(atLine.get()).closed());
    }
    facts.add(plan.get().began(occasion(standing)));
    closing = false;
    return facts;
  }

  /** Refuses to prove the instrument good by limits that are wider than those it failed. */
  private static void requireAsStrict(VerificationPlan plan, Standing standing)
      throws StationException {
    for (InstrumentVerification out : standing.verifications()) {
      boolean holds =
          standing.holds().stream()
              .filter(Hold::stands)
              .anyMatch(hold -> Objects.equals(hold.fact().verification(), out.number()));
      if (holds && plan.isLooserThan(out)) {
        throw StationException.misstep(
            "LIMITS-LOOSENED",
            "No verification was begun.",
            "Verification "
                + out.number()
                + " holds the line by a bias of at most "
                + out.began().mostBias()
                + " and a spread of at most "
                + out.began().mostSpread()
                + "; the settings now allow "
                + plan.mostBias()
                + " and "
                + plan.mostSpread()
                + ". A hold is lifted by limits no wider than those that put it on.",
            "Write the former limits, or narrower ones, into "
                + EventFolder.SETTINGS
                + " and open the line anew; wider ones may follow once the hold is lifted.");
      }
    }
  }

  private Occasion occasion(Standing standing) {
    return standing
        .hold()
        .map(hold -> Occasion.AFTER_HOLD)
        .or(standing::verificationDue)
        .orElse(closing ? Occasion.CLOSING : Occasion.ON_REQUEST);
  }

  /** Takes the second instrument's value of the last shot, typed by the official. */
  public void reference(String text) throws StationException {
    station.sign(book -> running(book).reference(read(book, text)));
  }

  private Speed read(Book book, String text) throws StationException {
    new StopGate(book.standing()).requireClear();
    if (!running(book).running().awaitsReference()) {
      throw StationException.misstep(
          "REFERENCE-NOT-ASKED",
          "Nothing was taken.",
          "No shot of the verification waits for a reference value.",
          "Wait for the next shot of the station's instrument first.");
    }
    if (typedEntry.read(text, unit(book)) instanceof Signal.Heard heard) {
      return heard.reading().speed();
    }
    throw StationException.misstep(
        "REFERENCE-NO-SPEED",
        "Nothing was taken.",
        "\"" + text.strip() + "\" is no speed of an arrow.",
        "Type a number with a decimal point and its unit, such as 296.4 ft/s.");
  }

  /** Whether arrows are due: of a verification, or of the check at the line. */
  static boolean takesShots(Book book) {
    return book.standing().verification().isPresent()
        || book.check().filter(CheckView::takesShots).isPresent();
  }

  /** The unit of a typed reading that has none: the verification's, else the division's. */
  SpeedUnit unitToType(Book book) throws StationException {
    new StopGate(book.standing()).requireClear();
    if (book.standing().verification().isPresent()) {
      return unit(book);
    }
    new InstrumentGate(book.standing()).requireNoHold();
    return book.atLine().division().rule().unit();
  }

  /** The unit of a typed number that has none: the reference's, or that of the limits. */
  private static SpeedUnit unit(Book book) {
    Optional<Fact.VerificationBegan> began = book.standing().verification().map(v -> v.began());
    Optional<Speed> known = began.map(Fact.VerificationBegan::known);
    Optional<Speed> limit =
        began
            .map(fact -> Deviation.parse(fact.mostBias()))
            .filter(Deviation.Fixed.class::isInstance)
            .map(fixed -> ((Deviation.Fixed) fixed).speed());
    return known.or(() -> limit).map(Speed::unit).orElse(SpeedUnit.FEET_PER_SECOND);
  }

  /**
   * Breaks the verification off; it lifts no hold, and holds the line only where the shots taken
   * are out of the limits already.
   */
  public void breakOff(String reason) throws StationException {
    station.sign(book -> running(book).brokenOff(Reason.of(reason)));
  }

  private static RunningVerification running(Book book) throws StationException {
    return RunningVerification.of(book.standing())
        .orElseThrow(
            () ->
                StationException.misstep(
                    "NO-VERIFICATION",
                    "Nothing was done.",
                    "No verification of the instrument goes on.",
                    "Begin one first."));
  }

  /**
   * Holds the line for a doubt about the instrument. What was decided since the last good
   * verification is in question until the hold is lifted.
   *
   * @throws StationException if it is held already, or a verification goes on
   */
  public void hold(String reason) throws StationException {
    station.sign(
        book -> {
          Standing standing = book.standing();
          new InstrumentGate(standing).requireNoHold();
          if (standing.verification().isPresent()) {
            throw StationException.stuck(InstrumentGate.running(standing.verification().get()));
          }
          return List.of(new Fact.LineHeld(null, Reason.of(reason), standing.checksSinceGood()));
        });
  }

  /**
   * Lifts a hold that an official put on.
   *
   * @throws StationException if none stands, or a verification out of limits put it on
   */
  public void lift(String reason) throws StationException {
    station.sign(
        book -> {
          Optional<Hold> hold = book.standing().hold();
          if (hold.isEmpty()) {
            throw StationException.misstep(
                "NOT-HELD", "Nothing was lifted.", "The line is not held.", "Go on.");
          }
          if (!hold.get().byHand()) {
            throw StationException.misstep(
                "HOLD-STANDS",
                "The hold was not lifted.",
                "A verification out of its limits put it on.",
                "Mend the instrument and verify it: only that lifts this hold.");
          }
          return List.of(new Fact.HoldLifted(hold.get().number(), null, Reason.of(reason)));
        });
  }

  /** The reason to sign when the line closes, and that a verification now is one at the end. */
  Optional<String> reasonToClose(Book book, String reason) throws StationException {
    closing = true;
    return new InstrumentGate(book.standing()).reasonToClose(reason);
  }

  /** When verifications are due, as it is to be signed; empty where that stands already. */
  Optional<Fact> planned(Standing standing) {
    Fact.VerificationPlanned now =
        plan.map(VerificationPlan::planned)
            .orElseGet(() -> new Fact.VerificationPlanned(false, null, false));
    return now.equals(standing.verificationPlan()) ? Optional.empty() : Optional.of(now);
  }

  VerificationView view(Standing standing) {
    return VerificationView.of(standing, plan.isPresent());
  }
}
