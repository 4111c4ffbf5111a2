package lanewarden.command;

import java.nio.file.Path;
import java.util.Optional;
import lanewarden.station.CurrentLine;

/** The way to the screen that the program opens with, which this room does not know. */
@FunctionalInterface
public interface FirstScreen {

  /**
   * Shows the start screen, and whatever is opened from it, until it is left.
   *
   * @param line opens lines
   * @param event is opened at once, if there is one
   * @throws NoDisplay if no window can be opened; then nothing was changed
   */
  void show(CurrentLine line, Optional<Path> event) throws NoDisplay;
}
