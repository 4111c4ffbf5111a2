package lanewarden.kiosk.rulebook;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.LaneFigure;
import lanewarden.station.LaneQuestion;

/** Lanes and samples for an event to come, answered at every key; on the screen's thread. */
public final class LanesViewModel {
  private static final double MINUTE = 60;

  /** Less is shown as nothing, from which no sample can be planned. */
  private static final double SMALLEST_CHANCE = 0.000_5;

  private static final char NO_BREAK_SPACE = '\u00a0';

  private final Texts texts;
  private final Map<LaneFigure, StringProperty> figures = new EnumMap<>(LaneFigure.class);
  private final ObservableList<String> lanes = FXCollections.observableArrayList();
  private final ObservableList<String> sample = FXCollections.observableArrayList();
  private final StringProperty fault = new SimpleStringProperty("");

  /** Begins with numbers of an ordinary event. */
  public LanesViewModel(Texts texts) {
    this.texts = texts;
    for (LaneFigure figure : LaneFigure.values()) {
      StringProperty text = new SimpleStringProperty(figure.start());
      text.addListener((all, before, now) -> answer());
      figures.put(figure, text);
    }
    answer();
  }

  /** What is typed for a number. */
  public StringProperty figure(LaneFigure figure) {
    return Objects.requireNonNull(figures.get(figure));
  }

  /** Whether the lanes cope, in sentences. */
  public ObservableList<String> lanes() {
    return lanes;
  }

  /** What those drawn find, in sentences. */
  public ObservableList<String> sample() {
    return sample;
  }

  /** Why there is no answer; blank if there is one. */
  public StringProperty fault() {
    return fault;
  }

  /** Takes over how likely a check ends over for an archer who should fail, if it ever does. */
  public void suppose(double caught) {
    if (caught >= SMALLEST_CHANCE) {
      figure(LaneFigure.CAUGHT).set(percent(caught));
    }
  }

  /** What a number is called on the screen. */
  static String name(LaneFigure figure, Texts texts) {
    return texts.of(
        switch (figure) {
          case COMPETITORS -> "lanes.competitors";
          case MINUTES -> "lanes.minutes";
          case SHOTS -> "lanes.shots";
          case SECONDS_A_SHOT -> "lanes.seconds";
          case SECONDS_A_CHANGE -> "lanes.change";
          case LANES -> "lanes.lanes";
          case DRAWN -> "lanes.drawn";
          case OVER_LIMIT -> "lanes.over";
          case CAUGHT -> "lanes.caught";
        });
  }

  private void answer() {
    List<String> ofLanes = new ArrayList<>();
    List<String> ofSample = new ArrayList<>();
    LaneQuestion.Typed typed = LaneQuestion.read(figure -> texts.typed(figure(figure).get()));
    typed.question().ifPresent(question -> tell(question, ofLanes, ofSample));
    List<String> found = new ArrayList<>();
    typed
        .faults()
        .forEach((figure, mend) -> found.add(texts.of("suppose.fault", name(figure, texts), mend)));
    fault.set(String.join("\n", found));
    lanes.setAll(ofLanes);
    sample.setAll(ofSample);
  }

  private void tell(LaneQuestion asked, List<String> ofLanes, List<String> ofSample) {
    LaneQuestion.Answer answer = asked.answer();
    ofLanes.add(texts.of("lanes.check", duration(answer.secondsACheck())));
    if (asked.drawn() > 0) {
      ofLanes.add(texts.of("lanes.check.most", asked.drawn(), duration(answer.secondsAvailable())));
    }
    ofLanes.add(
        texts.of("lanes.capacity", asked.lanes(), answer.capacity(), plain(asked.minutes())));
    ofLanes.add(texts.of("lanes.busy", percent(Math.min(1, answer.busy()))));
    ofLanes.add(texts.of("lanes.needed", answer.lanesNeeded()));
    ofLanes.add(
        answer
            .waiting()
            .map(
                w ->
                    texts.of(
                        "lanes.waiting",
                        percent(w.probability()),
                        duration(w.meanSeconds()),
                        rounded(w.meanLength())))
            .orElse(texts.of("lanes.growing")));
    tellSample(asked, answer, ofSample);
  }

  private void tellSample(LaneQuestion asked, LaneQuestion.Answer answer, List<String> ofSample) {
    if (asked.overLimit() == 0) {
      ofSample.add(texts.of("lanes.nobody"));
      return;
    }
    ofSample.add(
        texts.of(
            "lanes.finds",
            asked.drawn(),
            asked.competitors(),
            asked.overLimit(),
            percent(answer.finds())));
    if (asked.drawn() > answer.capacity()) {
      ofSample.add(texts.of("lanes.in-time", answer.capacity(), percent(answer.findsInTime())));
    }
    ofSample.add(enough(answer));
  }

  private String enough(LaneQuestion.Answer answer) {
    String wanted = percent(LaneQuestion.WANTED);
    if (answer.enough().isEmpty()) {
      return texts.of("lanes.never", wanted);
    }
    int enough = answer.enough().getAsInt();
    return enough > answer.capacity()
        ? texts.of("lanes.enough.late", enough, wanted)
        : texts.of("lanes.enough", enough, wanted);
  }

  private String duration(double seconds) {
    return seconds < 2 * MINUTE
        ? texts.of("lanes.in-seconds", Math.round(seconds))
        : texts.of("lanes.in-minutes", rounded(seconds / MINUTE));
  }

  private String plain(double number) {
    return texts.number(
        number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number));
  }

  private String rounded(double number) {
    return texts.number(String.format(Locale.ROOT, "%.1f", number));
  }

  private String percent(double share) {
    return rounded(100 * share) + NO_BREAK_SPACE + "%";
  }
}
