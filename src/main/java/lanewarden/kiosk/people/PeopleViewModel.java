package lanewarden.kiosk.people;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.form.OrganizersKey;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.KeyOffice;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;

/** The officials of the event, and what the organizer does with their keys. */
public final class PeopleViewModel {

  /** Something that the organizer signs. */
  @FunctionalInterface
  interface Act {
    /** Runs off the screen's thread. */
    void on(KeyOffice office, KeyOffice.Organizer organizer) throws StationException;
  }

  private final Desk desk;
  private final SecureRandom random;
  private final Texts texts;
  private final ObservableList<KeyOffice.Official> people = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<KeyOffice.Official>> chosen =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Trouble>> notice =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * @param random for keys and seals
   */
  public PeopleViewModel(Desk desk, SecureRandom random, Texts texts) {
    this.desk = desk;
    this.random = random;
    this.texts = texts;
  }

  /** Begins to look. */
  public void open() {
    notice.set(Optional.empty());
    refresh();
  }

  private void refresh() {
    desk.ask(
        station -> station.keyOffice(random).officials(),
        this::show,
        missed -> notice.set(Optional.of(missed)));
  }

  private void show(List<KeyOffice.Official> all) {
    Optional<String> before = chosen.get().map(KeyOffice.Official::thumbprint);
    people.setAll(all);
    chosen.set(
        all.stream()
            .filter(one -> before.isEmpty() || before.get().equals(one.thumbprint()))
            .findFirst());
  }

  /** Whether the ledger is still being verified, so that nothing is known of it. */
  ReadOnlyBooleanProperty opening() {
    return desk.opening();
  }

  /** Every key that was ever enrolled. */
  ObservableList<KeyOffice.Official> people() {
    return people;
  }

  /** The one that is picked. */
  ObjectProperty<Optional<KeyOffice.Official>> chosen() {
    return chosen;
  }

  /** Picks the one before (-1) or after (1) the one picked now. */
  void choose(int step) {
    if (!people.isEmpty()) {
      int at = chosen.get().map(people::indexOf).orElse(-1);
      chosen.set(Optional.of(people.get(Math.max(0, Math.min(people.size() - 1, at + step)))));
    }
  }

  /** What kept the list from being read. */
  ObjectProperty<Optional<Trouble>> notice() {
    return notice;
  }

  /** The names of those who may sign. */
  List<String> names() {
    return people.stream()
        .filter(one -> one.suspension().isEmpty())
        .map(KeyOffice.Official::name)
        .distinct()
        .toList();
  }

  /** The one picked, if the key may sign. */
  Optional<KeyOffice.Official> standing() {
    return chosen.get().filter(one -> one.suspension().isEmpty());
  }

  /** The one picked, if suspended and without another key that may sign. */
  Optional<KeyOffice.Official> suspended() {
    return chosen
        .get()
        .filter(one -> one.suspension().isPresent())
        .filter(one -> !names().contains(one.name()));
  }

  /** Has something signed by the organizer. */
  void sign(OrganizersKey.Signature organizer, Act act, Runnable done, Consumer<Trouble> missed) {
    desk.act(
        station -> {
          KeyOffice office = station.keyOffice(random);
          act.on(office, office.organizer(organizer.key(), organizer.passphrase()));
        },
        () -> {
          refresh();
          done.run();
        },
        missed);
  }

  /**
   * Seals an official's key under another passphrase.
   *
   * @param passphrase the one that was good until now; is wiped
   * @param fresh is wiped
   */
  void change(
      String name, char[] passphrase, char[] fresh, Runnable done, Consumer<Trouble> missed) {
    desk.act(
        station -> station.keyOffice(random).changePassphrase(name, passphrase, fresh),
        done,
        missed);
  }

  /**
   * The same for the organizer's key.
   *
   * @param key where it lies; empty for its place in the folder
   * @param passphrase the one that was good until now; is wiped
   * @param fresh is wiped
   */
  void changeOrganizers(
      Optional<Path> key,
      char[] passphrase,
      char[] fresh,
      Runnable done,
      Consumer<Trouble> missed) {
    desk.act(
        station -> station.keyOffice(random).changeOrganizers(key, passphrase, fresh),
        done,
        missed);
  }

  /**
   * Whether a new passphrase was typed the same twice; tells of it if not, and wipes the second.
   */
  boolean isSame(char[] fresh, char[] again, Consumer<Trouble> missed) {
    boolean same = Arrays.equals(fresh, again);
    Arrays.fill(again, '\0');
    if (!same) {
      Arrays.fill(fresh, '\0');
      missed.accept(
          new Trouble(
              texts.of("people.differ.what"),
              texts.of("people.differ.why"),
              texts.of("people.differ.remedy"),
              "PASSPHRASES-DIFFER",
              Trouble.Kind.USAGE));
    }
    return same;
  }
}
