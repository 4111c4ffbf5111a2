package lanewarden.kiosk.instrument;

import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Listening;
import lanewarden.station.Overheard;
import lanewarden.station.Packed;
import lanewarden.station.Surroundings;
import lanewarden.station.Trouble;
import lanewarden.station.WireView;

/**
 * An instrument, or a capture, that is only listened to: no station has it, and nothing is signed.
 * Used on the screen's thread.
 */
public final class ListeningViewModel {
  private static final WireView NOTHING = new WireView("", List.of(), 0, 0, List.of());

  private final Surroundings here;
  private final Places places;
  private final SideTable table;
  private final Texts texts;
  private final WireViewModel wire;
  private final ReadOnlyBooleanWrapper on = new ReadOnlyBooleanWrapper();
  private Optional<Listening> listening = Optional.empty();
  private Optional<Callable<Listening>> opening = Optional.empty();

  /**
   * Nothing is listened to yet.
   *
   * @param places where files lie
   * @param table where ports and files are opened
   * @param zone in which times are shown
   */
  public ListeningViewModel(
      Surroundings here, Places places, SideTable table, Texts texts, ZoneId zone) {
    this.here = here;
    this.places = places;
    this.table = table;
    this.texts = texts;
    wire =
        new WireViewModel(
            (answer, missed) -> answer.accept(listening.map(Listening::wire).orElse(NOTHING)),
            "listen.counted",
            texts,
            zone);
  }

  /** What came since listening began. */
  WireViewModel wire() {
    return wire;
  }

  /** Whether something is listened to now. */
  ReadOnlyBooleanProperty on() {
    return on.getReadOnlyProperty();
  }

  /** Looks which serial ports are here. */
  void lookForPorts(Consumer<List<String>> found) {
    table.ask(Listening::ports, found, this::missed);
  }

  /** The sentence profiles that the program carries, by their names. */
  List<String> profiles() {
    return Packed.profiles().stream().map(Packed.Profile::file).toList();
  }

  /**
   * Listens to a serial port, which may be missing yet.
   *
   * @param profile a file, or one that the program carries
   */
  void toPort(String port, String profile, Runnable taken, Consumer<Trouble> refused) {
    begin(() -> Listening.toPort(port, profile(profile), here), taken, refused);
  }

  /**
   * Plays a capture.
   *
   * @param profile a file, or one that the program carries
   * @param pace 1 waits as long as the capture did; blank or 0 not at all
   */
  void toCapture(
      String capture, String profile, String pace, Runnable taken, Consumer<Trouble> refused) {
    String number = texts.typed(pace);
    begin(
        () ->
            Listening.toCapture(
                places.there(capture), profile(profile), Listening.pace(number), here),
        taken,
        refused);
  }

  private Path profile(String typed) throws NoSuchFileException {
    Path file = places.at(typed);
    // One that the program carries is meant by its name alone, unless a file is called so
    return profiles().contains(typed) && !file.toFile().exists() ? Path.of(typed) : file;
  }

  /** Begins anew with what was listened to last. */
  void again() {
    opening.ifPresent(last -> begin(last, () -> {}, this::missed));
  }

  private void begin(Callable<Listening> open, Runnable taken, Consumer<Trouble> refused) {
    end();
    table.ask(
        open,
        opened -> {
          opening = Optional.of(open);
          listening = Optional.of(opened);
          wire.trouble().set(Optional.empty());
          on.set(true);
          opened.start(ear(opened));
          taken.run();
          wire.changed();
        },
        refused);
  }

  /** However fast it speaks, one look at a time is on its way to the screen's thread. */
  private Consumer<Overheard> ear(Listening opened) {
    AtomicBoolean told = new AtomicBoolean();
    return heard -> {
      if (heard.kind() == Overheard.Kind.LINK_CLOSED) {
        table.screen().execute(() -> closed(opened));
      } else if (told.compareAndSet(false, true)) {
        table
            .screen()
            .execute(
                () -> {
                  told.set(false);
                  wire.changed();
                });
      }
    };
  }

  private void closed(Listening ended) {
    if (listening.filter(now -> now == ended).isPresent()) {
      on.set(false);
      wire.changed();
    }
  }

  /** Ends listening; what was heard stays to be looked at, and the port is free once that is so. */
  public void end() {
    if (on.get()) {
      Listening ending = listening.orElseThrow();
      table.ask(
          () -> {
            ending.close();
            return ending;
          },
          this::closed,
          this::missed);
    }
  }

  private void missed(Trouble why) {
    wire.trouble().set(Optional.of(why));
  }
}
