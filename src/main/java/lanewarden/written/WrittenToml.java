package lanewarden.written;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import lanewarden.quantity.Sentence;
import lanewarden.written.TomlLayout.Block;
import lanewarden.written.TomlPage.Place;
import lanewarden.written.TomlScan.Piece;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * A TOML file being changed key by key with everything else kept: comments, order, blank lines,
 * alignment and line ends that a change does not touch stay byte for byte.
 *
 * <p>Immutable: each change gives a new one, which is TOML again, and leaves this one as it was. A
 * change that cannot be made without losing something is refused with its place and mend.
 */
public final class WrittenToml {
  private static final String MARK = "\uFEFF";

  private final String file;
  private final String mark;
  private final String text;
  private final TomlParseResult toml;
  private final TomlLayout layout;

  private WrittenToml(String file, String mark, String text) throws WrittenRefused {
    this.file = file;
    this.mark = mark;
    this.text = text;
    this.toml = TomlPage.parse(file, text);
    this.layout = new TomlLayout(text);
  }

  /**
   * Reads the file.
   *
   * @param file for the faults; nothing is opened
   * @throws WrittenRefused if it is too large, not UTF-8 or not TOML, with every syntax fault
   */
  public static WrittenToml read(String file, byte[] utf8) throws WrittenRefused {
    String text = WrittenText.of(file, utf8);
    boolean marked = new String(utf8, StandardCharsets.UTF_8).startsWith(MARK);
    return new WrittenToml(file, marked ? MARK : "", text);
  }

  /** The file's bytes: those read, with the changes made. */
  public byte[] utf8() {
    return (mark + text).getBytes(StandardCharsets.UTF_8);
  }

  /** How many {@code [[name]]} tables there are. */
  public int count(String name) {
    return layout.blocks(TablePath.nth(name, 1)).size();
  }

  /**
   * What a key holds: a text, a {@link Long}, a {@link java.time.LocalDate}, a {@link List}, or
   * whatever else TOML has; empty where the key is missing.
   *
   * @throws IndexOutOfBoundsException if the file has not so many tables of this name
   */
  public Optional<Object> value(TablePath table, String key) {
    if (table.name() != null && table.nth() == 0 && !toml.isTable(List.of(table.name()))) {
      return Optional.empty();
    }
    Object value = tree(table).get(List.of(key));
    return Optional.ofNullable(value instanceof TomlArray array ? array.toList() : value);
  }

  /**
   * Gives a key a value. A comment behind the old value stays, at its column where there is room; a
   * value that is the same already stays as it is written. A new key is put behind the nearest key
   * that stands before it in {@code order}; first in its table if none of them is there; and last
   * in its table if {@code order} does not name it.
   *
   * @param order the keys in the order in which a person expects them
   * @throws WrittenRefused if the table or the key is written in a way that cannot be changed here
   * @throws IndexOutOfBoundsException if the file has not so many tables of this name
   */
  public WrittenToml set(TablePath table, String key, Literal literal, List<String> order)
      throws WrittenRefused {
    Block block = block(table);
    OptionalInt entry = layout.entry(block, key);
    return entry.isPresent()
        ? replace(table, key, layout.piece(entry.getAsInt()), literal)
        : put(table, block, key, literal, order);
  }

  /**
   * Takes a key out, with the comment behind it and those that go on below it. The comment lines
   * directly above go with it only where they can be about nothing else; otherwise they stay: not
   * at the top of the file or directly below a table's line, not where another key follows
   * directly, and not where a key is parked in them.
   *
   * @return this, if the key is not there
   * @throws WrittenRefused if the table or the key is written in a way that cannot be changed here
   * @throws IndexOutOfBoundsException if the file has not so many tables of this name
   */
  public WrittenToml remove(TablePath table, String key) throws WrittenRefused {
    Block block = block(table);
    OptionalInt found = layout.entry(block, key);
    if (found.isEmpty()) {
      refuseIfTaken(table, key);
      return this;
    }
    int entry = found.getAsInt();
    int first = layout.commentsAreOf(entry) ? layout.commentsAbove(entry) : entry;
    int from = layout.offset(first);
    return cut(from, layout.offset(layout.afterItsComments(entry)));
  }

