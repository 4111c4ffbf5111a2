package lanewarden.kiosk.rulebook;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import lanewarden.rules.Division;
import lanewarden.station.RuleDraft;
import lanewarden.station.RuleFault;
import lanewarden.station.RuleKey;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;

/** A rule book being written: which section is open, and what was done; on the screen's thread. */
public final class RuleBookViewModel {

  /** The section that says what event it is. */
  public static final int EVENT = 0;

  /** What was typed while it was saved. */
  private record Typed(int section, RuleKey key, String text) {}

  private final List<Typed> typedMeanwhile = new ArrayList<>();
  private final Clock clock;
  private final Executor work;
  private final Executor screen;
  private final ReadOnlyObjectWrapper<RuleDraft> draft;
  private final ReadOnlyIntegerWrapper section = new ReadOnlyIntegerWrapper(EVENT);
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final ReadOnlyObjectWrapper<Optional<RuleDraft.Writing>> saved =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * @param clock gives the file that is kept of each saving its time
   * @param work saves, off the screen's thread
   * @param screen runs tasks on the screen's thread
   */
  public RuleBookViewModel(RuleDraft draft, Clock clock, Executor work, Executor screen) {
    this.draft = new ReadOnlyObjectWrapper<>(draft);
    this.clock = clock;
    this.work = work;
    this.screen = screen;
    section.set(Math.min(1, draft.divisions()));
  }

  /** The rule book as it is now. */
  public ReadOnlyObjectProperty<RuleDraft> draft() {
    return draft.getReadOnlyProperty();
  }

  /** The section that is open: {@link #EVENT}, or a division counted from 1. */
  public ReadOnlyIntegerProperty section() {
    return section.getReadOnlyProperty();
  }

  /** Whether it is being saved: what is typed meanwhile is taken in when that has ended. */
  public BooleanProperty busy() {
    return busy;
  }

  /** What was written when it was saved, until something is changed. */
  public ReadOnlyObjectProperty<Optional<RuleDraft.Writing>> saved() {
    return saved.getReadOnlyProperty();
  }

  /** Why something was not done. */
  public ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** Opens a section. */
  public void open(int other) {
    section.set(Math.max(EVENT, Math.min(other, draft.get().divisions())));
  }

  /** The division that is open, where nothing is wrong in it. */
  public Optional<Division> division() {
    return isDivision() ? draft.get().division(section.get()) : Optional.empty();
  }

  /** Whether a division is open, not the event. */
  public boolean isDivision() {
    return section.get() != EVENT;
  }

  /** What stands for a key of the open section. */
  public String text(RuleKey key) {
    return draft.get().text(section.get(), key);
  }

  /** Types something for a key of the open section. */
  public void type(RuleKey key, String typed) {
    if (busy.get()) {
      typedMeanwhile.add(new Typed(section.get(), key, typed));
    } else if (!typed.equals(text(key))) {
      change(draft.get().with(section.get(), key, typed));
    }
  }

  /** Whether a field is to be shown: it means something here, or something stands in it. */
  public boolean shows(RuleKey key) {
    return isDivision()
        ? key.applies(this::text) || !text(key).isBlank()
        : key == RuleKey.NAME || key == RuleKey.EDITION;
  }

  /** The faults of the open section. */
  public List<RuleFault> faults() {
    return draft.get().faults(section.get());
  }

  /** Those of its faults that are about no field of the form. */
  public List<RuleFault> faultsOfNoField() {
    return faults().stream()
        .filter(fault -> Stream.of(RuleKey.values()).noneMatch(k -> fault.isAbout(k) && shows(k)))
        .toList();
  }

  /** Takes out a key that no rule book has. */
  public void takeOut(String key) {
    rewrite(d -> d.without(section.get(), key), section.get());
  }

  /** Adds a division and opens it. */
  public void add() {
    rewrite(RuleDraft::add, draft.get().divisions() + 1);
  }

  /** Copies the open division and opens the copy. */
  public void copy() {
    if (isDivision()) {
      rewrite(d -> d.copy(section.get()), section.get() + 1);
    }
  }

  /** Removes the open division. */
  public void remove() {
    if (isDivision()) {
      rewrite(d -> d.remove(section.get()), section.get());
    }
  }

  /** Saves it where it belongs. */
  public void save() {
    saveAnd(() -> {});
  }

  /**
   * Saves it where it belongs.
   *
   * @param then runs when all is saved, not where it could not be or something was typed meanwhile
   */
  public void saveAnd(Runnable then) {
    keep(
        d -> d.save(clock),
        () -> {
          if (!draft.get().isChanged()) {
            then.run();
          }
        },
        missed -> trouble.set(Optional.of(missed)));
  }

  /**
   * Saves it under another name, beside the file where no folder is named; not while {@link #busy}.
   *
   * @param done runs when it is saved
   * @param missed takes why it was not
   */
  public void saveAs(String name, Runnable done, Consumer<Trouble> missed) {
    keep(d -> d.saveAs(d.file().resolveSibling(name.strip()), clock), done, missed);
  }

  /** Opens the draft that lies beside the rule book. */
  public void openOtherDraft() {
    Optional<Path> other = draft.get().otherDraft();
    if (other.isPresent() && !draft.get().isChanged()) {
      rewrite(d -> RuleDraft.open(other.get()), section.get());
    }
  }

  @FunctionalInterface
  private interface Step {
    RuleDraft from(RuleDraft draft) throws StationException;
  }

  private void rewrite(Step step, int thenOpen) {
    if (busy.get()) {
      return;
    }
    try {
      RuleDraft after = step.from(draft.get());
      section.set(Math.max(EVENT, Math.min(thenOpen, section.get())));
      change(after);
      open(thenOpen);
    } catch (StationException e) {
      trouble.set(Optional.of(e.trouble()));
    }
  }

  private void change(RuleDraft to) {
    saved.set(Optional.empty());
    trouble.set(Optional.empty());
    section.set(Math.min(section.get(), to.divisions()));
    draft.set(to);
  }

  private void keep(Step step, Runnable done, Consumer<Trouble> missed) {
    if (busy.get()) {
      return;
    }
    busy.set(true);
    RuleDraft now = draft.get();
    work.execute(
        () -> {
          Runnable reply = kept(step, now, done, missed);
          screen.execute(
              () -> {
                busy.set(false);
                reply.run();
              });
        });
  }

  private Runnable kept(Step step, RuleDraft now, Runnable done, Consumer<Trouble> missed) {
    try {
      RuleDraft after = step.from(now);
      return () -> {
        boolean unsaved = takeIn(after);
        saved.set(unsaved ? Optional.empty() : Optional.of(after.writing()));
        done.run();
      };
    } catch (StationException | RuntimeException | Error e) {
      Trouble why = Trouble.of(e);
      return () -> {
        takeIn(now);
        missed.accept(why);
      };
    }
  }

  /** Puts a draft in place with what was typed while it was saved; says whether anything was. */
  private boolean takeIn(RuleDraft after) {
    RuleDraft with = after;
    for (Typed one : typedMeanwhile) {
      with = with.with(one.section(), one.key(), one.text());
    }
    boolean any = !typedMeanwhile.isEmpty();
    typedMeanwhile.clear();
    change(with);
    return any;
  }
}
