package lanewarden.kiosk.instrument;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import lanewarden.kiosk.instrument.WirePage.Finding;
import lanewarden.kiosk.instrument.WirePage.Line;
import lanewarden.kiosk.instrument.WirePage.Said;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Overheard;
import lanewarden.station.Trouble;
import lanewarden.station.WireView;

/** What comes over the instrument's wire, while somebody looks; used on the screen's thread. */
public final class WireViewModel {

  /** Where what came is asked for. */
  @FunctionalInterface
  public interface Wire {
    /**
     * Asks for it, to be answered on the screen's thread.
     *
     * @param answer takes what came
     * @param missed takes what kept it from being answered
     */
    void ask(Consumer<WireView> answer, Consumer<Trouble> missed);
  }

  /** The cause comes before its consequences, so the rest can wait until these are mended. */
  static final int MOST_FINDINGS = 3;

  private final Wire wire;
  private final String counted;
  private final Texts texts;
  private final DateTimeFormatter clock;
  private final ObjectProperty<WirePage> page;
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());
  private boolean watched;
  private boolean asking;
  private boolean moreCame;

  /**
   * @param wire is asked
   * @param counted the key of the text that says how much came since when
   * @param zone in which times are shown
   */
  public WireViewModel(Wire wire, String counted, Texts texts, ZoneId zone) {
    this.wire = wire;
    this.counted = counted;
    this.texts = texts;
    clock = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT).withZone(zone);
    page = new SimpleObjectProperty<>(page(new WireView("", List.of(), 0, 0, List.of())));
  }

  /** What is shown. */
  public ObjectProperty<WirePage> page() {
    return page;
  }

  /** Why it is not of this moment. */
  public ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** Whether somebody looks; nothing is asked for while nobody does. */
  public void watch(boolean looked) {
    watched = looked;
    changed();
  }

  /** Something may have come. */
  public void changed() {
    if (!watched) {
      return;
    }
    if (asking) {
      // However fast lines come, one question at a time is on its way
      moreCame = true;
      return;
    }
    asking = true;
    wire.ask(this::show, this::missed);
  }

  private void show(WireView view) {
    trouble.set(Optional.empty());
    page.set(page(view));
    answered();
  }

  private void missed(Trouble missed) {
    trouble.set(Optional.of(missed));
    answered();
  }

  private void answered() {
    asking = false;
    if (moreCame) {
      moreCame = false;
      changed();
    }
  }

  private WirePage page(WireView view) {
    boolean isHeard = !view.instrument().isEmpty();
    return new WirePage(
        isHeard ? texts.of("wire.title", view.instrument()) : texts.of("wire.opening"),
        texts.of(counted, view.readings(), view.refused(), view.newestFirst().size()),
        verdict(view),
        view.misfits().stream()
            .limit(isOver(view) ? Long.MAX_VALUE : MOST_FINDINGS)
            .map(misfit -> new Finding(misfit.key(), misfit.words()))
            .toList(),
        view.newestFirst().stream().map(this::line).toList(),
        texts.of(isHeard ? "wire.nothing" : "wire.opening.words"));
  }

  /** At the end of the trial everything is said. */
  private static boolean isOver(WireView view) {
    return view.newestFirst().stream()
        .findFirst()
        .filter(last -> last.kind() == Overheard.Kind.LINK_CLOSED)
        .isPresent();
  }

  private Said verdict(WireView view) {
    if (view.readings() + view.refused() == 0) {
      return new Said(Sign.RUNNING, texts.of("wire.nothing"));
    }
    return view.misfits().isEmpty()
        ? new Said(Sign.WITHIN, texts.of("wire.fits"))
        : new Said(Sign.OVER, texts.of("wire.misfits", view.misfits().size()));
  }

  private Line line(Overheard heard) {
    return new Line(
        sign(heard.kind()),
        clock.format(heard.at()),
        word(heard.kind()),
        heard.speed().map(Object::toString).orElse(""),
        heard.raw(),
        heard.words());
  }

  private static Sign sign(Overheard.Kind kind) {
    return switch (kind) {
      case READING -> Sign.HEARD;
      case REFUSED -> Sign.NOT_ADMITTED;
      case LINK_UP -> Sign.LINK_UP;
      case LINK_LOST -> Sign.LINK_LOST;
      case LINK_CLOSED -> Sign.LINK_CLOSED;
    };
  }

  private String word(Overheard.Kind kind) {
    return switch (kind) {
      case READING -> texts.of("wire.reading");
      case REFUSED -> texts.of("wire.refused");
      case LINK_UP -> texts.of("wire.up");
      case LINK_LOST -> texts.of("wire.lost");
      case LINK_CLOSED -> texts.of("wire.closed");
    };
  }
}
