package lanewarden.kiosk.line;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import lanewarden.kiosk.desk.Desk;
import lanewarden.station.Grounds;
import lanewarden.station.SetUpText;
import lanewarden.station.Station;
import lanewarden.station.Trouble;
import org.jspecify.annotations.Nullable;

/** The check-in line between the keys and the station; used on the screen's thread. */
public final class LineViewModel {

  /** How many matches are listed while typing. */
  static final int MATCHES = 4;

  private static final int NONE = -1;

  private final Desk desk;
  private final ObjectProperty<@Nullable LinePage> page = new SimpleObjectProperty<>();
  private final ProvingViewModel proving;
  private final ObjectProperty<Optional<Trouble>> notice =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<CheckPage>> leftLast =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Grounds>> grounds =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<String>> unknown =
      new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty typed = new SimpleStringProperty("");
  private final ObservableList<Match> matches = FXCollections.observableArrayList();
  private final IntegerProperty chosen = new SimpleIntegerProperty(NONE);

  /** A line of which nothing is known yet. */
  public LineViewModel(Desk desk) {
    this.desk = desk;
    proving = new ProvingViewModel(desk, page);
    typed.addListener((all, before, now) -> look(now));
  }

  /** Takes the next state of the line. */
  public void take(LinePage next) {
    LinePage before = page.get();
    Optional<CheckPage> was = before == null ? Optional.empty() : before.check();
    boolean left = was.isPresent() && !sameCheck(was.get(), next.check());
    if (next.check().isPresent() || next.proving().held()) {
      // What was decided before a hold is in question, and is not shown as if it were not
      leftLast.set(Optional.empty());
    } else if (left) {
      leftLast.set(was);
    }
    page.set(next);
  }

  private static boolean sameCheck(CheckPage was, Optional<CheckPage> now) {
    return now.isPresent() && now.get().number() == was.number();
  }

  /** The line as it is; null until the first state came. */
  public ObjectProperty<@Nullable LinePage> page() {
    return page;
  }

  /** Verifying the instrument, holding the line, lifting a hold. */
  public ProvingViewModel proving() {
    return proving;
  }

  /** Begins a verification, and opens what shows it. */
  void verify(Runnable open) {
    proving.begin(
        () -> {
          dismiss();
          open.run();
        },
        this::missed);
  }

  /** What kept the last act from being done, until the next act or until it is put away. */
  public ObjectProperty<Optional<Trouble>> notice() {
    return notice;
  }

  /** What it takes to call the competitor who was just refused; empty where nothing would help. */
  public ObjectProperty<Optional<Grounds>> grounds() {
    return grounds;
  }

  /** What was typed of somebody who is not on the roster, while that is what was just refused. */
  public ObjectProperty<Optional<String>> unknown() {
    return unknown;
  }

  /** Asks for the codes of the divisions that a late entry can take. */
  void askForDivisions(Consumer<List<String>> answer) {
    desk.ask(station -> station.proceedings().divisions(), answer, this::missed);
  }

  /** Puts somebody on the roster and calls them; the answer goes to the panel that asked. */
  void addLate(String bib, String name, String division, Runnable done, Consumer<Trouble> missed) {
    desk.act(
        station -> station.proceedings().addLate(bib, name, division),
        () -> {
          dismiss();
          done.run();
          call(bib);
        },
        missed);
  }

  /** The text in the field. */
  public StringProperty typed() {
    return typed;
  }

  /** Whom the text may mean. */
  public ObservableList<Match> matches() {
    return matches;
  }

  /** The match that was picked out with the arrow keys; negative if none was. */
  public IntegerProperty chosen() {
    return chosen;
  }

  /** The check that left the line last, while nobody is there. */
  public ObjectProperty<Optional<CheckPage>> leftLast() {
    return leftLast;
  }

  private void look(String text) {
    chosen.set(NONE);
    if (text.isBlank()) {
      matches.clear();
      return;
    }
    desk.ask(
        station ->
            station.search(text, MATCHES).stream()
                .map(c -> new Match(c.bib(), c.name(), c.division()))
                .toList(),
        found -> show(text, found),
        this::missed);
  }

  /** An answer that comes after the text went on is of no use. */
  private void show(String text, List<Match> found) {
    if (text.equals(typed.get())) {
      matches.setAll(found);
    }
  }

  /** Picks out the match before (-1) or after (1) the one picked now. */
  public void choose(int step) {
    if (!matches.isEmpty()) {
      int next = chosen.get() + step;
      chosen.set(Math.max(NONE, Math.min(matches.size() - 1, next)));
    }
  }

  /**
   * The enter key: calls whom the field means; with an empty field sends a decided competitor off.
   *
   * <p>A reader that ends a bib with two line ends must not do two things: an empty enter while
   * something is under way is none.
   */
  public void enter() {
    if (!typed.get().isBlank()) {
      int index = chosen.get();
      call(index >= 0 && index < matches.size() ? matches.get(index).bib() : typed.get());
    } else if (mayGoOn() && desk.pending().get() == 0) {
      next();
    }
  }

