package lanewarden.kiosk.rulebook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.look.Texts;
import lanewarden.quantity.QuantityException;
import lanewarden.rules.Division;
import lanewarden.station.Difference;
import lanewarden.station.Effect;
import lanewarden.station.RuleDraft;
import lanewarden.station.RuleKey;
import lanewarden.station.StationException;
import lanewarden.station.Supposed;
import lanewarden.station.Supposition;
import lanewarden.station.Trouble;
import lanewarden.station.WrittenRules;

/**
 * What the open rule does, under what is supposed, and beside a second rule; on the screen's
 * thread. The curves are made off it; where they come slower than keys, only the latest is shown.
 */
public final class EffectViewModel {

  /** What may stand beside the open rule. */
  public sealed interface Beside {
    /** Nothing. */
    record Nothing() implements Beside {}

    /** The same division as it was saved. */
    record AsSaved() implements Beside {}

    /**
     * Another division.
     *
     * @param division counted from 1
     */
    record Other(int division) implements Beside {}

    /**
     * The division of the same code of another rule book, as that was read.
     *
     * @param book what its file or folder is called
     */
    record OfBook(String book, WrittenRules rules) implements Beside {}
  }

  private final RuleBookViewModel book;
  private final Texts texts;
  private final Executor work;
  private final Executor screen;
  private final Map<Supposition, StringProperty> supposed = new EnumMap<>(Supposition.class);
  private final Map<Supposition, StringProperty> faults = new EnumMap<>(Supposition.class);
  private final ReadOnlyObjectWrapper<Beside> beside =
      new ReadOnlyObjectWrapper<>(new Beside.Nothing());
  private final ReadOnlyObjectWrapper<EffectPage> page =
      new ReadOnlyObjectWrapper<>(
          new EffectPage(Optional.empty(), Optional.empty(), Optional.empty(), ""));
  private int shownSection = -1;
  private long asked;

  /**
   * @param work makes the curves
   * @param screen runs tasks on the screen's thread
   */
  public EffectViewModel(RuleBookViewModel book, Texts texts, Executor work, Executor screen) {
    this.book = book;
    this.texts = texts;
    this.work = work;
    this.screen = screen;
    for (Supposition one : Supposition.values()) {
      StringProperty text = new SimpleStringProperty(one.start());
      text.addListener((all, before, now) -> ask());
      supposed.put(one, text);
      faults.put(one, new SimpleStringProperty(""));
    }
    book.draft().addListener((all, before, now) -> ask());
    book.section().addListener((all, before, now) -> ask());
    ask();
  }

  /** What is typed for a supposition. */
  public StringProperty supposed(Supposition one) {
    return Objects.requireNonNull(supposed.get(one));
  }

  /** What is wrong with it; blank if nothing is. */
  public StringProperty fault(Supposition one) {
    return Objects.requireNonNull(faults.get(one));
  }

  /** Whether a clause of the rules shown asks for it. */
  public boolean isAsked(Supposition one) {
    return switch (one) {
      case ARROW -> asks("arrow mass");
      case DRAW -> asks("draw weight as set");
      case CERTIFIED -> asks("certified draw weight");
      default -> true;
    };
  }

  private boolean asks(String figure) {
    return divisions().stream().anyMatch(d -> d.rule().figuresAsked().contains(figure));
  }

  /** What stands beside the open rule. */
  public ReadOnlyObjectProperty<Beside> beside() {
    return beside.getReadOnlyProperty();
  }

  /** Puts something beside the open rule. */
  public void setBeside(Beside other) {
    beside.set(other);
    ask();
  }

  /**
   * Puts the division of the same code of another rule book beside the open rule; reads that off
   * the screen's thread and answers on it.
   *
   * @param named the file, or an event's folder; without a folder it lies beside the open rule book
   */
  public void putBeside(String named, Runnable done, Consumer<Trouble> missed) {
    Places around = Places.in(book.draft().get().file().resolveSibling(""));
    String code = book.text(RuleKey.CODE);
    work.execute(
        () -> {
          try {
            Path there = around.there(named);
            WrittenRules rules = WrittenRules.read(there);
            rules.requireNamesake(code);
            screen.execute(
                () -> {
                  done.run();
                  setBeside(new Beside.OfBook(String.valueOf(there.getFileName()), rules));
                });
          } catch (IOException | StationException | RuntimeException | Error e) {
            Trouble trouble = Trouble.of(e);
            screen.execute(() -> missed.accept(trouble));
          }
        });
  }

