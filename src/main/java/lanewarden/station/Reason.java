package lanewarden.station;

import lanewarden.written.WrittenText;

/** A reason in somebody's own words, as it is signed with what it is a reason for. */
final class Reason {

  private Reason() {}

  /**
   * The words without spaces around them.
   *
   * @throws StationException if there are none, too many, or some that cannot be seen
   */
  static String of(String typed) throws StationException {
    String plain = typed.strip();
    if (plain.isEmpty() || plain.length() > Station.LONGEST_REASON) {
      throw StationException.misstep(
          "REASON-MISSING",
          "Nothing was done.",
          plain.isEmpty() ? "No reason was given." : "The reason is too long.",
          "Give the reason in at most "
              + Station.LONGEST_REASON
              + " characters: it is signed with it.");
    }
    if (!WrittenText.isPlain(plain)) {
      throw StationException.misstep(
          "REASON-UNREADABLE",
          "Nothing was done.",
          "The reason holds characters that cannot be seen.",
          "Type it again in plain letters.");
    }
    return plain;
  }
}
