package lanewarden.kiosk.instrument;

import java.util.List;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.beans.value.WeakChangeListener;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Scroll;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.kiosk.trouble.TroubleCard;

/** What comes over the instrument's wire, newest first, and whether its profile fits. */
public final class WirePanel implements Page {
  /** Of the lines, and of the findings, in pixels: one of them whole. */
  private static final double LEAST = 120;

  private final VBox root = new VBox();
  private final Keys keys = new Keys();
  private final Label title = new Label();
  private final Label counted = new Label();
  private final Label nothing = new Label();
  private final Mark mark = new Mark();
  private final Label verdict = new Label();
  private final VBox findings = new VBox();
  private final Findings found = new Findings(findings);
  private final ListView<WirePage.Line> lines = new ListView<>();

  // Held here: the model holds it weakly, so that a closed panel is not kept
  private final ChangeListener<WirePage> follow = (all, before, now) -> show(now);

  /** In whatever way the panel or its window is closed, nobody looks any more. */
  private final ObservableValue<Boolean> seen;

  /**
   * @param acts what can be done there, the way back last
   * @param unseen runs once nobody looks any more, in whatever way it was left
   */
  public WirePanel(WireViewModel model, Texts texts, List<KeyButton> acts, Runnable unseen) {
    title.getStyleClass().add("panel-title");
    title.setId("wire-title");
    nothing.setId("wire-nothing");
    counted.setId("wire-counted");
    verdict.setId("wire-verdict");
    verdict.getStyleClass().add("wire-verdict");
    HBox said = new HBox(mark, verdict);
    said.getStyleClass().add("said-line");
    findings.setId("wire-findings");
    findings.getStyleClass().add("wire-findings");
    found.setId("wire-found");
    lines.setId("wire-lines");
    lines.setAccessibleText(texts.of("wire.lines"));
    lines.setCellFactory(all -> new WireCell());
    lines.setPlaceholder(nothing);
    VBox.setVgrow(lines, Priority.ALWAYS);
    TroubleCard card = new TroubleCard(texts);
    model.trouble().addListener((all, before, now) -> card.show(now));
    card.show(model.trouble().get());
    KeyButton[] all = acts.toArray(KeyButton[]::new);
    keys.add(all);
    Row buttons = new Row(all);
    buttons.getStyleClass().add("panel-buttons");
    // However much does not fit, findings and lines give way and not the buttons
    buttons.setMinHeight(Row.USE_PREF_SIZE);
    lines.setMinHeight(LEAST);
    for (Label label : new Label[] {title, counted, verdict, nothing}) {
      WrappedWords.in(label);
      label.setMinHeight(Label.USE_PREF_SIZE);
    }
    root.getChildren().addAll(title, said, found, counted, lines, card, buttons);
    root.getStyleClass().addAll("panel", "instrument-panel");
    root.setMaxHeight(VBox.USE_PREF_SIZE);
    root.setId("wire-panel");
    model.page().addListener(new WeakChangeListener<>(follow));
    seen =
        root.sceneProperty()
            .flatMap(Scene::windowProperty)
            .flatMap(Window::showingProperty)
            .orElse(false);
    seen.addListener(
        (source, before, now) -> {
          model.watch(now);
          if (!now) {
            unseen.run();
          }
        });
    show(model.page().get());
  }

  private void show(WirePage page) {
    title.setText(page.title());
    counted.setText(page.counted());
    nothing.setText(page.nothing());
    Mark.show(mark, page.verdict().sign());
    verdict.setText(page.verdict().words());
    findings.getChildren().setAll(page.findings().stream().map(WirePanel::finding).toList());
    found.setAccessibleText(page.verdict().words());
    found.setManaged(!page.findings().isEmpty());
    found.setVisible(!page.findings().isEmpty());
    List<WirePage.Line> now = page.lines();
    if (!now.equals(lines.getItems())) {
      lines.getItems().setAll(now);
      lines.scrollTo(0);
    }
  }

  /** What does not fit, which may be more than the panel has room for: then it scrolls. */
  private static final class Findings extends Scroll {
    Findings(VBox told) {
      super(told);
    }

    /** Its words wrap, so its height hangs on its width. */
    @Override
    public Orientation getContentBias() {
      return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinHeight(double width) {
      return Math.min(LEAST, computePrefHeight(width));
    }
  }

  private static VBox finding(WirePage.Finding finding) {
    Label key = new Label(finding.key());
    key.getStyleClass().add("wire-key");
    Label words = new Label(finding.words());
    WrappedWords.in(words);
    words.setMinHeight(Label.USE_PREF_SIZE);
    VBox both = new VBox(key, words);
    both.setAccessibleRole(AccessibleRole.TEXT);
    both.setAccessibleText(finding.key() + ". " + finding.words());
    return both;
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    lines.requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code);
  }

  @Override
  public boolean isPassable() {
    return true;
  }
}
