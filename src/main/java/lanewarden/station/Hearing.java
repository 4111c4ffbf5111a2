package lanewarden.station;

import lanewarden.chronograph.Signal;

/**
 * What comes from the instrument or is typed, on its way to the wire's record and then to the
 * practice or the line.
 */
record Hearing(
    Station station, Wire wire, Practising practising, Intake intake, Duty duty, Book book) {

  /** Takes what the instrument says; on the instrument's thread. */
  void overhear(Signal signal) {
    wire.hear(signal);
    synchronized (station) {
      boolean clear = book.standing().stop().isEmpty() && !intake.stops();
      if (!clear || !practising.takes(signal)) {
        hear(signal);
      }
    }
  }

  /** Takes what is for the line, under the station's lock. */
  void hear(Signal signal) {
    if (!(signal instanceof Signal.LinkChanged) && Proving.takesShots(book)) {
      duty.stir();
    }
    intake.hear(signal, duty.isOn());
    duty.flush();
    station.tell();
  }
}
