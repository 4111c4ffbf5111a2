package lanewarden.audit.press;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Blocks under one another as one; the white around them is part of it. */
final class Stack implements Block {
  private final List<Placed> blocks;
  private final float end;

  /** A block and the white above it, in points. */
  record Placed(float white, Block block) {}

  /**
   * @param end the white under the last one
   */
  private Stack(List<Placed> blocks, float end) {
    this.blocks = List.copyOf(blocks);
    this.end = end;
  }

  /** No block at all. */
  static Stack empty() {
    return new Stack(List.of(), 0);
  }

  /** Takes the blocks of a stack. Owned by one thread. */
  static final class Pile implements Column {
    private final List<Placed> blocks = new ArrayList<>();
    private float white;

    @Override
    public void white(float points) {
      white = Math.max(white, points);
    }

    @Override
    public void add(Block block) {
      blocks.add(new Placed(Math.max(white, block.above()), block));
      white = block.below();
    }

    @Override
    public void addWhole(Stack stack) {
      stack.blocks.forEach(
          placed -> {
            white(placed.white);
            add(placed.block);
          });
      white(stack.end);
    }

    @Override
    public void anchor(String name) {
      throw new IllegalStateException("No bookmark leads into a table or a group: " + name);
    }

    Stack stack() {
      return new Stack(blocks, white);
    }
  }

  List<Placed> blocks() {
    return blocks;
  }

  /** The white under the last one. */
  float end() {
    return end;
  }

  @Override
  public float above() {
    return 0;
  }

  @Override
  public float below() {
    return 0;
  }

  @Override
  public void fit(float width) throws IOException {
    for (Placed placed : blocks) {
      placed.block.fit(width);
    }
  }

  @Override
  public float height() {
    float height = end;
    for (Placed placed : blocks) {
      height += placed.white + placed.block.height();
    }
    return height;
  }

  @Override
  public float least() {
    return height();
  }

  @Override
  public Optional<Block> draw(Sheet sheet, float x, float y, float room) throws IOException {
    float at = y;
    for (int i = 0; i < blocks.size(); i++) {
      Block block = blocks.get(i).block;
      at += blocks.get(i).white;
      float height = block.height();
      Optional<Block> rest = block.draw(sheet, x, at, y + room - at);
      if (rest.isPresent()) {
        List<Placed> left = new ArrayList<>(blocks.subList(i, blocks.size()));
        left.set(0, new Placed(0, rest.get()));
        return Optional.of(new Stack(left, end));
      }
      at += height;
    }
    return Optional.empty();
  }
}
