package lanewarden.audit;

import java.util.Map;

/**
 * For whom an export is.
 *
 * @param whole with names and all that was said; else the public edition, which knows competitors
 *     by their bib alone
 * @param officials their names, by thumbprint
 */
record Edition(boolean whole, Map<String, String> officials) {

  /** The name behind a key, or the key where nobody enrolled it. */
  String official(String thumbprint) {
    return officials.getOrDefault(thumbprint, thumbprint);
  }
}
