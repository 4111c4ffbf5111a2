package lanewarden.kiosk.line;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleCard;

/** The check-in line, the screen on which an official spends the day. */
public final class LineScreen implements Page {

  /**
   * What the line's keys open that is not the line's own.
   *
   * @param unseen those whose buttons stand behind {@code goTo}, but whose keys work here too
   * @param goTo lists every screen with its key
   */
  public record Doors(KeyButton protests, List<KeyButton> unseen, KeyButton goTo) {}

  private static final PseudoClass CROWDED = PseudoClass.getPseudoClass("crowded");
  private static final PseudoClass PACKED = PseudoClass.getPseudoClass("packed");

  private final LineViewModel model;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final StatusBar status;
  private final TroubleCard standing;
  private final KeyButton retry;
  private final Row stuck;
  private final TroubleCard notice;
  private final KeyButton callAllTheSame;
  private final KeyButton enterLate;
  private final Row told = new Row();
  private final VBox toldBelow = new VBox();
  private final PreparationStrip preparation;
  private final KeyButton goTo;
  private final Runnable figuresPanel;
  private final RefusedStrip refused;
  private final DoubtStrip doubt;
  private final ProvingStrip proving;
  private final StopStrip stop;
  private final Runnable stopNow;
  private final CallColumn column;
  private final CheckCard card;
  private final ClearLine clear;
  private final ActBar acts;
  private long askedFor;

  /** Shows nothing until the first page comes. */
  public LineScreen(LineViewModel model, Texts texts, Panels panels, Doors doors) {
    this.model = model;
    LinePanels own = new LinePanels(model, texts, panels);
    figuresPanel = own::setUp;
    stopNow = own::stop;
    status = new StatusBar(texts, own::phase);
    standing = new TroubleCard(texts);
    standing.setId("standing-trouble");
    retry = new KeyButton(texts.of("line.retry"), KeyCode.F1, model::retry);
    stuck = new Row(standing, retry);
    stuck.getStyleClass().add("stuck");
    HBox.setHgrow(standing, Priority.ALWAYS);
    notice = new TroubleCard(texts);
    notice.setId("notice");
    callAllTheSame =
        new KeyButton(texts.of("act.all-the-same"), KeyCode.INSERT, own::callAllTheSame);
    callAllTheSame.setId("all-the-same");
    enterLate = new KeyButton(texts.of("act.late"), KeyCode.INSERT, own::enterLate);
    enterLate.setId("enter-late");
    told.getStyleClass().add("stuck");
    toldBelow.getStyleClass().add("stuck");
    HBox.setHgrow(notice, Priority.ALWAYS);
    refused = new RefusedStrip(texts);
    doubt = new DoubtStrip(texts, own::keep);
    proving = new ProvingStrip(texts, own::holdOrLift, own::verify);
    stop = new StopStrip(texts);
    column = new CallColumn(model, texts, toldBelow);
    preparation = new PreparationStrip(model, texts, own::setUp);
    card = new CheckCard(texts, own::declareVoid, preparation);
    clear = new ClearLine(texts);
    // What is not seen takes no room: else the cautions would be pushed below the edge
    card.managedProperty().bind(card.visibleProperty());
    clear.managedProperty().bind(clear.visibleProperty());
    acts = new ActBar(model, texts, own, doors);
    goTo = doors.goTo();
    keys.add(retry, callAllTheSame, enterLate);
    status.addTo(keys);
    proving.addTo(keys);
    preparation.addTo(keys);
    doubt.addTo(keys);
    acts.addTo(keys);
    VBox middle = new VBox(stop, proving, stuck, told, refused, doubt, new StackPane(card, clear));
    VBox.setVgrow(middle.getChildren().get(middle.getChildren().size() - 1), Priority.ALWAYS);
    middle.getStyleClass().add("middle");
    // However much there is to say, the buttons below stay whole
    middle.setMinHeight(0);
    root.setTop(status);
    root.fill(column, middle, acts);
    status.loosenIn(root);
    root.pin(card.verdict(), card.place());
    root.getStyleClass().add("line");
    root.setId("line");
    model.page().addListener((all, before, now) -> show());
    model.leftLast().addListener((all, before, now) -> show());
    model
        .notice()
        .addListener(
            (all, before, now) -> {
              notice.show(now);
              makeRoom();
            });
    told.managedProperty()
        .bind(notice.managedProperty().and(notice.parentProperty().isEqualTo(told)));
    toldBelow.managedProperty().bind(notice.managedProperty().and(told.managedProperty().not()));
    tell(false);
    model.grounds().addListener((all, before, now) -> offer());
    model.unknown().addListener((all, before, now) -> offer());
    offer();
    show();
  }