  /**
   * Puts an empty {@code [[name]]} behind the last one; at the end of the file if there is none.
   *
   * @throws WrittenRefused if tables of this name cannot be put behind each other here
   */
  public WrittenToml add(String name) throws WrittenRefused {
    int there = layout.blocks(TablePath.nth(name, 1)).size();
    if (there > 0) {
      return addAfter(TablePath.nth(name, there));
    }
    if (toml.contains(List.of(name))) {
      throw refusal(
          keyOf(TablePath.of(name)),
          "[[" + name + "]] on a line of its own",
          "it written in another way",
          placeOf(toml, name));
    }
    int end = layout.offset(layout.blanksAbove(layout.size()));
    return putTable(end, "[[" + named(name) + "]]");
  }

  /**
   * Puts an empty table of the same name behind the n-th.
   *
   * @throws WrittenRefused if it holds further tables, or is no {@code [[table]]}
   * @throws IndexOutOfBoundsException if the file has not so many tables of this name
   */
  public WrittenToml addAfter(TablePath nth) throws WrittenRefused {
    Block block = oneOfTables(nth);
    Piece head = layout.piece(block.head());
    return putTable(
        layout.offset(layout.ownEnd(block)),
        layout.indent(block.head()) + text.substring(head.start(), head.end()));
  }

  /**
   * Puts a copy of the n-th table behind it, with the comments in it but without those above it,
   * which say what the old one is.
   *
   * @throws WrittenRefused if it holds further tables, or is no {@code [[table]]}
   * @throws IndexOutOfBoundsException if the file has not so many tables of this name
   */
  public WrittenToml copy(TablePath nth) throws WrittenRefused {
    Block block = oneOfTables(nth);
    int end = layout.offset(layout.ownEnd(block));
    return putTable(end, withoutLineEnd(text.substring(layout.offset(block.head()), end)));
  }

  /**
   * Takes the n-th table out with its keys, the comments in it, and the blank lines behind it
   * (those before it, if nothing follows). The comment lines directly above its line go with it,
   * unless a key is parked in them; those above the first table only where every other table of the
   * name has some too, since they may else be about all of them.
   *
   * @throws WrittenRefused if it holds further tables, or is no {@code [[table]]}
   * @throws IndexOutOfBoundsException if the file has not so many tables of this name
   */
  public WrittenToml remove(TablePath nth) throws WrittenRefused {
    Block block = oneOfTables(nth);
    int first = layout.commentsAbove(block.head());
    if (layout.parked(first, block.head()) || (nth.nth() == 1 && !othersAreHeaded(nth))) {
      first = block.head();
    }
    int end = layout.ownEnd(block);
    int next = layout.afterBlanks(end);
    return next == layout.size()
        ? cut(layout.offset(layout.blanksAbove(first)), layout.offset(end))
        : cut(layout.offset(first), layout.offset(next));
  }

  private boolean othersAreHeaded(TablePath nth) {
    List<Block> all = layout.blocks(nth);
    return all.size() > 1
        && all.stream().allMatch(other -> layout.commentsAbove(other.head()) < other.head());
  }

  private WrittenToml replace(TablePath table, String key, Piece entry, Literal literal)
      throws WrittenRefused {
    Object was = tree(table).get(List.of(key));
    String old = text.substring(entry.value(), entry.end());
    String value = literal.toml();
    if (literal.value().equals(was)) {
      return this;
    }
    if (was instanceof TomlArray array && literal instanceof Literal.Texts texts) {
      value =
          ListRewriting.of(old, array.toList(), texts.value())
              .orElseThrow(
                  () ->
                      refusal(
                          new KeyPlace(table, key, 0),
                          "a list with one item a line",
                          "comments between items that share a line",
                          layout.place(entry.start())));
    }
    int comment = entry.end();
    while (comment < text.length() && text.charAt(comment) == ' ') {
      comment++;
    }
    int gap = comment - entry.end();
    boolean column = gap > 1 && text.startsWith("#", comment) && !(old + value).contains("\n");
    int spaces = column ? Math.max(1, gap + length(old) - length(value)) : gap;
    return spliced(entry.value(), comment, value + " ".repeat(spaces));
  }

  private WrittenToml put(
      TablePath table, Block block, String key, Literal literal, List<String> order)
      throws WrittenRefused {
    refuseIfTaken(table, key);
    OptionalInt above = OptionalInt.empty();
    for (int i = order.indexOf(key) - 1; i >= 0 && above.isEmpty(); i--) {
      above = layout.entry(block, order.get(i));
    }
    if (above.isEmpty() && (!order.contains(key) || block.head() < 0)) {
      above = layout.entries(block).reduce((one, other) -> other);
    }
    int piece = above.orElse(block.head());
    int at = piece < 0 ? layout.beforeTables() : layout.afterItsComments(piece);
    int like = above.orElse(layout.entries(block).findFirst().orElse(block.head()));
    String indent = like < 0 ? "" : layout.indent(like);
    String name = named(key);
    String equals = layout.equalsSign(block, like, name.length());
    return inserted(layout.offset(at), indent + name + equals + literal.toml());
  }

