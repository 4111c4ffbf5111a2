package lanewarden.audit.press;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * How the elements of a page look: the part of CSS that the program's own pages use.
 *
 * <p>Selectors are elements, classes, both, and such behind one another. What is not understood is
 * a fault of the page and never passed over. Owned by one thread.
 */
final class Stylesheet {
  private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
  private static final List<String> SIDES = List.of("top", "right", "bottom", "left");

  /** The element that stands for the page itself. */
  private static final String PAGE = "@page";

  private static final String[] A4 = {"210mm", "297mm"};

  private final List<Rule> rules = new ArrayList<>();
  private final Map<Element, Style> known = new HashMap<>();
  private final Map<String, String> page = new HashMap<>();

  /** What is said of the elements behind one another, the outermost first. */
  private record Rule(List<Set<String>> behind, Map<String, String> says) {
    boolean fits(Element element) {
      int at = behind.size() - 1;
      if (!element.words().containsAll(behind.get(at))) {
        return false;
      }
      Element around = element.parent();
      for (at--; at >= 0; at--) {
        while (around != null && !around.words().containsAll(behind.get(at))) {
          around = around.parent();
        }
        if (around == null) {
          return false;
        }
        around = around.parent();
      }
      return true;
    }

    /** Classes weigh more than any number of elements. */
    int weight() {
      return behind.stream()
          .flatMap(Set::stream)
          .mapToInt(word -> word.startsWith(".") ? 100 : 1)
          .sum();
    }
  }

  private Stylesheet() {}

  /**
   * Reads a stylesheet.
   *
   * @throws IllegalStateException if something in it is not understood; of values, when an element
   *     is first asked for
   */
  static Stylesheet of(String css) {
    Stylesheet sheet = new Stylesheet();
    Matcher rule = RULE.matcher(css.replaceAll("(?s)/\\*.*?\\*/", ""));
    while (rule.find()) {
      Map<String, String> says = new LinkedHashMap<>();
      for (String line : rule.group(2).split(";", -1)) {
        if (!line.isBlank()) {
          String[] parts = line.strip().split(":\\s*", 2);
          expand(parts[0], parts[1], says);
        }
      }
      for (String selector : rule.group(1).split(",", -1)) {
        if (selector.strip().equals(PAGE)) {
          sheet.page.putAll(says);
        } else {
          sheet.rules.add(new Rule(behind(selector.strip()), says));
        }
      }
    }
    // Of two of the same weight, the later one has the last word.
    sheet.rules.sort(Comparator.comparingInt(Rule::weight));
    return sheet;
  }

  private static List<Set<String>> behind(String selector) {
    return Arrays.stream(selector.split("\\s+", -1))
        .map(one -> Arrays.stream(one.split("(?=\\.)", -1)).collect(Collectors.toSet()))
        .toList();
  }

  private static void expand(String property, String value, Map<String, String> says) {
    List<String> parts = List.of(value.split("\\s+", -1));
    switch (property) {
      case "margin", "padding" ->
          IntStream.range(0, SIDES.size())
              .forEach(side -> says.put(property + "-" + SIDES.get(side), side(parts, side)));
      case "border" -> SIDES.forEach(side -> border(side, parts, says));
      case "border-left", "border-bottom" ->
          border(property.substring("border-".length()), parts, says);
      case "border-width" -> SIDES.forEach(side -> says.put("border-" + side, value));
      case "font" -> {
        says.put("font-size", parts.get(0));
        says.put("font-family", parts.get(1));
      }
      default -> says.put(property, value);
    }
  }

  /** One length stands for all sides, two for above and beside, three leave out the left. */
  private static String side(List<String> parts, int side) {
    return parts.get(side < parts.size() ? side : Math.max(side - 2, 0) % parts.size());
  }

  private static void border(String side, List<String> parts, Map<String, String> says) {
    says.put("border-" + side, parts.get(0));
    says.put("border-color", parts.get(2));
  }

  /** The page that it is made for. */
  Paper paper() {
    String size = Look.said(page, "size");
    String[] sides = size.equals("A4") ? A4 : size.split("\\s+", -1);
    return new Paper(
        Look.points(sides[0], 0), Look.points(sides[1], 0), Look.sides(page, "margin", 0));
  }

  /** How an element looks. */
  Style of(Element element) {
    Style found = known.get(element);
    if (found == null) {
      Map<String, String> says = new LinkedHashMap<>();
      rules.stream().filter(rule -> rule.fits(element)).forEach(rule -> says.putAll(rule.says()));
      Element parent = element.parent();
      found = Look.of(says, parent == null ? Lettering.PLAIN : of(parent).letters());
      known.put(element, found);
    }
    return found;
  }
}
