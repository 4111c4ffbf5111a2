package lanewarden.kiosk.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.journal.Outcome;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.rules.WorkedCase;
import lanewarden.station.RuleCurve;

/** What the open rule means and does, redrawn at every key. */
final class MeaningPane extends VBox {
  private static final PseudoClass CROWDED = PseudoClass.getPseudoClass("crowded");

  /** Sentences and cases that find room in the ordinary size. */
  private static final int COMFORTABLE = 12;

  private final Texts texts;
  private final Label note = new Label();
  private final CurvePicture picture;
  private final GridPane numbers = new GridPane();
  private final VBox words = new VBox();
  private final VBox cases = new VBox();

  MeaningPane(EffectViewModel model, Texts texts) {
    this.texts = texts;
    this.picture = new CurvePicture(texts);
    note.getStyleClass().add("effect-note");
    note.setId("effect-note");
    note.setWrapText(true);
    note.setMinHeight(USE_PREF_SIZE);
    note.setMaxWidth(Double.MAX_VALUE);
    VBox.setVgrow(picture, Priority.ALWAYS);
    picture.setMinHeight(140);
    picture.setPrefHeight(140);
    numbers.getStyleClass().add("effect-numbers");
    numbers.setId("effect-numbers");
    words.setId("rule-words");
    cases.setId("rule-cases");
    GridPane lower = new GridPane();
    lower.getStyleClass().add("rule-meaning");
    lower.getColumnConstraints().setAll(share(44), share(56));
    lower.add(titled("meaning.words", words), 0, 0);
    lower.add(titled("meaning.cases", cases), 1, 0);
    ScrollPane scroll = new ScrollPane(lower);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("meaning-scroll");
    scroll.setAccessibleText(texts.of("meaning.words"));
    scroll.setMinHeight(0);
    lower
        .heightProperty()
        .addListener((all, before, now) -> scroll.setPrefHeight(now.doubleValue()));
    setMinHeight(0);
    getChildren().addAll(note, picture, numbers, new SuppositionRow(model, texts), scroll);
    getStyleClass().add("meaning");
    model.page().addListener((all, before, now) -> show(now));
    show(model.page().get());
  }

  private static boolean hasCurve(Optional<EffectPage.Shown> shown) {
    return shown.flatMap(EffectPage.Shown::curve).isPresent();
  }

  private static boolean isLong(EffectPage.Shown shown) {
    return shown.sentences().size() + shown.cases().size() > COMFORTABLE;
  }

  private static ColumnConstraints share(double percent) {
    ColumnConstraints column = new ColumnConstraints();
    column.setPercentWidth(percent);
    return column;
  }

  private VBox titled(String key, VBox content) {
    Label title = new Label(texts.of(key));
    title.getStyleClass().add("meaning-title");
    title.visibleProperty().bind(Bindings.isNotEmpty(content.getChildren()));
    VBox box = new VBox(title, content);
    content.getStyleClass().add("meaning-lines");
    return box;
  }

  private void show(EffectPage page) {
    note.setText(page.note());
    note.setVisible(!page.note().isEmpty());
    note.setManaged(!page.note().isEmpty());
    picture.show(page);
    boolean drawn = page.first().isEmpty() || hasCurve(page.first()) || hasCurve(page.second());
    picture.setVisible(drawn);
    picture.setManaged(drawn);
    numbers.getChildren().clear();
    boolean two = page.second().isPresent();
    page.first().ifPresent(shown -> numbers.add(numbersOf(shown, two, false), 0, 0));
    page.second().ifPresent(shown -> numbers.add(numbersOf(shown, true, true), 1, 0));
    numbers
        .getColumnConstraints()
        .setAll(two ? List.of(share(50), share(50)) : List.of(share(100)));
    words.getChildren().setAll(lines(page.first()));
    pseudoClassStateChanged(CROWDED, page.first().filter(shown -> isLong(shown)).isPresent());
    cases
        .getChildren()
        .setAll(caseLines(page.first().map(EffectPage.Shown::cases).orElse(List.of())));
  }

  private VBox numbersOf(EffectPage.Shown shown, boolean named, boolean second) {
    VBox box = new VBox();
    box.setId(second ? "numbers-second" : "numbers-first");
    Optional<RuleCurve> curve = shown.curve();
    String how =
        curve
            .map(
                c ->
                    c.drawn() == 0
                        ? texts.of("curve.calculated")
                        : texts.of("curve.simulated", c.drawn()))
            .orElse("");
    String title = named ? String.join(": ", shown.name(), how) : how;
    Label head = new Label(title);
    head.getStyleClass().add("meaning-title");
    Label said = wrapped(curve.map(RuleCurve::inWords).orElse(texts.of("curve.none")));
    box.getChildren().addAll(head, said);
    return box;
  }

  private static List<Label> lines(Optional<EffectPage.Shown> shown) {
    return shown.map(EffectPage.Shown::sentences).orElse(List.of()).stream()
        .map(MeaningPane::wrapped)
        .toList();
  }

  private List<HBox> caseLines(List<WorkedCase> all) {
    List<HBox> lines = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      WorkedCase one = all.get(i);
      lines.add(caseLine(one, i == 0 ? one.inWords() : one.inWordsAfter(all.get(i - 1))));
    }
    return lines;
  }

  private static HBox caseLine(WorkedCase one, String words) {
    Mark mark = new Mark();
    mark.show(sign(one));
    Label said = wrapped(words);
    HBox.setHgrow(said, Priority.ALWAYS);
    HBox line = new HBox(mark, said);
    line.getStyleClass().add("case-line");
    return line;
  }

  private static Sign sign(WorkedCase one) {
    return one.verdict().takesShots()
        ? Sign.RUNNING
        : Sign.of(Optional.of(Outcome.of(one.verdict())));
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
