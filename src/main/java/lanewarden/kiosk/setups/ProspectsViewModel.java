package lanewarden.kiosk.setups;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.BroughtText;
import lanewarden.station.Outlook;
import lanewarden.station.SetUpText;
import lanewarden.station.Supposition;
import lanewarden.station.Trouble;

/** A set-up that somebody thinks of bringing; used on the screen's thread. */
public final class ProspectsViewModel {

  /** Stands between the shots of one arrow mass and those of the next. */
  private static final String BETWEEN = ";";

  /** What is typed of it. */
  enum Figure {
    ARROW("prospects.arrow"),
    SPEED("prospects.speed"),
    UNCERTAINTY("prospects.uncertainty", "prospects.uncertainty.beside", "3"),
    SHOTS("prospects.shots", "prospects.shots.example"),
    OTHER_SHOTS("prospects.shots.other", "prospects.shots.other.example"),
    DRAW("prospects.draw"),
    CERTIFIED("prospects.certified", "prospects.certified.beside", ""),
    LENGTH("prospects.length"),
    BRACE("prospects.brace", "prospects.brace.beside", ""),
    CURVE("prospects.curve", "prospects.curve.example"),
    SCATTER("prospects.scatter", Optional.empty(), Optional.empty(), Supposition.Usual.ARROWS),
    DIVISION("prospects.only", "prospects.only.example");

    private final String words;
    private final Optional<String> beside;
    private final Optional<String> example;
    private final String start;

    Figure(String words) {
      this(words, Optional.empty(), Optional.empty(), "");
    }

    Figure(String words, String example) {
      this(words, Optional.empty(), Optional.of(example), "");
    }

    Figure(String words, String beside, String start) {
      this(words, Optional.of(beside), Optional.empty(), start);
    }

    Figure(String words, Optional<String> beside, Optional<String> example, String start) {
      this.words = words;
      this.beside = beside;
      this.example = example;
      this.start = start;
    }

    /** Whether it stands beside the figure before it, which it says more of. */
    boolean isBeside() {
      return beside.isPresent();
    }

    /** The key of what stands before its field. */
    String label() {
      return beside.orElse(words);
    }

    /** The key of an example of it, where it is more than one figure. */
    Optional<String> example() {
      return example;
    }

    /** The key of its name. */
    String words() {
      return words;
    }
  }

  /**
   * What is asked, as typed.
   *
   * @param scatter standard deviation of the archer's arrows from one to the next
   * @param only code of the one division that is asked about; blank for all
   */
  public record Asked(BroughtText brought, String scatter, String only) {}

  /** Asks what awaits a set-up, by a rule book. */
  @FunctionalInterface
  public interface Asking {
    /**
     * Asks off the screen's thread, and is answered on it.
     *
     * @param answer takes what awaits the set-up
     * @param missed takes why it cannot be told
     */
    void ask(Asked asked, Consumer<Outlook> answer, Consumer<Trouble> missed);
  }

  private final Asking asking;
  private final Map<Figure, StringProperty> typed = new EnumMap<>(Figure.class);
  private final ObjectProperty<Optional<Outlook>> outlook =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());
  private final ReadOnlyStringWrapper by = new ReadOnlyStringWrapper("");
  private final Texts texts;
  private int asked;

  /**
   * Nothing is typed yet.
   *
   * @param texts say with which decimal sign one types
   */
  public ProspectsViewModel(Asking asking, Texts texts) {
    this.asking = asking;
    this.texts = texts;
    for (Figure figure : Figure.values()) {
      StringProperty field = new SimpleStringProperty(figure.start);
      field.addListener((all, before, now) -> outdate());
      typed.put(figure, field);
    }
  }

  /** An answer stands for what was typed when it was asked: beside other figures it would lie. */
  private void outdate() {
    asked++;
    outlook.set(Optional.empty());
  }

  /** What stands in a field. */
  StringProperty typed(Figure figure) {
    return Objects.requireNonNull(typed.get(figure));
  }

  private String text(Figure figure) {
    return texts.typed(typed(figure).get());
  }

  /** By which rule book it is told; blank where that is the one in force. */
  ReadOnlyStringProperty by() {
    return by.getReadOnlyProperty();
  }

  /**
   * Tells by another rule book from now on; what was told by the one before is gone.
   *
   * @param name which one, in words
   */
  public void turnTo(String name) {
    by.set(name);
    outdate();
  }

  /** What awaits the set-up; empty until it is answered for what now stands in the fields. */
  ObjectProperty<Optional<Outlook>> outlook() {
    return outlook;
  }

  /** Why it cannot be told. */
  ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** Asks for it. */
  void reckon() {
    List<String> shots =
        Stream.of(text(Figure.SHOTS), text(Figure.OTHER_SHOTS))
            .flatMap(several -> Stream.of(several.split(BETWEEN, -1)))
            .map(String::strip)
            .filter(written -> !written.isBlank())
            .toList();
    BroughtText brought =
        new BroughtText(
            new SetUpText(
                text(Figure.ARROW),
                text(Figure.DRAW),
                text(Figure.CERTIFIED),
                text(Figure.LENGTH),
                text(Figure.BRACE)),
            text(Figure.SPEED),
            text(Figure.UNCERTAINTY),
            shots,
            text(Figure.CURVE));
    outdate();
    int question = asked;
    asking.ask(
        new Asked(brought, text(Figure.SCATTER), text(Figure.DIVISION)),
        told -> {
          if (question == asked) {
            trouble.set(Optional.empty());
            outlook.set(Optional.of(told));
          }
        },
        missed -> {
          if (question == asked) {
            trouble.set(Optional.of(missed));
          }
        });
  }

  /** For the next set-up: nothing of this one is left. */
  void empty() {
    typed.forEach((figure, field) -> field.set(figure.start));
    outdate();
    trouble.set(Optional.empty());
  }
}
