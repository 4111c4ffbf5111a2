package lanewarden.station;

import java.nio.file.Path;
import java.util.Optional;
import lanewarden.bench.Practice;
import lanewarden.bench.PracticeSetUp;

/**
 * A practice day at one moment; immutable.
 *
 * @param changes how often it changed since the station was opened
 * @param setUp what is shot now, with all that is known of it
 * @param listening whether the instrument's readings go to the practice instead of the line
 * @param news what was taken or refused last
 * @param file where every shot is written at once; empty before the first
 * @param practice the shots so far; empty before the first
 * @param trouble why the last change is not in the file
 */
public record PracticeView(
    long changes,
    Optional<PracticeSetUp> setUp,
    boolean listening,
    Optional<News> news,
    Optional<Path> file,
    Optional<Practice> practice,
    Optional<Trouble> trouble) {

  /**
   * What came last.
   *
   * @param taken whether it is one of the shots
   * @param words a speed, or why it was refused
   */
  public record News(boolean taken, String words) {}
}
