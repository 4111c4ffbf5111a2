package lanewarden.station;

import java.util.List;

/**
 * What came from the station's instrument since the station was opened; immutable.
 *
 * @param instrument its name
 * @param newestFirst the last of it, at most 200
 * @param readings how many good readings came in all
 * @param refused how many times bytes were refused in all
 * @param misfits what does not fit between the profile and the instrument, the cause before its
 *     consequences; empty if nothing does not
 */
public record WireView(
    String instrument,
    List<Overheard> newestFirst,
    long readings,
    long refused,
    List<Listening.Misfit> misfits) {

  /** Copies the lists. */
  public WireView {
    newestFirst = List.copyOf(newestFirst);
    misfits = List.copyOf(misfits);
  }
}
