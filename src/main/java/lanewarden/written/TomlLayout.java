package lanewarden.written;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import lanewarden.written.TomlPage.Place;
import lanewarden.written.TomlScan.Kind;
import lanewarden.written.TomlScan.Piece;

/**
 * What belongs to what in a TOML text: the keys to their table, the comments to their key. Pieces
 * and blocks are named by their index. Immutable.
 */
final class TomlLayout {

  /**
   * A table's pieces.
   *
   * @param head the piece {@code [table]}; -1 for the top level
   * @param end after its last piece
   */
  record Block(int head, int end) {

    int first() {
      return head + 1;
    }
  }

  private final String text;
  private final List<Piece> pieces;

  TomlLayout(String text) {
    this.text = text;
    this.pieces = new TomlScan(text).pieces();
  }

  Piece piece(int index) {
    return pieces.get(index);
  }

  /** Every table with exactly this name, in the order of the file; the top level by no name. */
  List<Block> blocks(TablePath table) {
    if (table.name() == null) {
      return List.of(new Block(-1, headFrom(0)));
    }
    Kind kind = table.nth() == 0 ? Kind.TABLE : Kind.ONE_OF_TABLES;
    List<String> name = List.of(table.name());
    return IntStream.range(0, pieces.size())
        .filter(i -> pieces.get(i).kind() == kind && pieces.get(i).name().equals(name))
        .mapToObj(i -> new Block(i, headFrom(i + 1)))
        .toList();
  }

  /** The tables within one of several tables, such as {@code [division.more]}. */
  List<Piece> within(Block block) {
    List<String> name = pieces.get(block.head()).name();
    List<Piece> within = new ArrayList<>();
    for (Piece piece : pieces.subList(block.end(), pieces.size())) {
      if (piece.isTable() && piece.name().equals(name)) {
        break;
      }
      if (piece.isTable() && piece.name().subList(0, 1).equals(name)) {
        within.add(piece);
      }
    }
    return within;
  }

  /** The entry of this key, written on its own and not as part of a dotted key. */
  OptionalInt entry(Block block, String key) {
    return entries(block).filter(i -> pieces.get(i).name().equals(List.of(key))).findFirst();
  }

  IntStream entries(Block block) {
    return IntStream.range(block.first(), block.end())
        .filter(i -> pieces.get(i).kind() == Kind.ENTRY);
  }

  /**
   * After the comment lines that go on with the comment behind an entry or a table: those directly
   * below it that stand further in than it does and further in than what follows them.
   */
  int afterItsComments(int index) {
    int after = index + 1;
    if (!text.substring(piece(index).end(), piece(index).to()).contains("#")) {
      return after;
    }
    while (kind(after) == Kind.COMMENT && column(after) > column(index)) {
      after++;
    }
    boolean ofNext = kind(after) != Kind.BLANK && column(after) >= column(after - 1);
    return ofNext ? index + 1 : after;
  }

  /** The first of the comment lines directly above, without a blank line between. */
  int commentsAbove(int index) {
    int first = index;
    while (kind(first - 1) == Kind.COMMENT) {
      first--;
    }
    return kind(first - 1) == Kind.BLANK || first == 0
        ? first
        : Math.max(first, afterItsComments(first - 1));
  }

  /**
   * Whether the comment lines above an entry are surely about it alone: none stands directly below
   * a table's line or at the top of the file, where it may be about all that follows; no other
   * entry follows directly, which they may be about too; and no key or table is parked in them.
   */
  boolean commentsAreOf(int entry) {
    int first = commentsAbove(entry);
    boolean aboutMore = first == 0 || pieces.get(first - 1).isTable();
    return !aboutMore && kind(afterItsComments(entry)) != Kind.ENTRY && !parked(first, entry);
  }

