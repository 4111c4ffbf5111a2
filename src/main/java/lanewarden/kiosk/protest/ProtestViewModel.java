package lanewarden.kiosk.protest;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import lanewarden.journal.Correction;
import lanewarden.journal.Protest;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.look.Texts;
import lanewarden.ledger.Head;
import lanewarden.station.Dossier;
import lanewarden.station.KeyOffice;
import lanewarden.station.LineView;
import lanewarden.station.Protests;
import lanewarden.station.Station;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;
import org.jspecify.annotations.Nullable;

/**
 * The docket, the checks that are looked for, and the one that is looked into; used on the screen's
 * thread.
 */
public final class ProtestViewModel {
  /** As many as can be looked through. */
  private static final int MOST_FOUND = 40;

  /** Something that is signed about a check. */
  @FunctionalInterface
  public interface Deed {
    /** Runs off the screen's thread; returns the check that it was about. */
    long on(Protests protests) throws StationException;
  }

  /**
   * Somebody who signs at the table.
   *
   * @param passphrase is wiped
   */
  @SuppressWarnings("ArrayRecordComponent") // two are never compared
  public record Signature(String name, char[] passphrase) {}

  private final Desk desk;
  private final DocketWords words;
  private final Texts texts;
  private final StringProperty typed = new SimpleStringProperty("");
  private final ObservableList<DocketLine> lines = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<DocketLine>> chosen =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<DossierPage>> page =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Trouble>> notice =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObservableList<KeyOffice.Official> signers = FXCollections.observableArrayList();
  private Optional<Dossier> dossier = Optional.empty();
  private Optional<String> official = Optional.empty();
  private Optional<Long> sought = Optional.empty();
  private @Nullable Head seen;
  private boolean watched;
  private final BooleanProperty goesOn = new SimpleBooleanProperty();

  /**
   * @param zone in which times are shown
   */
  public ProtestViewModel(Desk desk, Texts texts, ZoneId zone) {
    this.desk = desk;
    this.texts = texts;
    this.words = new DocketWords(texts, zone);
    typed.addListener((all, before, now) -> list());
  }

  /** Takes the next state of the line: what is shown follows the ledger while it is looked at. */
  public void take(LineView view) {
    official = view.official();
    goesOn.set(view.goesOn());
    boolean changed = !view.head().equals(seen);
    seen = view.head();
    if (watched && changed) {
      refresh();
    }
  }

  /** Whether the line goes on meanwhile; not as long as nothing is known of it. */
  BooleanProperty goesOn() {
    return goesOn;
  }

  /**
   * Begins to look.
   *
   * @param check to look into at once, as the one at the line
   */
  public void open(Optional<Long> check) {
    watched = true;
    typed.set("");
    notice.set(Optional.empty());
    chosen.set(Optional.empty());
    sought = check;
    desk.ask(station -> station.proceedings().signers(), signers::setAll, this::missed);
    refresh();
  }

  /** Nobody looks any more. */
  public void close() {
    watched = false;
  }

  private void refresh() {
    list();
    look();
  }

  private void list() {
    String text = typed.get();
    desk.ask(
        station ->
            text.isBlank()
                ? words.docket(station.records().docket())
                : station.records().search(text, MOST_FOUND).stream().map(words::found).toList(),
        found -> {
          // An answer that comes after the text went on is of no use
          if (text.equals(typed.get())) {
            show(found);
          }
        },
        this::missed);
  }

  private void show(List<DocketLine> found) {
    if (!found.equals(lines)) {
      lines.setAll(found);
    }
    Optional<DocketLine> before = chosen.get();
    Optional<DocketLine> again =
        found.stream()
            .filter(line -> before.filter(line::isSame).isPresent())
            .findFirst()
            .or(() -> found.stream().filter(this::leadsToSought).findFirst());
    if (again.isPresent()) {
      chosen.set(again);
    } else if (sought.isEmpty() || !typed.get().isBlank()) {
      choose(found.isEmpty() ? Optional.empty() : Optional.of(found.get(0)));
    }
  }

  private boolean leadsToSought(DocketLine line) {
    return chosen.get().isEmpty() && sought.equals(Optional.of(line.check()));
  }

