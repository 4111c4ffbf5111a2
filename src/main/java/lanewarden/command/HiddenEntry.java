package lanewarden.command;

import java.util.Optional;

/** A keyboard that can be read without showing what is typed. */
@FunctionalInterface
public interface HiddenEntry {

  /** What was typed, without the line's end; empty if the keyboard ended. */
  Optional<char[]> ask(String prompt);
}
