package lanewarden.kiosk.form;

import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.EventFolder;
import lanewarden.station.Trouble;

/**
 * The organizer's key, which the organizer is told to keep elsewhere: where it is not in its place,
 * every form that it signs asks where it lies, also where it was when the form was opened and is
 * not any more; and remembers the answer that was good. Used on the screen's thread.
 */
public final class OrganizersKey {
  private static final String PLACE = "organizer-key";
  private static final String PASSPHRASE = "organizer";

  /** What the organizer signs with; any thread. */
  public static final class Signature {
    private final Optional<Path> key;
    private final Answers answers;

    private Signature(Optional<Path> key, Answers answers) {
      this.key = key;
      this.answers = answers;
    }

    /** Where the key lies; empty for its place in the event's folder. */
    public Optional<Path> key() {
      return key;
    }

    /** The passphrase, in an array of the caller's own, to be wiped. */
    public char[] passphrase() {
      return answers.secret(PASSPHRASE);
    }
  }

  /** Takes the answers of a form that the organizer signs. */
  @FunctionalInterface
  public interface Handover {
    /** Answers through one of the two. */
    void give(Answers answers, Signature organizer, Runnable done, Consumer<Trouble> missed);
  }

  private final EventFolder folder;
  private String last = "";

  /** The key of this event. */
  public OrganizersKey(EventFolder folder) {
    this.folder = folder;
  }

  /**
   * A form that the organizer signs: where the key lies, unless it is in its place, then these
   * questions, then its passphrase.
   *
   * @param done runs when the answers were taken
   */
  public FormViewModel form(
      List<Question> questions, Texts texts, Handover handover, Runnable done) {
    List<Question> all = new ArrayList<>();
    boolean away = isAway();
    Question place = place(texts.of("organizer.key"));
    if (away) {
      all.add(place);
    }
    all.addAll(questions);
    all.add(Question.secret(PASSPHRASE, texts.of("people.organizer")));
    FormViewModel form =
        form(
            all,
            (answers, key, good, missed) ->
                handover.give(answers, new Signature(key, answers), good, missed),
            done);
    if (!away) {
      form.askLater(place, last, this::isAway);
    }
    return form;
  }

  /** Takes the answers of a form that perhaps the organizer answered. */
  @FunctionalInterface
  public interface Taker {
    /**
     * Answers through one of the two.
     *
     * @param key where the organizer's key lies; empty for its place in the event's folder
     */
    void take(Answers answers, Optional<Path> key, Runnable done, Consumer<Trouble> missed);
  }

  /**
   * A form that asks for a passphrase which may be the organizer's.
   *
   * @param questions among them perhaps {@link #placeIfOrganizers}
   * @param done runs when the answers were taken
   */
  public FormViewModel form(List<Question> questions, Taker taker, Runnable done) {
    FormViewModel form =
        new FormViewModel(
            questions, (answers, good, missed) -> take(answers, taker, good, missed), done);
    if (questions.stream().anyMatch(question -> question.name().equals(PLACE))) {
      form.text(PLACE).set(last);
    }
    return form;
  }

  /** Where the key lies, which somebody else leaves open; none where it is in its place. */
  public List<Question> placeIfOrganizers(Texts texts) {
    return isAway() ? List.of(place(texts.of("organizer.key.own")).mayStayOpen()) : List.of();
  }

  private boolean isAway() {
    return !Files.isRegularFile(folder.organizerKey());
  }

  private static Question place(String label) {
    return Question.words(PLACE, label, List.of()).place(Question.Place.FILE);
  }

  private void take(Answers answers, Taker taker, Runnable good, Consumer<Trouble> missed) {
    Optional<String> typed = answers.wordsIfAny(PLACE);
    Optional<Path> key;
    try {
      key = typed.isPresent() ? Optional.of(new Places(folder).at(typed.get())) : Optional.empty();
    } catch (NoSuchFileException e) {
      missed.accept(Trouble.of(e));
      return;
    }
    taker.take(
        answers,
        key,
        () -> {
          typed.ifPresent(place -> last = place);
          good.run();
        },
        missed);
  }
}