  /** Picks a line, and looks into its check. */
  public void choose(Optional<DocketLine> line) {
    if (!line.equals(chosen.get())) {
      chosen.set(line);
      line.ifPresent(
          picked -> {
            sought = Optional.of(picked.check());
            look();
          });
    }
  }

  /** Picks the line before (-1) or after (1) the one picked now. */
  public void choose(int step) {
    if (lines.isEmpty()) {
      return;
    }
    int at = chosen.get().map(lines::indexOf).orElse(-1);
    int next = at < 0 ? 0 : Math.max(0, Math.min(lines.size() - 1, at + step));
    choose(Optional.of(lines.get(next)));
  }

  private void look() {
    if (sought.isEmpty()) {
      take(Optional.empty(), sought);
      return;
    }
    Optional<Long> asked = sought;
    desk.ask(
        station -> station.records().of(asked.get()), found -> take(found, asked), this::missed);
  }

  private void take(Optional<Dossier> found, Optional<Long> asked) {
    if (asked.equals(sought)) {
      dossier = found;
      // Of a recheck it is that of the check in dispute
      sought = found.map(one -> one.check().check().number());
      page.set(found.map(one -> DossierPage.of(one, words, texts)));
      if (chosen.get().isEmpty()) {
        chosen.set(lines.stream().filter(this::leadsToSought).findFirst());
      }
    }
  }

  /** Whether the ledger is still being verified, so that nothing is known of it. */
  ReadOnlyBooleanProperty opening() {
    return desk.opening();
  }

  /** The text that is looked for; blank for the docket. */
  public StringProperty typed() {
    return typed;
  }

  /** The docket, or the checks found. */
  public ObservableList<DocketLine> lines() {
    return lines;
  }

  /** The line that is picked. */
  public ObjectProperty<Optional<DocketLine>> chosen() {
    return chosen;
  }

  /** The check that is looked into. */
  public ObjectProperty<Optional<DossierPage>> page() {
    return page;
  }

  /** What kept the last act from being done. */
  public ObjectProperty<Optional<Trouble>> notice() {
    return notice;
  }

  /** Who may sign here. */
  public List<KeyOffice.Official> signers() {
    return List.copyOf(signers);
  }

  /** Who is on duty, and signs what takes no judge and no second person. */
  public Optional<String> official() {
    return official;
  }

  /** The check that is looked into, with all that stands beside it. */
  public Optional<Dossier> dossier() {
    return dossier;
  }

  /** The protest that is meant: the one picked, else the last that waits. */
  public Optional<Protest> protest() {
    Optional<Long> picked = chosen.get().flatMap(DocketLine::protest);
    return dossier
        .map(Dossier::protests)
        .flatMap(
            all ->
                all.stream()
                    .filter(Protest::isOpen)
                    .filter(p -> picked.isEmpty() || picked.get() == p.number())
                    .reduce((earlier, later) -> later));
  }

  /** The correction that is meant: the one picked, else the last that waits. */
  public Optional<Correction> correction() {
    Optional<Long> picked = chosen.get().flatMap(DocketLine::correction);
    return dossier
        .map(Dossier::corrections)
        .flatMap(
            all ->
                all.stream()
                    .filter(Correction::isOpen)
                    .filter(c -> picked.isEmpty() || picked.get() == c.number())
                    .reduce((earlier, later) -> later));
  }

  /**
   * Has something signed.
   *
   * @param by who signs; empty for whoever is on duty
   */
  void sign(Optional<Signature> by, Deed deed, Runnable done, Consumer<Trouble> missed) {
    notice.set(Optional.empty());
    desk.ask(
        station -> deed.on(protests(station, by)),
        check -> {
          typed.set("");
          chosen.set(Optional.empty());
          sought = Optional.of(check);
          refresh();
          done.run();
        },
        missed);
  }

  private static Protests protests(Station station, Optional<Signature> by)
      throws StationException {
    return by.isPresent()
        ? station.protests(by.get().name(), by.get().passphrase())
        : station.protests();
  }

  /** Calls the archer of the protest to the line. */
  void recheck(Runnable done) {
    notice.set(Optional.empty());
    protest()
        .ifPresent(
            protest -> desk.act(station -> station.recheck(protest.number()), done, this::missed));
  }

  private void missed(Trouble trouble) {
    notice.set(Optional.of(trouble));
  }
}