  /** What there is in the open rule book to put beside the open rule. */
  public List<Beside> choices() {
    List<Beside> choices = new ArrayList<>();
    choices.add(new Beside.Nothing());
    choices.add(new Beside.AsSaved());
    for (int i = 1; i <= book.draft().get().divisions(); i++) {
      if (i != book.section().get()) {
        choices.add(new Beside.Other(i));
      }
    }
    return choices;
  }

  /** What a choice is called. */
  public String name(Beside choice) {
    if (choice instanceof Beside.Other other) {
      return code(other.division());
    }
    if (choice instanceof Beside.OfBook other) {
      return texts.of("beside.of-book", code(book.section().get()), other.book());
    }
    return choice instanceof Beside.AsSaved
        ? texts.of("beside.saved", code(book.section().get()))
        : texts.of("beside.nothing");
  }

  private String code(int division) {
    String code = book.draft().get().text(division, RuleKey.CODE).strip();
    return code.isEmpty() ? texts.of("division.unnamed", division) : code;
  }

  /** What is shown. */
  public ReadOnlyObjectProperty<EffectPage> page() {
    return page.getReadOnlyProperty();
  }

  private Optional<Division> other() {
    RuleDraft draft = book.draft().get();
    if (!book.isDivision()) {
      return Optional.empty();
    }
    if (beside.get() instanceof Beside.AsSaved) {
      return draft.savedDivision(book.section().get());
    }
    if (beside.get() instanceof Beside.OfBook another) {
      return another.rules().find(book.text(RuleKey.CODE));
    }
    return beside.get() instanceof Beside.Other another
            && another.division() <= draft.divisions()
            && another.division() != book.section().get()
        ? draft.division(another.division())
        : Optional.empty();
  }

  private List<Division> divisions() {
    List<Division> divisions = new ArrayList<>();
    book.division().ifPresent(divisions::add);
    other().ifPresent(divisions::add);
    return divisions;
  }

  private void ask() {
    Optional<Supposed> under = supposed();
    Optional<Division> open = book.division();
    boolean moved = shownSection != book.section().get();
    if (open.isEmpty() || under.isEmpty()) {
      asked++;
      EffectPage before = page.get();
      Optional<EffectPage.Shown> last = moved ? Optional.empty() : before.first();
      page.set(
          moved
              ? new EffectPage(last, Optional.empty(), Optional.empty(), note(last))
              : new EffectPage(last, before.second(), before.difference(), note(last)));
      return;
    }
    long mine = ++asked;
    shownSection = book.section().get();
    String name = code(shownSection);
    Optional<Division> other = other();
    String otherName = name(beside.get());
    String note =
        other.isEmpty() && !(beside.get() instanceof Beside.Nothing)
            ? texts.of("effect.beside.faulty", otherName)
            : "";
    work.execute(
        () -> {
          EffectPage made = made(open.get(), name, other, otherName, under.get(), note);
          screen.execute(() -> show(mine, made));
        });
  }

  private void show(long mine, EffectPage made) {
    if (mine == asked) {
      page.set(made);
    }
  }

  private String note(Optional<EffectPage.Shown> last) {
    if (!book.isDivision()) {
      return texts.of("effect.none");
    }
    if (book.division().isPresent()) {
      return texts.of("effect.supposed.faulty");
    }
    return last.isPresent() ? texts.of("effect.before") : texts.of("effect.faulty");
  }

  private static EffectPage made(
      Division open,
      String name,
      Optional<Division> other,
      String otherName,
      Supposed under,
      String note) {
    List<Division> both = new ArrayList<>(List.of(open));
    other.ifPresent(both::add);
    List<Effect> effects = Effect.together(both, under);
    return new EffectPage(
        Optional.of(shown(open, name, effects.get(0))),
        other.map(o -> shown(o, otherName, effects.get(1))),
        other.map(o -> Difference.between(open, o)),
        note);
  }

  private static EffectPage.Shown shown(Division division, String name, Effect effect) {
    return new EffectPage.Shown(name, division.told(), effect);
  }

  private Optional<Supposed> supposed() {
    Supposed.Typed read = Supposed.read(one -> supposed(one).get());
    for (Supposition one : Supposition.values()) {
      QuantityException fault = read.faults().get(one);
      fault(one).set(fault == null ? "" : texts.of(fault.mend()));
    }
    return read.supposed();
  }
}
