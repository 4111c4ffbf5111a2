package lanewarden.kiosk.line;

import java.util.Optional;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleWords;
import lanewarden.station.Trouble;
import lanewarden.station.VerificationView;
import lanewarden.station.VerificationView.Round;
import lanewarden.station.VerificationView.State;

/**
 * How far the instrument can be believed, in the words of the screen.
 *
 * @param shown whether there is anything to say of it
 * @param sign shape of how it stands
 * @param word the same in a word or two
 * @param words why, and what to do
 * @param particulars why, in English below another language; else blank
 * @param planned whether this station verifies its instrument
 * @param held whether the line is held
 * @param liftable whether an official may lift the hold
 * @param round the verification that goes on, or was begun last
 */
public record ProvingPage(
    boolean shown,
    Sign sign,
    String word,
    String words,
    String particulars,
    boolean planned,
    boolean held,
    boolean liftable,
    Optional<Round> round) {

  static ProvingPage of(VerificationView view, Texts texts) {
    Sign sign = sign(view);
    return new ProvingPage(
        view.planned() || view.held().isPresent() || !view.again().isEmpty(),
        sign,
        switch (sign) {
          case HELD -> texts.of("proving.held");
          case RUNNING -> texts.of("proving.running");
          case NOT_DECIDED -> texts.of("proving.due");
          case WITHIN -> texts.of("proving.good");
          default -> texts.of("proving.none");
        },
        words(view, texts),
        view.stop().map(stop -> particulars(stop, texts)).orElse(""),
        view.planned(),
        view.held().isPresent(),
        view.held().filter(VerificationView.Held::byHand).isPresent(),
        view.last());
  }

  private static Sign sign(VerificationView view) {
    if (view.held().isPresent()) {
      return Sign.HELD;
    }
    if (view.running().isPresent()) {
      return Sign.RUNNING;
    }
    if (view.stop().isPresent()) {
      return Sign.NOT_DECIDED;
    }
    boolean good = view.rounds().stream().anyMatch(round -> round.state() == State.PASSED);
    return good ? Sign.WITHIN : Sign.LINK_CLOSED;
  }

  private static String words(VerificationView view, Texts texts) {
    String stop = view.stop().map(due -> words(due, texts)).orElseGet(() -> last(view, texts));
    return view.again().isEmpty()
        ? stop
        : texts.of("proving.again", stop, String.join(", ", view.again()));
  }

  private static String words(Trouble stop, Texts texts) {
    TroubleWords said = TroubleWords.of(stop, texts);
    return (said.why() + " " + said.remedy()).strip();
  }

  private static String particulars(Trouble stop, Texts texts) {
    return TroubleWords.of(stop, texts).particulars().isBlank() ? "" : stop.why();
  }

  private static String last(VerificationView view, Texts texts) {
    String last = view.last().map(Round::words).map(texts::of).orElse("");
    return view.callsLeft().isPresent()
        ? texts.of("proving.left", last, view.callsLeft().getAsInt())
        : last;
  }

  /** Whether nobody is called as things stand. */
  public boolean stopped() {
    return held || sign == Sign.RUNNING || sign == Sign.NOT_DECIDED;
  }

  /** Whether a verification goes on. */
  public boolean running() {
    return round.filter(last -> last.state() == State.RUNNING).isPresent();
  }
}
