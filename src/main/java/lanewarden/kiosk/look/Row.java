package lanewarden.kiosk.look;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/**
 * A row that goes on in a further line where it would otherwise shorten a button or squeeze words;
 * as long as all fits it is a plain row.
 */
public class Row extends HBox {

  /** What is read or typed gets no narrower in a shared line, in heights of its letters. */
  private static final double LEAST_WORDS = 9;

  /** Of these, in the order of reading. */
  public Row(Node... nodes) {
    super(nodes);
  }

  /** What stands in one line, and how wide each of it is. */
  private record Line(List<Node> nodes, List<Double> widths) {
    double height() {
      return highest(Node::prefHeight);
    }

    double leastHeight() {
      return highest(Node::minHeight);
    }

    private double highest(ToDoubleBiFunction<Node, Double> heightOf) {
      double height = 0;
      for (int i = 0; i < nodes.size(); i++) {
        height = Math.max(height, heightOf.applyAsDouble(nodes.get(i), widths.get(i)));
      }
      return height;
    }
  }

  private double inner(double width) {
    Insets insets = getInsets();
    return snapSizeX(width) - snapSpaceX(insets.getLeft()) - snapSpaceX(insets.getRight());
  }

  private static boolean grows(Node node) {
    return HBox.getHgrow(node) == Priority.ALWAYS;
  }

  private double need(Node node) {
    double least = node.minWidth(-1);
    if (node instanceof KeyButton button) {
      return snapSizeX(Math.max(least, button.wordsWidth()));
    }
    if (node instanceof Button) {
      return snapSizeX(node.prefWidth(-1));
    }
    return grows(node) || (node instanceof Labeled words && words.isWrapText())
        ? snapSizeX(Math.max(least, Math.min(node.prefWidth(-1), LEAST_WORDS * letter(node))))
        : least;
  }

  private static double letter(Node node) {
    if (node instanceof Labeled label) {
      return label.getFont().getSize();
    }
    Node input = node instanceof TextInputControl ? node : node.lookup(".text-input");
    if (input instanceof TextInputControl typed) {
      return typed.getFont().getSize();
    }
    return node.lookup(".label") instanceof Labeled label ? label.getFont().getSize() : 0;
  }

  private double gap() {
    return snapSpaceX(getSpacing());
  }

  private double needed() {
    List<Node> all = getManagedChildren();
    return all.stream().mapToDouble(this::need).sum() + gap() * Math.max(0, all.size() - 1);
  }

  private boolean wraps(double width) {
    return width >= 0 && (needed() > inner(width) + 1 || cuts(inner(width)));
  }

  /**
   * Whether a plain row would shorten a button, in which all that grows gets an equal share, or
   * would take as much from short words as from long ones.
   */
  private boolean cuts(double room) {
    List<Node> all = getManagedChildren();
    double liked = all.stream().mapToDouble(node -> node.prefWidth(-1)).sum();
    double rest = room - liked - gap() * Math.max(0, all.size() - 1);
    double share = rest / Math.max(1, all.stream().filter(Row::grows).count());
    return rest < 0
        || all.stream()
            .filter(KeyButton.class::isInstance)
            .anyMatch(node -> need(node) > node.prefWidth(-1) + (grows(node) ? share : 0) + 1);
  }

  private List<Line> lines(double room) {
    List<Line> lines = new ArrayList<>();
    List<Node> line = new ArrayList<>();
    double used = 0;
    for (Node node : getManagedChildren()) {
      double need = need(node);
      if (!line.isEmpty() && used + gap() + need > room) {
        lines.add(shared(line, room));
        line = new ArrayList<>();
        used = 0;
      }
      used += need + (line.isEmpty() ? 0 : gap());
      line.add(node);
    }
    if (!line.isEmpty()) {
      lines.add(shared(line, room));
    }
    return lines;
  }

  /** First everything gets what it would like, then what grows shares the rest. */
  private Line shared(List<Node> nodes, double room) {
    List<Double> widths = new ArrayList<>();
    double rest = room - gap() * (nodes.size() - 1);
    for (Node node : nodes) {
      double width = Math.min(need(node), room);
      widths.add(width);
      rest -= width;
    }
    for (int i = 0; i < nodes.size(); i++) {
      double more = Math.min(rest, nodes.get(i).prefWidth(-1) - widths.get(i));
      if (more > 0 && !grows(nodes.get(i))) {
        widths.set(i, widths.get(i) + more);
        rest -= more;
      }
    }
    long growing = nodes.stream().filter(Row::grows).count();
    for (int i = 0; i < nodes.size() && rest > 0; i++) {
      if (grows(nodes.get(i))) {
        widths.set(i, widths.get(i) + Math.floor(rest / growing));
      }
    }
    return new Line(List.copyOf(nodes), widths);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  /** No wider than what is widest: the rest goes on in further lines. */
  @Override
  protected double computeMinWidth(double height) {
    Insets insets = getInsets();
    return insets.getLeft()
        + insets.getRight()
        + getManagedChildren().stream().mapToDouble(node -> node.minWidth(-1)).max().orElse(0);
  }

  @Override
  protected double computePrefHeight(double width) {
    return wraps(width)
        ? height(lines(inner(width)), Line::height)
        : super.computePrefHeight(width);
  }

  /** Several lines are as high as they like to be; a single one can be squeezed as a plain row. */
  @Override
  protected double computeMinHeight(double width) {
    if (!wraps(width)) {
      return super.computeMinHeight(width);
    }
    List<Line> lines = lines(inner(width));
    return height(lines, lines.size() == 1 ? Line::leastHeight : Line::height);
  }

  private double height(List<Line> lines, ToDoubleFunction<Line> heightOf) {
    Insets insets = getInsets();
    return snapSpaceY(insets.getTop())
        + snapSpaceY(insets.getBottom())
        + lines.stream().mapToDouble(line -> snapSizeY(heightOf.applyAsDouble(line))).sum()
        + gap() * (lines.size() - 1);
  }

  @Override
  protected void layoutChildren() {
    if (!wraps(getWidth())) {
      super.layoutChildren();
      return;
    }
    Insets insets = getInsets();
    double y = snapSpaceY(insets.getTop());
    double inner = snapSizeY(getHeight()) - y - snapSpaceY(insets.getBottom());
    List<Line> lines = lines(inner(getWidth()));
    for (Line line : lines) {
      double x = snapSpaceX(insets.getLeft());
      double height = lines.size() == 1 ? inner : snapSizeY(line.height());
      for (int i = 0; i < line.nodes().size(); i++) {
        Node node = line.nodes().get(i);
        layoutInArea(
            node,
            x,
            y,
            line.widths().get(i),
            height,
            -1,
            getAlignment().getHpos(),
            getAlignment().getVpos());
        x += line.widths().get(i) + gap();
      }
      y += height + gap();
    }
  }
}
