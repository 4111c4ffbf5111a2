package lanewarden.kiosk.setups;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.kiosk.desk.Desk;
import lanewarden.station.BroughtText;
import lanewarden.station.Outlook;
import lanewarden.station.SetUpText;
import lanewarden.station.Supposition;
import lanewarden.station.Trouble;

/** A set-up that somebody thinks of bringing; used on the screen's thread. */
public final class ProspectsViewModel {

  /** What is typed of it. */
  enum Figure {
    ARROW("prospects.arrow", ""),
    SPEED("prospects.speed", ""),
    UNCERTAINTY("prospects.uncertainty", "3"),
    SHOTS("prospects.shots", ""),
    OTHER_SHOTS("prospects.shots.other", ""),
    DRAW("prospects.draw", ""),
    CERTIFIED("prospects.certified", ""),
    LENGTH("prospects.length", ""),
    BRACE("prospects.brace", ""),
    SCATTER("prospects.scatter", Supposition.Usual.ARROWS);

    private final String words;
    private final String start;

    Figure(String words, String start) {
      this.words = words;
      this.start = start;
    }

    /** Whether it is a mass with its readings. */
    boolean isShots() {
      return this == SHOTS || this == OTHER_SHOTS;
    }

    /** The key of its words. */
    String words() {
      return words;
    }
  }

  private final Desk desk;
  private final Map<Figure, StringProperty> typed = new EnumMap<>(Figure.class);
  private final ObjectProperty<Optional<Outlook>> outlook =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /** Nothing is typed yet. */
  public ProspectsViewModel(Desk desk) {
    this.desk = desk;
    Arrays.stream(Figure.values())
        .forEach(figure -> typed.put(figure, new SimpleStringProperty(figure.start)));
  }

  /** What stands in a field. */
  StringProperty typed(Figure figure) {
    return Objects.requireNonNull(typed.get(figure));
  }

  private String text(Figure figure) {
    return typed(figure).get();
  }

  /** What awaits the set-up; empty until it was asked for, and while it cannot be told. */
  ObjectProperty<Optional<Outlook>> outlook() {
    return outlook;
  }

  /** Why it cannot be told. */
  ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** Asks for it, by the rule book in force. */
  void reckon() {
    List<String> shots =
        Stream.of(text(Figure.SHOTS), text(Figure.OTHER_SHOTS))
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
            "");
    String scatter = text(Figure.SCATTER);
    desk.ask(
        station -> station.proceedings().outlook(brought, scatter),
        told -> {
          trouble.set(Optional.empty());
          outlook.set(Optional.of(told));
        },
        missed -> {
          outlook.set(Optional.empty());
          trouble.set(Optional.of(missed));
        });
  }
}
