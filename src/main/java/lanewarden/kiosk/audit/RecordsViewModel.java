package lanewarden.kiosk.audit;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.audit.seal.Seal;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.form.OrganizersKey;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.DueDraw;
import lanewarden.station.EventFolder;
import lanewarden.station.KeyOffice;
import lanewarden.station.LineView;
import lanewarden.station.Trouble;

/**
 * What is done with the records of the event that takes its station; used on the screen's thread.
 */
public final class RecordsViewModel {
  private final LedgerViewModel ledger;
  private final Desk desk;
  private final EventFolder folder;
  private final SecureRandom random;
  private final Texts texts;
  private final LedgerWords words;
  private final ErrandViewModel errand;
  private final BooleanProperty onDuty = new SimpleBooleanProperty();
  private final StringProperty own = new SimpleStringProperty("");
  private final BooleanProperty sealed = new SimpleBooleanProperty();

  /**
   * @param ledger what is done with the ledger alone
   * @param random for keys
   */
  public RecordsViewModel(
      LedgerViewModel ledger, Desk desk, EventFolder folder, SecureRandom random, Texts texts) {
    this.ledger = ledger;
    this.desk = desk;
    this.folder = folder;
    this.random = random;
    this.texts = texts;
    words = ledger.words();
    errand = ledger.errand();
  }

  /** Takes the next state of the line. */
  public void take(LineView view) {
    own.set(texts.of("records.own", view.station(), view.head().shortForm()));
    onDuty.set(view.official().isPresent());
    errand.tellOfLine(view.goesOn());
  }

  /** Begins to look; a key may have come or gone since. */
  public void open() {
    ledger.open();
    look();
  }

  private void look() {
    sealed.set(Files.exists(folder.reportSeal()));
  }

  /** What is done with the ledger alone. */
  LedgerViewModel ledger() {
    return ledger;
  }

  /** The own station with its ledger's head, to be given to another station. */
  StringProperty own() {
    return own;
  }

  /** Whether an official is on duty, who signs. */
  BooleanProperty onDuty() {
    return onDuty;
  }

  /** Whether the event has the key that seals reports. */
  BooleanProperty sealed() {
    return sealed;
  }

  /** Signs another station's head. */
  void witness(String station, String seen, Runnable done, Consumer<Trouble> missed) {
    desk.ask(
        here -> here.proceedings().witness(station, seen),
        entry ->
            end(
                "records.witness",
                new Ending(
                    true,
                    texts.of("records.witnessed", seen, station),
                    new Ending.Lines()
                        .good(texts.of("records.told.witnessed", entry))
                        .fact(own.get())
                        .all()),
                done),
        missed);
  }

  /** Asks for the draws that are due; where none is, that is told instead. */
  void askForDraws(Consumer<List<DueDraw>> some) {
    desk.ask(
        here -> here.proceedings().dueDraws(),
        due -> {
          if (due.isEmpty()) {
            errand.end(
                texts.of("records.draw"),
                new Ending(true, texts.of("records.draw.none"), List.of()));
          } else {
            some.accept(due);
          }
        },
        trouble ->
            errand.end(
                texts.of("records.draw"),
                new Ending(false, texts.of("records.missed"), List.of(), Optional.of(trouble))));
  }

  /** Draws those of a division who are to be checked. */
  void draw(String division, String digits, Runnable done, Consumer<Trouble> missed) {
    desk.ask(
        here -> here.proceedings().draw(division, digits),
        drawn -> end("records.draw", words.drawn(drawn), done),
        missed);
  }

  /** Makes the key that seals reports; the line goes on until the organizer signs it. */
  void makeSeal(OrganizersKey.Signature organizer, Runnable done, Consumer<Trouble> missed) {
    desk.ask(
        here -> here.keyOffice(random),
        office ->
            errand.ask(
                () -> sealMade(office, organizer),
                ending -> {
                  look();
                  end("records.seal", ending, done);
                },
                missed),
        missed);
  }

  private Ending sealMade(KeyOffice office, OrganizersKey.Signature organizer) throws Exception {
    char[] again = organizer.passphrase();
    try {
      Path made = office.makeReportSeal(organizer.key(), organizer.passphrase());
      return new Ending(
          true,
          texts.of("records.sealed"),
          new Ending.Lines()
              .fact(texts.of("records.told.key", made.toAbsolutePath()))
              .fact(texts.of("records.told.seal", Seal.open(made, again).fingerprint()))
              .all());
    } finally {
      Arrays.fill(again, '\0');
    }
  }

  private void end(String name, Ending ending, Runnable done) {
    errand.end(texts.of(name), ending);
    done.run();
  }
}