  /** A key written with dots or as a table has no line of its own to change. */
  private void refuseIfTaken(TablePath table, String key) throws WrittenRefused {
    TomlTable tree = tree(table);
    if (tree.contains(List.of(key))) {
      throw refusal(
          new KeyPlace(table, key, 0),
          key + " = … on a line of its own",
          "it written with dots or as a table",
          placeOf(tree, key));
    }
  }

  private Block block(TablePath table) throws WrittenRefused {
    List<Block> blocks = layout.blocks(table);
    int index = Math.max(0, table.nth() - 1);
    if (index < blocks.size()) {
      return blocks.get(index);
    }
    String name = nameOf(table);
    boolean there = toml.contains(List.of(name));
    if (table.nth() > 0 && (!there || !blocks.isEmpty())) {
      throw new IndexOutOfBoundsException(file + " has no " + table);
    }
    throw refusal(
        keyOf(table),
        table.nth() > 0 ? "[[" + name + "]] on a line of its own" : "[" + name + "]",
        there ? "it written in another way" : "nothing",
        placeOf(toml, name));
  }

  private Block oneOfTables(TablePath nth) throws WrittenRefused {
    if (nth.nth() < 1) {
      throw new IllegalArgumentException("not one of several tables: " + nth);
    }
    Block block = block(nth);
    List<Piece> within = layout.within(block);
    if (!within.isEmpty()) {
      Piece first = within.get(0);
      String found = "the table " + String.join(".", first.name());
      throw refusal(keyOf(nth), "a table that holds no others", found, layout.place(first.start()));
    }
    return block;
  }

  private TomlTable tree(TablePath table) {
    if (table.name() == null) {
      return toml;
    }
    List<String> name = List.of(table.name());
    return Objects.requireNonNull(
        table.nth() == 0
            ? toml.getTable(name)
            : toml.getArrayOrEmpty(name).getTable(table.nth() - 1));
  }

  private Place placeOf(TomlTable tree, String key) {
    TomlPosition at = tree.inputPositionOf(List.of(key));
    return at == null ? new Place(1, 1) : new Place(at.line(), at.column());
  }

  private WrittenRefused refusal(KeyPlace place, String expected, String found, Place at) {
    String mend = "change it with a text editor; nothing was changed";
    return WrittenRefused.because(
        new WrittenFault(
            file,
            at.line(),
            at.column(),
            place,
            Sentence.verbatim(expected),
            Sentence.verbatim(found),
            Sentence.verbatim(mend)));
  }

  /** A table behind a blank line. */
  private WrittenToml putTable(int at, String lines) throws WrittenRefused {
    return inserted(at, (at == 0 ? "" : layout.lineEnd(at)) + lines);
  }

  private WrittenToml inserted(int at, String lines) throws WrittenRefused {
    boolean open = at > 0 && text.charAt(at - 1) != '\n';
    return spliced(at, at, open ? layout.lineEnd(at) + lines : lines + layout.lineEnd(at));
  }

  private WrittenToml cut(int from, int to) throws WrittenRefused {
    boolean open = to == text.length() && !text.endsWith("\n");
    int end = text.lastIndexOf(layout.lineEnd(from), from - 1);
    return spliced(open && end >= 0 ? end : from, to, "");
  }

  private WrittenToml spliced(int from, int to, String by) throws WrittenRefused {
    String changed = mark + text.substring(0, from) + by + text.substring(to);
    return read(file, changed.getBytes(StandardCharsets.UTF_8));
  }

  /** The key by which the top level holds the table. */
  private static KeyPlace keyOf(TablePath table) {
    return new KeyPlace(TablePath.top(), nameOf(table), table.nth());
  }

  private static String nameOf(TablePath table) {
    return Objects.requireNonNull(table.name(), "the top level is always there");
  }

  private static String named(String key) {
    return key.matches("[A-Za-z0-9_-]+") ? key : Literal.text(key).toml();
  }

  private static String withoutLineEnd(String lines) {
    return lines.replaceFirst("\\r?\\n\\z", "");
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
