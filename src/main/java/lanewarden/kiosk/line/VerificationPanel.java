package lanewarden.kiosk.line;

import java.util.Optional;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Figures;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.RefusalWording;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.kiosk.trouble.TroubleCard;
import lanewarden.station.VerificationView.Round;
import lanewarden.station.VerificationView.Shot;
import org.jspecify.annotations.Nullable;

/**
 * The panel in which the instrument is verified: each shot as it comes, bias and spread so far, the
 * outcome. Enter takes what is typed; once all is over it leaves.
 */
final class VerificationPanel implements Page {
  private final ProvingViewModel model;
  private final Texts texts;
  private final Runnable leave;
  private final PanelFrame root = new PanelFrame("verification-panel");
  private final Label title = new Label();
  private final Label words = new Label();
  private final VBox shots = new VBox();
  private final Mark mark = new Mark();
  private final Label figures = new Label();
  private final HBox outcome = new HBox(mark, figures);
  private final Label refused = new Label();
  private final Label asks = new Label();
  private final TextField field = Figures.field(new TextField());
  private final KeyButton act;
  private final KeyButton breakOff;

  // Held here: the line holds it weakly, so that a closed panel is not kept
  private final ChangeListener<@Nullable LinePage> follow = (all, before, now) -> show();

  VerificationPanel(ProvingViewModel model, Texts texts, Runnable leave, Runnable openBreakOff) {
    this.model = model;
    this.texts = texts;
    this.leave = leave;
    title.setId("verification-name");
    shots.setId("verification-shots");
    figures.setId("verification-figures");
    outcome.getStyleClass().add("outcome");
    refused.setId("verification-refused");
    field.setId("verification-field");
    field.textProperty().bindBidirectional(model.typed());
    asks.setLabelFor(field);
    TroubleCard card = new TroubleCard(texts);
    card.show(model.trouble().get());
    model.trouble().addListener((all, before, now) -> card.show(now));
    act = new KeyButton(texts.of("type.act"), KeyCode.ENTER, this::enter);
    breakOff = new KeyButton(texts.of("act.break-off"), KeyCode.F4, openBreakOff);
    KeyButton back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave);
    PanelFrame.wrap(figures, refused, asks);
    root.say(title, words);
    root.getChildren().addAll(shots, outcome, refused, asks, field, card);
    root.offer(act, breakOff, back);
    model.page().addListener(new WeakChangeListener<>(follow));
    show();
  }

  private void show() {
    model.round().ifPresent(this::show);
    LinePage page = model.page().get();
    Optional<RefusedLine> line = page == null ? Optional.empty() : page.refused();
    refused.setText(
        line.map(l -> texts.of("line.refused", RefusalWording.of(l.reason(), texts), l.words()))
            .orElse(""));
    refused.setManaged(line.isPresent());
  }

  private void show(Round round) {
    boolean runs = model.running();
    title.setText(texts.of("verification.title", Wording.occasion(round.occasion(), texts)));
    words.setText(
        texts.of(
            "verification.words",
            round.shots(),
            round.reference(),
            round.mostBias(),
            round.mostSpread()));
    shots.getChildren().setAll(round.taken().stream().map(this::line).toList());
    Sign sign =
        switch (round.state()) {
          case RUNNING -> Sign.RUNNING;
          case PASSED -> Sign.WITHIN;
          case OUT -> Sign.HELD;
          case BROKEN_OFF -> Sign.NOT_DECIDED;
        };
    mark.show(sign);
    Mark.show(outcome, sign);
    figures.setText(
        switch (round.state()) {
          case RUNNING -> texts.of("verification.running", round.words());
          case PASSED -> texts.of("verification.passed", round.words());
          case OUT -> texts.of("verification.out", round.words());
          case BROKEN_OFF -> Wording.sentence(texts.of(round.words()));
        });
    asks.setText(
        texts.of(
            round.awaitsReference() ? "verification.reference" : "verification.shot",
            round.awaitsReference() ? round.taken().size() : round.taken().size() + 1));
    asks.setVisible(runs);
    asks.setManaged(runs);
    field.setVisible(runs);
    field.setManaged(runs);
    breakOff.setDisable(!runs);
    act.rename(texts.of(runs ? "type.act" : "verification.done"));
  }

  private Label line(Shot shot) {
    Label label =
        new Label(
            texts.of(
                "verification.line",
                shot.number(),
                shot.speed(),
                shot.reference().map(Object::toString).orElse(texts.of("reading.none"))));
    label.getStyleClass().add("verification-line");
    return label;
  }

  private void enter() {
    if (!model.running()) {
      leave.run();
    } else if (!model.typed().get().isBlank()) {
      model.typed().set(texts.typed(model.typed().get()));
      model.take();
    }
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    if (field.isVisible()) {
      field.requestFocus();
    } else {
      act.requestFocus();
    }
  }

  @Override
  public boolean press(KeyCode code) {
    return root.press(code);
  }

  @Override
  public void typed(String text) {
    if (field.isVisible()) {
      field.requestFocus();
      field.appendText(text);
    }
  }
}
