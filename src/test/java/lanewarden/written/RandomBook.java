package lanewarden.written;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** A TOML file as somebody with odd habits might write it, made from a seed. */
final class RandomBook {

  /** Every key that a table of the book may have. */
  static final List<String> KEYS =
      List.of("code", "name", "limit", "shots", "effective", "bands", "note", "decide", "voids");

  private static final List<String> COMMENTS =
      List.of(
          "# plain",
          "#",
          "# [[division]]",
          "# limit = \"290 ft/s\"",
          "## it says \"so\" and 'so' [ and { = ]]",
          "# 🏹 é");

  private static final List<String> VALUES =
      List.of(
          "\"plain\"",
          "\"a # b = c ]] [[division]] \\\" \\\\\"",
          "'single \\ # = ['",
          "\"\"",
          "''",
          "\"\"\"one line\"\"\"",
          "\"\"\"\n[[division]]\nname = \"no\" # no\n\\\"\\\"\\\" \"\"\"",
          "'''\n[event]\n# '' = \\'''",
          "\"\"\"two \"quotes\" at the end\"\"\"\"\"",
          "\"🏹 é\"",
          "7",
          "-1_000",
          "0x1F",
          "true",
          "1.5e3",
          "2026-03-01",
          "2026-03-01 08:00:00Z",
          "[]",
          "[ ]",
          "[\"a\", \"b\"]",
          "[ 'a # ]' ,\"b, c\" , ]",
          "[\n  \"a\", # first ]\n  # about b [\n  \"b\", # second\n  \"c\" # third\n]",
          "[\n\t\"a\",\n\t\"b\",\n]",
          "[\"a\", # of a\n \"b\"]",
          "[[1, 2], [\"]\"]]",
          "{ a = \"} # ]\", b = [1, 2] }");

  /** A line or more with what they say, if they say anything. */
  private record Bit(TablePath table, String key, String text) {}

  private final Random random;
  private final List<Bit> bits = new ArrayList<>();
  private final String mark;
  private int divisions;

  RandomBook(long seed) {
    // neighbouring seeds begin alike, so they are spread first
    random = new Random(seed * 0x9E3779B97F4A7C15L);
    mark = random.nextInt(4) == 0 ? "\uFEFF" : "";
    table(TablePath.top(), "");
    boolean eventLast = random.nextInt(4) == 0;
    if (!eventLast) {
      table(TablePath.of("event"), one("[event]", "[ event ]", "  [\"event\"]"));
    }
    int many = 1 + random.nextInt(4);
    for (int i = 1; i <= many; i++) {
      divisions = i;
      table(
          TablePath.nth("division", i),
          one("[[division]]", "[[ division ]]", "[['division']]", "\t[[division]]"));
    }
    if (eventLast) {
      table(TablePath.of("event"), "[event]");
    }
    boolean crlf = random.nextInt(3) == 0;
    boolean open = random.nextInt(3) == 0;
    bits.replaceAll(
        bit -> crlf ? new Bit(bit.table, bit.key, bit.text.replace("\n", "\r\n")) : bit);
    if (open) {
      Bit last = bits.remove(bits.size() - 1);
      bits.add(new Bit(last.table, last.key, last.text.replaceFirst("\r?\n\\z", "")));
    }
  }

  int divisions() {
    return divisions;
  }

  /** The byte-order mark in front of the text, or nothing. */
  String mark() {
    return mark;
  }

  /** The whole file behind its byte-order mark. */
  String text() {
    return String.join("", bits.stream().map(Bit::text).toList());
  }

  /** What stands before the key's lines, and what behind them; null where it is not there. */
  String[] around(TablePath table, String key) {
    StringBuilder before = new StringBuilder();
    for (int i = 0; i < bits.size(); i++) {
      if (bits.get(i).table.equals(table) && bits.get(i).key.equals(key)) {
        List<Bit> after = bits.subList(i + 1, bits.size());
        return new String[] {
          before.toString(), String.join("", after.stream().map(Bit::text).toList())
        };
      }
      before.append(bits.get(i).text);
    }
    return null;
  }

  /** The lines of every key and table but one key's, or but one table's where the key is empty. */
  List<String> saidBut(TablePath table, String key) {
    return bits.stream()
        .filter(bit -> !bit.text.isBlank() && !bit.text.stripLeading().startsWith("#"))
        .filter(bit -> !(bit.table.equals(table) && (key.isEmpty() || bit.key.equals(key))))
        .flatMap(bit -> bit.text.lines())
        .toList();
  }

  private void table(TablePath path, String head) {
    gap(path);
    if (!head.isEmpty()) {
      bits.add(new Bit(path, "", head + one("", " ", " # [[x]]", "   # deep") + "\n"));
    }
    List<String> keys = new ArrayList<>(KEYS);
    Collections.shuffle(keys, random);
    String indent = one("", "", "  ", "\t");
    String equals = one(" = ", "=", "\t=\t", "   = ");
    for (String key : keys.subList(0, random.nextInt(keys.size()))) {
      gap(path);
      String name = random.nextInt(8) == 0 ? "\"" + key + "\"" : key;
      String value = VALUES.get(random.nextInt(VALUES.size()));
      String behind = one("", "", "  ", " # why # = [[", "      # column", "\t# tab");
      bits.add(new Bit(path, key, indent + name + equals + value + behind + "\n"));
    }
    if (random.nextInt(6) == 0) {
      bits.add(new Bit(path, "", "dotted . \"k#]\" = 'x' # stays\n"));
    }
    gap(path);
  }

  private void gap(TablePath path) {
    for (int i = random.nextInt(6) - 2; i > 0; i--) {
      String comment = one("", "  ", "          ") + COMMENTS.get(random.nextInt(COMMENTS.size()));
      bits.add(new Bit(path, "#", one("\n", " \t\n", comment + "\n", comment + "\n")));
    }
  }

  private String one(String... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
