package lanewarden.kiosk.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import lanewarden.station.Trouble;

/** Questions with their answers on the way to whoever asked; used on the screen's thread. */
public final class FormViewModel {
  /** The place of an option that was not chosen. */
  public static final int NONE = -1;

  /** Takes the answers. */
  @FunctionalInterface
  public interface Handover {
    /** Answers through one of the two. */
    void give(Answers answers, Runnable done, Consumer<Trouble> missed);
  }

  /**
   * A question that is asked only once the answers were not taken, and for a certain reason.
   *
   * @param usual what stands in its field at first
   * @param wanted whether that reason is there
   */
  private record Later(Question question, String usual, BooleanSupplier wanted) {}

  private final ObservableList<Question> questions;
  private final List<Later> later = new ArrayList<>();
  private final Handover handover;
  private final Runnable done;
  private final Map<String, StringProperty> texts = new LinkedHashMap<>();
  private final Map<String, IntegerProperty> choices = new LinkedHashMap<>();
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * @param done runs when the answers were taken
   */
  public FormViewModel(List<Question> questions, Handover handover, Runnable done) {
    this.questions = FXCollections.observableArrayList(questions);
    this.handover = handover;
    this.done = done;
    for (Question question : questions) {
      if (question.kind() == Question.Kind.CHOICE) {
        choices.put(question.name(), new SimpleIntegerProperty(question.usual()));
      } else {
        texts.put(question.name(), new SimpleStringProperty(""));
      }
    }
  }

  /** The questions, in order. */
  public ObservableList<Question> questions() {
    return FXCollections.unmodifiableObservableList(questions);
  }

  /**
   * Asks a question for words too, before the others, once the answers were not taken because of
   * something that was otherwise when the form was opened.
   *
   * @param usual what stands in its field at first
   * @param wanted whether that is so now
   */
  public void askLater(Question question, String usual, BooleanSupplier wanted) {
    later.add(new Later(question, usual, wanted));
  }

  private void askMore() {
    List<Later> now = later.stream().filter(one -> one.wanted().getAsBoolean()).toList();
    later.removeAll(now);
    for (Later one : now) {
      texts.put(one.question().name(), new SimpleStringProperty(one.usual()));
      questions.add(0, one.question());
    }
  }

  /** The words answered to a question. */
  public StringProperty text(String name) {
    return Objects.requireNonNull(texts.get(name), name);
  }

  /** The place of the option chosen; {@link #NONE} while none is. */
  public IntegerProperty chosen(String name) {
    return Objects.requireNonNull(choices.get(name), name);
  }

  /** Whether the answers were handed over and are not taken yet. */
  public BooleanProperty busy() {
    return busy;
  }

  /** Why they were not taken. */
  public ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** The first question that must be answered and is not. */
  public Optional<Question> firstOpen() {
    return questions.stream().filter(q -> !q.optional()).filter(this::isOpen).findFirst();
  }

  private boolean isOpen(Question question) {
    return question.kind() == Question.Kind.CHOICE
        ? chosen(question.name()).get() == NONE
        : text(question.name()).get().isBlank();
  }

  /** Writes the words out that were picked by their number. */
  public void settle() {
    questions.stream()
        .filter(question -> question.kind() == Question.Kind.WORDS)
        .forEach(question -> text(question.name()).set(written(question)));
  }

  /** Hands the answers over, unless one is missing; passphrases are forgotten here. */
  public void enter() {
    settle();
    if (busy.get() || firstOpen().isPresent()) {
      return;
    }
    Answers answers = answers();
    forget();
    busy.set(true);
    trouble.set(Optional.empty());
    handover.give(
        answers,
        () -> {
          busy.set(false);
          done.run();
        },
        missed -> {
          busy.set(false);
          askMore();
          trouble.set(Optional.of(missed));
        });
  }

  private Answers answers() {
    Map<String, String> words = new HashMap<>();
    Map<String, Integer> places = new HashMap<>();
    for (Question question : questions) {
      switch (question.kind()) {
        case WORDS, SECRET -> words.put(question.name(), text(question.name()).get());
        case CHOICE -> places.put(question.name(), chosen(question.name()).get());
      }
    }
    return new Answers(words, places);
  }

  /** A single digit means the option with that number. */
  private String written(Question question) {
    String text = text(question.name()).get().strip();
    int place = text.length() == 1 ? text.charAt(0) - '1' : NONE;
    return place >= 0 && place < question.options().size() ? question.options().get(place) : text;
  }

  /** Forgets the passphrases that were typed. */
  public void forget() {
    questions.stream()
        .filter(question -> question.kind() == Question.Kind.SECRET)
        .forEach(question -> text(question.name()).set(""));
  }
}
