package lanewarden.kiosk.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.form.ChoiceEntry;
import lanewarden.kiosk.form.FormField;
import lanewarden.kiosk.form.TextEntry;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.station.RuleFault;
import lanewarden.station.RuleKey;

/** The form of the open section: every key that means something there, with what is wrong. */
final class RuleForm extends ScrollPane {
  private final RuleBookViewModel model;
  private final Texts texts;
  private final VBox body = new VBox();
  private final VBox strangers = new VBox();
  private final List<Group> groups = new ArrayList<>();

  private record Shown(RuleKey key, FormField field, boolean ofEvent, boolean ofDivision) {}

  private record Group(Label title, List<Shown> fields) {}

  RuleForm(RuleBookViewModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    strangers.getStyleClass().add("form-strangers");
    body.getChildren().add(strangers);
    for (FormGroup group : FormGroup.values()) {
      add(group);
    }
    body.getStyleClass().add("form");
    setContent(body);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setVbarPolicy(ScrollBarPolicy.ALWAYS);
    setFocusTraversable(false);
    getStyleClass().add("form-scroll");
    model.draft().addListener((all, before, now) -> refresh());
    model
        .section()
        .addListener(
            (all, before, now) -> {
              refresh();
              setVvalue(0);
            });
    refresh();
  }

  private void add(FormGroup group) {
    Label title = new Label();
    title.setText(texts.of(group.title()));
    title.getStyleClass().add("form-group");
    body.getChildren().add(title);
    List<Shown> fields = new ArrayList<>();
    for (FormGroup.Line line : group.lines()) {
      boolean first = group == FormGroup.DIVISION;
      boolean edition = line.key() == RuleKey.EDITION;
      String id = first && edition ? "event-edition" : line.key().word();
      String name = texts.of(line.name());
      String example = texts.of(line.example());
      FormField field = new FormField(id, name, example, entry(line.key(), example));
      fields.add(
          new Shown(line.key(), field, first && line.key() != RuleKey.CODE, !(first && edition)));
      field.heightProperty().addListener((all, before, now) -> keepInView(field));
      body.getChildren().add(field);
    }
    groups.add(new Group(title, fields));
  }

  /** What is wrong with what is being typed appears below it, where it must be seen. */
  private void keepInView(FormField field) {
    double room = getViewportBounds().getHeight();
    double hidden = body.getHeight() - room;
    Node focused = getScene() == null ? null : getScene().getFocusOwner();
    if (hidden <= 0 || focused == null || !isWithin(field, focused)) {
      return;
    }
    double bottom = field.getBoundsInParent().getMaxY();
    if (bottom > getVvalue() * hidden + room) {
      setVvalue(Math.min(1, (bottom - room) / hidden));
    }
  }

  private static boolean isWithin(FormField field, Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at.equals(field)) {
        return true;
      }
    }
    return false;
  }

  private FormField.Entry entry(RuleKey key, String example) {
    return switch (key.kind()) {
      case CHOICE -> new ChoiceEntry(key.words(), usual(key), false, t -> model.type(key, t));
      case CHOICES -> new ChoiceEntry(key.words(), "", true, t -> model.type(key, t));
      case LINES -> new TextEntry(true, example, List.of(), t -> model.type(key, t));
      default -> new TextEntry(false, example, key.words(), t -> model.type(key, t));
    };
  }

  /** Where nothing is said, the first word holds; but how to decide must be said. */
  private static String usual(RuleKey key) {
    return switch (key) {
      case WHO, BOUND, ENERGY_BOUND, DRAW_WEIGHT, ACCEPTANCE -> key.words().get(0);
      default -> "";
    };
  }

  private void refresh() {
    List<RuleFault> faults = model.faults();
    boolean division = model.isDivision();
    for (Group group : groups) {
      boolean any = false;
      for (Shown shown : group.fields()) {
        boolean here =
            (division ? shown.ofDivision() : shown.ofEvent()) && model.shows(shown.key());
        any |= here;
        shown.field().setShown(here);
        if (here) {
          shown.field().show(model.text(shown.key()));
          shown
              .field()
              .show(
                  faults.stream()
                      .filter(fault -> fault.isAbout(shown.key()))
                      .map(fault -> texts.of(fault.inWords()))
                      .toList());
        }
      }
      group.title().setVisible(any);
      group.title().setManaged(any);
    }
    strangers.getChildren().setAll(model.faultsOfNoField().stream().map(this::stranger).toList());
    groups.get(0).title().setText(texts.of(division ? "group.division" : "group.event"));
  }

  /** A fault that no field can show: a key that no rule book has, or something above them. */
  private Node stranger(RuleFault fault) {
    Label words = new Label(texts.of(fault.inWords()));
    WrappedWords.in(words);
    words.setMinHeight(USE_PREF_SIZE);
    VBox box = new VBox(words);
    box.getStyleClass().add("form-stranger");
    fault
        .key()
        .ifPresent(
            key -> {
              Button out = new Button(texts.of("form.take-out", key));
              out.setOnAction(e -> model.takeOut(key));
              box.getChildren().add(out);
            });
    return box;
  }

  /** The first field that can be typed in. */
  Node first() {
    Shown first =
        groups.get(0).fields().stream()
            .filter(f -> f.field().isVisible())
            .findFirst()
            .orElseThrow();
    return Objects.requireNonNull(first.field().lookup(".text-field"));
  }
}