  private void show() {
    LinePage page = model.page().get();
    root.setVisible(page != null);
    if (page == null) {
      return;
    }
    status.show(page);
    standing.narrow(page.stopWaits());
    standing.show(page.trouble());
    stuck.setVisible(page.trouble().isPresent());
    stuck.setManaged(page.trouble().isPresent());
    retry.setDisable(page.unwritten() == 0);
    notice.show(model.notice().get());
    refused.show(page.refused());
    boolean stopped = page.stop().isPresent();
    // What keeps it from being signed says all that the strip does, and what is to be done
    stop.show(page.stopWaits() && page.trouble().isPresent() ? Optional.empty() : page.stop());
    tell(stopped);
    proving.show(page.proving(), stopped);
    column.show(page);
    Optional<CheckPage> check = page.check();
    doubt.show(
        check.map(CheckPage::doubts).orElse(List.of()),
        check.flatMap(CheckPage::firstInDoubt).isPresent());
    card.setVisible(check.isPresent());
    clear.setVisible(check.isEmpty());
    check.ifPresent(now -> card.show(now, stopped));
    if (check.isEmpty()) {
      preparation.rest();
    }
    clear.show(model.leftLast().get(), page.ruled(), page.proving().stopped() || stopped);
    acts.show(page);
    makeRoom();
    askForFigures();
  }

  /**
   * Where a message stands: above the check; below the field where bibs are typed while the line is
   * not clear, which takes the room above.
   */
  private void tell(boolean stopped) {
    Pane place = stopped ? toldBelow : told;
    if (notice.getParent() != place) {
      place.getChildren().setAll(notice, callAllTheSame, enterLate);
      notice.narrow(stopped);
    }
  }

  private void offer() {
    boolean grounds = model.grounds().get().isPresent();
    boolean late = model.unknown().get().isPresent();
    offer(callAllTheSame, grounds);
    offer(enterLate, late);
    // All have the same key, and what is on offer goes first
    goTo.setDisable(grounds || late);
  }

  private static void offer(KeyButton button, boolean offered) {
    button.setVisible(offered);
    button.setManaged(offered);
    button.setDisable(!offered);
  }

  /**
   * Opens the panel for bow and arrow where the rule lacks a figure: once for each check, and not
   * over another panel.
   */
  private void askForFigures() {
    Optional<CheckPage> check = model.check();
    boolean uppermost = root.getScene() != null && !root.isDisabled();
    if (uppermost
        && check.filter(c -> c.preparation().missing()).isPresent()
        && check.get().number() != askedFor) {
      askedFor = check.get().number();
      figuresPanel.run();
    }
  }

  /**
   * Strips above the check, what it asks of bow and arrow, and advice or how to come to it take
   * their room from the reading.
   */
  private void makeRoom() {
    long strips =
        Stream.of(stop, stuck, told, refused, doubt, proving).filter(Node::isManaged).count();
    boolean prepares = model.check().filter(check -> check.preparation().any()).isPresent();
    boolean advises =
        model
            .check()
            .filter(check -> check.advice().isPresent() || check.wantsWeighing())
            .isPresent();
    LinePage page = model.page().get();
    boolean urgent = page != null && page.stopWaits();
    long crowd =
        (urgent ? 2 : Math.min(strips, 2))
            + Stream.of(prepares, advises).filter(one -> one).count();
    root.pseudoClassStateChanged(CROWDED, crowd > 0);
    root.pseudoClassStateChanged(PACKED, crowd > 1);
  }

  /**
   * Stops the line for safety, from whichever screen.
   *
   * @param show leads to this one, where why is asked and what hindered it is told
   */
  public void stop(Runnable show) {
    if (!model.stopped()) {
      show.run();
      stopNow.run();
    }
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    column.focus();
    askForFigures();
  }

  @Override
  public boolean press(KeyCode code) {
    if (code == KeyCode.ENTER) {
      model.enter();
      return true;
    }
    if (code == KeyCode.ESCAPE) {
      model.dismiss();
      focus();
      return true;
    }
    return keys.press(code);
  }

  @Override
  public void typed(String text) {
    column.typed(text);
  }
}
