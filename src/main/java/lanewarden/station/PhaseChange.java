package lanewarden.station;

import lanewarden.journal.Fact;
import lanewarden.rules.Phase;

/**
 * The event goes on to another phase; also back, where one was begun by mistake.
 *
 * @param now the phase it is in
 */
record PhaseChange(Phase now) {

  /** What is to be signed. */
  Fact to(Phase next) throws StationException {
    if (next == now) {
      throw StationException.misstep(
          "SAME-PHASE",
          "No phase was begun.",
          "It is " + now.phrase() + " already.",
          "Choose another phase, if another has begun.");
    }
    return new Fact.PhaseBegan(next);
  }
}
