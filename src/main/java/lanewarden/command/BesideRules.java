package lanewarden.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import lanewarden.rules.Division;
import lanewarden.station.StationException;
import lanewarden.station.WrittenRules;

/** Which rule stands beside each that is told. */
interface BesideRules {

  /**
   * A rule that stands beside another.
   *
   * @param name what it is called
   */
  record Other(String name, Division division) {}

  /** The rule that stands beside this one; empty where there is none. */
  Optional<Other> beside(Division division);

  /**
   * What stands beside the rules of a rule book.
   *
   * @param named a rule book, or an event's folder, whose divisions of the same code are meant; or
   *     the code of a division of the same book
   */
  static BesideRules of(String named, WrittenRules rules) throws StationException {
    if (Files.exists(Path.of(named))) {
      WrittenRules others = WrittenRules.read(Path.of(named));
      return division ->
          others
              .find(division.code())
              .map(other -> new Other(other.code() + " of " + named, other));
    }
    Division other = rules.besideItself(named);
    return division ->
        division.code().equals(other.code())
            ? Optional.empty()
            : Optional.of(new Other(other.code(), other));
  }

  /** Nothing stands beside any. */
  static BesideRules none() {
    return division -> Optional.empty();
  }
}
