package lanewarden.station;

import java.util.List;

/**
 * What it takes to call a competitor whom the rule does not call for.
 *
 * @param bib the competitor's
 * @param name the competitor's
 * @param lapses the words that make the competitor's pass lapse, of which one is needed; empty
 *     where the official gives the grounds in words of their own
 */
public record Grounds(String bib, String name, List<String> lapses) {

  /** Copies the list. */
  public Grounds {
    lapses = List.copyOf(lapses);
  }
}
