package lanewarden.kiosk;

import java.util.function.Supplier;
import lanewarden.station.LineView;
import org.jspecify.annotations.Nullable;

/**
 * The screens beside the line, which are made when the first of them is gone to, or before, when
 * there is time: nobody waits for them at the start.
 */
final class Annex {
  private final Late<SideRooms> side;
  private @Nullable LineView latest;
  private boolean closed;

  Annex(Supplier<SideRooms> making) {
    side = new Late<>(making);
  }

  /** Made by now. */
  SideRooms rooms() {
    boolean known = side.isMade();
    SideRooms rooms = side.get();
    if (!known && latest != null) {
      rooms.take(latest);
    }
    return rooms;
  }

  /** Makes them while there is time, unless they were closed before it came to that. */
  void furnish() {
    if (!closed) {
      rooms();
    }
  }

  /** What became of the line. */
  void take(LineView view) {
    latest = view;
    if (side.isMade()) {
      side.get().take(view);
    }
  }

  /** Whether a report is being made, or something is looked up. */
  boolean isBusy() {
    return side.isMade() && side.get().isBusy();
  }

  /** Another page or panel is shown. */
  void turned() {
    if (side.isMade()) {
      side.get().turned();
    }
  }

  /** Nobody looks at any of them any more. */
  void close() {
    closed = true;
    if (side.isMade()) {
      side.get().close();
    }
  }
}
