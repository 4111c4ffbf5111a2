package lanewarden.kiosk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.stage.Stage;
import lanewarden.audit.slip.Slips;
import lanewarden.kiosk.desk.Printing;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Theme;
import lanewarden.kiosk.protest.SlipMaker;
import lanewarden.kiosk.sound.Cue;
import lanewarden.kiosk.sound.Loudspeaker;
import lanewarden.station.CheckInLine;
import lanewarden.station.EventFolder;
import lanewarden.station.NewEvent;
import lanewarden.station.SignedPapers;
import lanewarden.station.Station;
import lanewarden.station.StationSettings;
import lanewarden.station.Surroundings;

/** A large event at the end of its day: a long roster, and a ledger that a simulated line wrote. */
final class FullDay {
  static final int COMPETITORS = 2_000;

  private static final String[] FIRST = {
    "Ilse", "Noor", "Ansel", "Maren", "Piet", "Wanda", "Tamsin", "Odo", "Brid", "Cato"
  };
  private static final String[] LAST = {
    "Marrowby", "Fenwick", "Quillfeather", "Ashgrove", "Thornbury", "Larkmoor", "Heddle", "Vane"
  };

  private FullDay() {}

  static Surroundings here() {
    return new Surroundings(
        Clock.systemUTC(), System::nanoTime, new SecureRandom(), "Lanewarden under test");
  }

  /** An event of 2,000 competitors, of whom nobody was called yet, with the simulator. */
  static EventFolder morning() throws Exception {
    Path path = Files.createTempDirectory("full-day").resolve("event");
    return new NewEvent(
            new NewEvent.Source(
                "rule-book.toml",
                Files.readAllBytes(Path.of("src/test/resources/lanewarden/kiosk/rule-book.toml"))),
            new NewEvent.Source("roster.csv", roster().getBytes(StandardCharsets.UTF_8)),
            new NewEvent.Source(
                "gate-timer.toml", Files.readAllBytes(Path.of("config/profiles/gate-timer.toml"))),
            "Station 1",
            StationSettings.Kind.SIMULATOR,
            "",
            new NewEvent.Person("Organizer", BoothEvent.ORGANIZER_PASSPHRASE.toCharArray()),
            List.of(new NewEvent.Person(Booth.OFFICIAL, Booth.PASSPHRASE.toCharArray())))
        .make(path, Clock.systemUTC(), System::nanoTime, new SecureRandom());
  }

  private static String roster() {
    StringBuilder csv = new StringBuilder("bib,name,division,arrow-mass,draw-weight\n");
    for (int i = 0; i < COMPETITORS; i++) {
      csv.append(
          String.format(
              Locale.ROOT,
              "%d,%s %s-%d,OC,%d gr,%d lbf%n",
              1000 + i,
              FIRST[i % FIRST.length],
              LAST[i / FIRST.length % LAST.length],
              i,
              340 + i % 60,
              50 + i % 15));
    }
    return csv.toString();
  }

  /** Calls one competitor after the other until the ledger has so many entries. */
  static void shoot(EventFolder event, int entries) throws Exception {
    try (CheckInLine line = CheckInLine.open(event, Optional.empty(), 0, here())) {
      Station station = line.station();
      station.signIn(Booth.OFFICIAL, Booth.PASSPHRASE.toCharArray());
      for (int i = 0; i < COMPETITORS && station.view().head().sequence() < entries; i++) {
        station.call("" + (1000 + i));
        line.awaitArrows(Duration.ofSeconds(10));
        if (station.view().check().isPresent()) {
          if (station.view().check().get().outcome().isPresent()) {
            station.next();
          } else {
            station.endCheck("the archer left the line");
          }
        }
      }
      station.signOut();
    }
  }

  /** Deletes an event of this kind with the folder it was made in. */
  static void delete(EventFolder event) throws IOException {
    Path folder = event.path().toAbsolutePath().getParent();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** Its screens, the official's and the board, in windows of their own. */
  static Front shown(CheckInLine line, EventFolder event, Front.Threads threads) {
    Front front =
        new Front(
            Post.of(line.station(), event, new Training(false, Optional.empty())),
            new Makers(
                Booth.REPORTS,
                SlipMaker.of(new Slips(here().clock(), SignedPapers::of)),
                Printing.onSystem(),
                BoothEvent.CHECK_UP),
            new Front.Windows() {
              @Override
              public Optional<Chooser> chooser() {
                return Optional.empty();
              }

              @Override
              public void turnBoard() {
                throw new IllegalStateException("nobody asked for the board");
              }

              @Override
              public void speak(Language language) {
                throw new IllegalStateException("nobody asked for another language");
              }

              @Override
              public void turnFull() {
                throw new IllegalStateException("nobody asked for the full screen");
              }

              @Override
              public boolean isFull() {
                return false;
              }

              @Override
              public void play(Cue cue) {
                // A day of sounds would be heard by nobody
              }

              @Override
              public Loudspeaker speaker() {
                throw new IllegalStateException("nobody asked for sounds");
              }

              @Override
              public void end() {
                throw new IllegalStateException("nobody left");
              }
            },
            threads,
            new Appearance(Theme.DAY, Language.ENGLISH));
    for (var scene : List.of(front.official(), front.board())) {
      Stage stage = new Stage();
      stage.setScene(scene);
      stage.setWidth(1280);
      stage.setHeight(800);
      stage.show();
    }
    return front;
  }
}
