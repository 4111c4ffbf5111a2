package lanewarden.station;

import java.util.Locale;
import java.util.stream.Stream;
import lanewarden.journal.Fact;
import lanewarden.rules.Phase;

/**
 * The event goes on to another phase; also back, where one was begun by mistake.
 *
 * @param now the phase it is in
 */
record PhaseChange(Phase now) {

  /**
   * The phase that is meant by its word or its phrase, such as {@code during} or {@code during the
   * event}.
   */
  static Phase named(String typed) throws StationException {
    String word = typed.strip().toLowerCase(Locale.ROOT);
    return Stream.of(Phase.values())
        .filter(phase -> phase.word().equals(word) || phase.phrase().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                StationException.misstep(
                    "PHASE-WORD",
                    "No phase was begun.",
                    "\"" + typed.strip() + "\" is no phase of an event.",
                    "The phases are before, during and after the event."));
  }

  /**
   * What is to be signed.
   *
   * @param reason why, which it takes to go back; may be blank where the event goes on
   */
  Fact to(Phase next, String reason) throws StationException {
    if (next == now) {
      throw StationException.misstep(
          "SAME-PHASE",
          "No phase was begun.",
          "It is " + now.phrase() + " already.",
          "Choose another phase, if another has begun.");
    }
    if (next.compareTo(now) < 0 && reason.isBlank()) {
      throw StationException.misstep(
          Trouble.PHASE_BACK,
          "No phase was begun.",
          "It is " + now.phrase() + ", and " + next.phrase() + " lies behind.",
          "If another phase was begun by mistake, go back with a reason: it is signed with it.");
    }
    return new Fact.PhaseBegan(next, reason.isBlank() ? null : Reason.of(reason));
  }
}
