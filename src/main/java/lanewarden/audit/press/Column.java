package lanewarden.audit.press;

import java.io.IOException;

/** Takes blocks, each to stand under the one before. */
interface Column {
  /** At least so much white is to be left before what comes next, in points. */
  void white(float points);

  /** Adds a block. */
  void add(Block block) throws IOException;

  /** Adds blocks that are to stand on one page, where one is high enough. */
  void addWhole(Stack stack) throws IOException;

  /** What comes next is where bookmarks of this name lead to. */
  void anchor(String name);
}
