package lanewarden.chronograph;

import java.time.Clock;
import java.util.function.Consumer;

/**
 * An instrument on no line at all: somebody reads its display and types what it shows. It says once
 * that its link is {@link LinkState#CLOSED}, and never anything else.
 */
public final class ReadByEye implements Instrument {
  private static final String NAME = "Instrument read by eye";
  private static final String NO_LINE = "NO-LINE";

  private final Clock clock;
  private final Worker worker = new Worker(NAME);

  /**
   * @param clock gives the time at which the link was found closed
   */
  public ReadByEye(Clock clock) {
    this.clock = clock;
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Source source() {
    return Source.TYPED;
  }

  @Override
  public void start(Consumer<Signal> sink) {
    Outlet outlet = new Outlet(sink, clock);
    worker.start(
        () ->
            outlet.link(
                LinkState.CLOSED,
                NAME
                    + ": no line leads to it. Type each reading in from its display. ("
                    + NO_LINE
                    + ")"));
  }

  @Override
  public void close() {
    worker.end();
  }
}
