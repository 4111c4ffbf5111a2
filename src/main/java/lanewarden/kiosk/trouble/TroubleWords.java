package lanewarden.kiosk.trouble;

import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;

/**
 * A trouble as the screens say it: in their language by its code, with its own sentences behind
 * that, which are English as in the log and say more; immutable.
 *
 * @param what what happened
 * @param why why, where the trouble itself says it on this screen; else blank
 * @param remedy what to do
 * @param particulars every place of a file that was refused, or what is wrong with what was typed,
 *     in the language of the screens; else the trouble's own sentences, in English; blank where
 *     they are said already
 */
public record TroubleWords(String what, String why, String remedy, String particulars) {
  private static final String BUNDLE = "lanewarden.kiosk.faults";
  private static final String MEND = ".mend";

  /** Every fault that nobody expected has the same texts, whatever its code ends in. */
  private static final String BUG = "BUG";

  private static final Pattern CODE = Pattern.compile("\\(([A-Z]+(?:-[A-Z]+)+)\\)");

  /** A trouble for these screens. */
  public static TroubleWords of(Trouble trouble, Texts texts) {
    String code = trouble.kind() == Trouble.Kind.BUG ? BUG : trouble.code();
    String particulars =
        trouble.places().isEmpty()
            ? joined(trouble.what(), trouble.why(), trouble.remedy())
            : trouble.places().stream().map(texts::of).collect(Collectors.joining("\n"));
    return of(code, particulars, texts)
        .orElseGet(() -> new TroubleWords(trouble.what(), trouble.why(), trouble.remedy(), ""));
  }

  /** What English words with a code in brackets mean, such as those of a port, if it has texts. */
  public static Optional<TroubleWords> in(String words, Texts texts) {
    return CODE.matcher(words)
        .results()
        .flatMap(found -> of(found.group(1), words, texts).stream())
        .findFirst();
  }

  /**
   * What is wrong with a field, in a line: beside it there is no room for more.
   *
   * @param code blank where there is none
   * @param words the same in English
   */
  public static String inField(String code, String words, Texts texts) {
    return of(code, words, texts).map(TroubleWords::inShort).orElse(words);
  }

  /** English needs no texts by code: the trouble's own sentences say more. */
  private static Optional<TroubleWords> of(String code, String particulars, Texts texts) {
    if (texts.language() == Language.ENGLISH) {
      return Optional.empty();
    }
    ResourceBundle said =
        ResourceBundle.getBundle(
            BUNDLE,
            texts.language().locale(),
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    return said.containsKey(code)
        ? Optional.of(
            new TroubleWords(said.getString(code), "", said.getString(code + MEND), particulars))
        : Optional.empty();
  }

  /** What happened and what to do, in a line. */
  public String inShort() {
    return joined(what, remedy);
  }

  /** All of it, for whoever is read to. */
  public String spoken() {
    return joined(what, why, remedy, particulars);
  }

  private static String joined(String... sentences) {
    return Stream.of(sentences)
        .filter(sentence -> !sentence.isBlank())
        .collect(Collectors.joining(" "));
  }
}