  /** Calls a competitor. What was typed comes back if nobody was called. */
  public void call(String bibOrName) {
    String text = typed.get();
    typed.set("");
    desk.act(
        station -> station.call(bibOrName),
        this::done,
        trouble -> {
          if (typed.get().isEmpty()) {
            typed.set(text);
          }
          missed(trouble);
          if (trouble.code().equals(Trouble.NO_SUCH_COMPETITOR)) {
            unknown.set(Optional.of(bibOrName.strip()));
          } else if (trouble.kind() == Trouble.Kind.USAGE) {
            askForGrounds(bibOrName);
          }
        });
  }

  /** Asks whether there are grounds on which whoever was refused could be called. */
  private void askForGrounds(String bibOrName) {
    desk.ask(station -> station.grounds(bibOrName), grounds::set, this::missed);
  }

  /** Calls a competitor on grounds; the answer goes to the panel that asked. */
  public void call(String bib, String because, Runnable done, Consumer<Trouble> missed) {
    desk.act(
        station -> station.call(bib, because),
        () -> {
          dismiss();
          done.run();
        },
        missed);
  }

  /** Sends the decided competitor off the line. */
  public void next() {
    act(Station::next);
  }

  /** Calls the competitor who failed, once more. */
  public void recheck() {
    recheckable().ifPresent(check -> call(check.bib()));
  }

  /** Ticks every condition of the check. */
  public void tickAll() {
    act(station -> station.officiating().tickAll());
  }

  /** Ticks a condition of the check. */
  public void tick(String condition) {
    act(station -> station.officiating().tick(condition));
  }

  /** States bow and arrow; the answer goes to the panel that asked. */
  public void state(SetUpText figures, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.officiating().state(figures), done, missed);
  }

  /** Begins a phase of the event; the answer goes to the panel that asked. */
  public void begin(String phase, String reason, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.proceedings().begin(phase, reason), done, missed);
  }

  /**
   * Stops the line for safety at once.
   *
   * @param open asks why, once it is stopped
   * @param uncover puts away what would hide that it could not be signed
   */
  void stop(Runnable open, Runnable uncover) {
    desk.act(
        station -> station.proceedings().stopLine(""),
        () -> {
          done();
          open.run();
        },
        trouble -> {
          // One that waits to be signed stands on the page already, with what tries it again
          if (!isStanding(trouble)) {
            missed(trouble);
          }
          uncover.run();
        });
  }

  private boolean isStanding(Trouble trouble) {
    LinePage now = page.get();
    return now != null && now.trouble().equals(Optional.of(trouble));
  }

  /** Says why the line is stopped; the answer goes to the panel that asked. */
  public void sayWhyStopped(String reason, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.proceedings().stopLine(reason), done, missed);
  }

  /** Says that the line is clear again; the answer goes to the panel that asked. */
  public void clearLine(Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.proceedings().clearLine(), done, missed);
  }

  /** Whether the line is stopped for safety, and that is signed. */
  public boolean stopped() {
    LinePage now = page.get();
    return now != null && now.stop().isPresent() && !now.stopWaits();
  }

  /** Tries again to write what waits. */
  public void retry() {
    act(Station::retry);
  }

  /** Takes a typed reading; the answer goes to the panel that asked. */
  public void type(String text, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.type(text), done, missed);
  }

  /** Declares a reading void; the answer goes to the panel that asked. */
  public void declareVoid(long reading, String reason, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.officiating().declareVoid(reading, reason), done, missed);
  }

  /** Lets a reading in doubt count; the answer goes to the panel that asked. */
  public void keep(long reading, String reason, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.officiating().keep(reading, reason), done, missed);
  }

  /** Ends the check; the answer goes to the panel that asked. */
  public void endCheck(String reason, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.endCheck(reason), done, missed);
  }

  /** The official leaves; the answer goes to the panel that asked. */
  public void signOut(Runnable done, Consumer<Trouble> missed) {
    desk.act(Station::signOut, done, missed);
  }

  /** The line closes; the answer goes to the panel that asked. */
  public void closeLine(String reason, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.closeLine(reason), done, missed);
  }

  /** Puts the notice and the typed text away. */
  public void dismiss() {
    done();
    typed.set("");
  }

  /** The check at the line. */
  public Optional<CheckPage> check() {
    LinePage now = page.get();
    return now == null ? Optional.empty() : now.check();
  }

  /** Whether the check at the line is decided, and the line clear. */
  public boolean mayGoOn() {
    return !stopped() && check().map(CheckPage::decided).orElse(false);
  }

  /** Whether a reading may be typed. */
  public boolean mayType() {
    return !stopped() && check().map(CheckPage::shooting).orElse(false);
  }

  /** Whether the check may be ended without a verdict. */
  public boolean mayEnd() {
    return check().map(c -> !c.decided()).orElse(false);
  }

  /** Whether a reading may be declared void. */
  public boolean mayVoid() {
    return !stopped() && check().map(CheckPage::hasStanding).orElse(false);
  }

  /** The check whose competitor may be called once more: the one at the line, or that left last. */
  public Optional<CheckPage> recheckable() {
    return check().or(leftLast::get).filter(CheckPage::mayBeRechecked);
  }

  private void act(Desk.Act act) {
    desk.act(act, this::done, this::missed);
  }

  private void done() {
    grounds.set(Optional.empty());
    unknown.set(Optional.empty());
    notice.set(Optional.empty());
  }

  private void missed(Trouble trouble) {
    grounds.set(Optional.empty());
    unknown.set(Optional.empty());
    notice.set(Optional.of(trouble));
  }
}
