package lanewarden.kiosk.form;

import java.util.List;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.WrappedWords;

/** One field of a form: its name, what is typed or chosen in it, and what is wrong with that. */
public final class FormField extends VBox {
  private static final PseudoClass FAULTY = PseudoClass.getPseudoClass("faulty");

  /** What takes the typing of one field. */
  public interface Entry {
    /** What is shown in the form. */
    Node node();

    /** Shows what stands there now, without telling of it as typed. */
    void show(String text);

    /** Says what the field is, and what is wrong with it, to those who do not see it. */
    void describe(String words);
  }

  private final String name;
  private final String example;
  private final Entry entry;
  private final Label fault = new Label();
  private final HBox faultLine;

  /**
   * @param id by which its parts are found: {@code field-…} and {@code fault-…}
   * @param example what may stand there, said to those who do not see the field
   */
  public FormField(String id, String name, String example, Entry entry) {
    this.name = name;
    this.example = example;
    this.entry = entry;
    Label label = new Label(name);
    label.getStyleClass().add("form-name");
    WrappedWords.in(label);
    label.setLabelFor(entry.node());
    HBox.setHgrow(entry.node(), Priority.ALWAYS);
    Row row = new Row(label, entry.node());
    row.getStyleClass().add("form-row");
    Mark mark = new Mark();
    mark.show(Sign.OVER);
    WrappedWords.in(fault);
    fault.setMinHeight(USE_PREF_SIZE);
    fault.setId("fault-" + id);
    HBox.setHgrow(fault, Priority.ALWAYS);
    faultLine = new HBox(mark, fault);
    faultLine.getStyleClass().add("form-fault");
    entry.node().setId("field-" + id);
    getChildren().addAll(row, faultLine);
    getStyleClass().add("form-field");
    show(List.of());
  }

  /** Shows what stands in the field. */
  public void show(String text) {
    entry.show(text);
  }

  /** Shows what is wrong with it. */
  public void show(List<String> faults) {
    fault.setText(String.join("\n", faults));
    faultLine.setVisible(!faults.isEmpty());
    faultLine.setManaged(!faults.isEmpty());
    entry.node().pseudoClassStateChanged(FAULTY, !faults.isEmpty());
    entry.describe(
        faults.isEmpty() ? name + ". " + example : name + ". " + String.join(" ", faults));
  }

  /** Shows or hides the whole field. */
  public void setShown(boolean shown) {
    setVisible(shown);
    setManaged(shown);
  }

  /** Tells of what a person types, but not of what is only shown. */
  public static final class Typist {
    private final Consumer<String> typed;
    private boolean showing;

    /**
     * @param typed takes what was typed
     */
    public Typist(Consumer<String> typed) {
      this.typed = typed;
    }

    /** Shows something that nobody typed. */
    public void showing(Runnable show) {
      showing = true;
      try {
        show.run();
      } finally {
        showing = false;
      }
    }

    /** Takes what stands in the field now. */
    public void typed(String text) {
      if (!showing) {
        typed.accept(text);
      }
    }
  }
}