  /** Whether a key or a table stands in the comments, put out of use for later. */
  boolean parked(int first, int end) {
    return pieces.subList(first, end).stream()
        .map(piece -> text.substring(piece.start(), piece.to()))
        .anyMatch(line -> line.matches("(?s)#+[ \\t]*(\\[|[\\w\"'.-]+[ \\t]*=).*"));
  }

  /**
   * After the last line that is surely a {@code [[table]]}'s own: its last key with its comments,
   * and the comment lines directly below unless they lead over to the next table.
   */
  int ownEnd(Block block) {
    int last = entries(block).reduce((one, other) -> other).orElse(block.head());
    int end = afterItsComments(last);
    int comments = end;
    while (kind(comments) == Kind.COMMENT) {
      comments++;
    }
    return comments == block.end() && comments < pieces.size() ? end : comments;
  }

  /** After the blank lines from here on. */
  int afterBlanks(int index) {
    int after = index;
    while (after < pieces.size() && kind(after) == Kind.BLANK) {
      after++;
    }
    return after;
  }

  /** The first of the blank lines directly above. */
  int blanksAbove(int index) {
    int first = index;
    while (first > 0 && kind(first - 1) == Kind.BLANK) {
      first--;
    }
    return first;
  }

  /** Before the first table and the comments directly above it. */
  int beforeTables() {
    return commentsAbove(headFrom(0));
  }

  /**
   * The equals sign of a new key with the spaces around it as they are in its table: in the column
   * of the others if they all have one, else as one of them has it.
   *
   * @param like the entry to do as; a table or less than 0 if there is none
   * @param nameLength how long the new key is as it is written
   */
  String equalsSign(Block block, int like, int nameLength) {
    if (kind(like) != Kind.ENTRY) {
      return " = ";
    }
    Piece other = pieces.get(like);
    int equals = equalsOf(other);
    boolean column =
        entries(block).map(i -> equalsOf(pieces.get(i)) - pieces.get(i).start()).distinct().count()
                == 1
            && entries(block).map(i -> nameLength(pieces.get(i))).distinct().count() > 1;
    String before = text.substring(other.nameEnd(), equals);
    String after = text.substring(equals + 1, other.value());
    String space = before.length() > 1 ? " " : before;
    return (column ? " ".repeat(Math.max(1, equals - other.start() - nameLength)) : space)
        + "="
        + (after.length() > 1 ? " " : after);
  }

  private int equalsOf(Piece entry) {
    return text.indexOf('=', entry.nameEnd());
  }

  private static int nameLength(Piece entry) {
    return entry.nameEnd() - entry.start();
  }

  /** Where a piece begins in the text; the text's end for the one after the last. */
  int offset(int index) {
    return index < pieces.size() ? pieces.get(index).from() : text.length();
  }

  int size() {
    return pieces.size();
  }

  /** The spaces in front of a piece. */
  String indent(int index) {
    return text.substring(pieces.get(index).from(), pieces.get(index).start());
  }

  /** The line end that a line put in here gets: that of the line above, else the file's first. */
  String lineEnd(int offset) {
    int above = text.lastIndexOf('\n', offset - 1);
    int end = above < 0 ? text.indexOf('\n') : above;
    return end > 0 && text.charAt(end - 1) == '\r' ? "\r\n" : "\n";
  }

  /** Line and column of a character. */
  Place place(int offset) {
    int line = 1 + (int) text.substring(0, offset).chars().filter(c -> c == '\n').count();
    int lineStart = text.lastIndexOf('\n', offset - 1) + 1;
    return new Place(line, text.codePointCount(lineStart, offset) + 1);
  }

  private int column(int index) {
    return pieces.get(index).start() - pieces.get(index).from();
  }

  /** Blank before the first piece and after the last. */
  private Kind kind(int index) {
    return index < 0 || index >= pieces.size() ? Kind.BLANK : pieces.get(index).kind();
  }

  private int headFrom(int index) {
    int head = index;
    while (head < pieces.size() && !pieces.get(head).isTable()) {
      head++;
    }
    return head;
  }
}
