package lanewarden.kiosk.setups;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.bench.PracticeSetUp;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.PracticeView;

/** What is shot now, the reading that came last, and where readings go. */
final class ShootingCard extends VBox {
  private final Texts texts;
  private final Label setUp = new Label();
  private final Label figures = new Label();
  private final Label last = new Label();
  private final Label refused = new Label();
  private final Mark mark = new Mark();
  private final Label listening = new Label();
  private final Label file = new Label();

  ShootingCard(Texts texts) {
    this.texts = texts;
    setUp.getStyleClass().add("place");
    setUp.setId("setups-now");
    last.getStyleClass().add("setups-last");
    last.setId("setups-last");
    refused.setId("setups-refused");
    listening.setId("setups-listening");
    file.setId("setups-file");
    PanelFrame.wrap(setUp, figures, refused, listening, file);
    HBox link = new HBox(mark, listening);
    link.getStyleClass().add("docket-row");
    HBox.setHgrow(listening, Priority.ALWAYS);
    getChildren().addAll(setUp, figures, last, refused, link, file);
    getStyleClass().add("setups-card");
    setAccessibleRole(AccessibleRole.TEXT);
  }

  void show(Optional<PracticeView> practice) {
    Optional<PracticeSetUp> shot = practice.flatMap(PracticeView::setUp);
    setUp.setText(
        shot.map(known -> texts.of("setups.now", known.name()))
            .orElseGet(() -> texts.of("setups.now.none")));
    say(figures, shot.map(this::figures).orElse(""));
    Optional<PracticeView.News> news = practice.flatMap(PracticeView::news);
    say(
        last,
        news.filter(PracticeView.News::taken)
            .map(PracticeView.News::words)
            .map(texts::number)
            .orElse(""));
    say(
        refused,
        news.filter(told -> !told.taken())
            .map(told -> texts.of("setups.refused", told.words()))
            .orElse(""));
    boolean listens = practice.filter(PracticeView::listening).isPresent();
    mark.show(listens ? Sign.LINK_UP : Sign.LINK_CLOSED);
    listening.setText(texts.of(listens ? "setups.listens" : "setups.rests"));
    say(
        file,
        practice
            .flatMap(PracticeView::file)
            .map(path -> texts.of("setups.file", Objects.requireNonNull(path.getFileName())))
            .orElse(""));
    setAccessibleText(
        Stream.of(setUp, figures, last, refused, listening)
            .filter(Label::isVisible)
            .map(Label::getText)
            .collect(Collectors.joining(". ")));
  }

  private String figures(PracticeSetUp setUp) {
    return Stream.of(setUp.mass(), setUp.drawWeight(), setUp.drawLength(), setUp.braceHeight())
        .flatMap(Optional::stream)
        .map(texts::quantity)
        .collect(Collectors.joining(" · "));
  }

  private static void say(Label label, String words) {
    label.setText(words);
    label.setVisible(!words.isEmpty());
    label.setManaged(!words.isEmpty());
  }
}
