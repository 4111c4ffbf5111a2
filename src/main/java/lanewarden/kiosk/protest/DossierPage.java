package lanewarden.kiosk.protest;

import java.util.ArrayList;
import java.util.List;
import lanewarden.journal.Check;
import lanewarden.journal.Correction;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Dossier;

/**
 * A check with what stands beside it, in the words of the screen.
 *
 * @param who bib and name
 * @param sheets the check, then its rechecks
 * @param acts what was done about it: protests, rulings, corrections, each a paragraph
 */
public record DossierPage(String who, List<SheetPage> sheets, List<Act> acts) {

  /**
   * Something that was done about it.
   *
   * @param title what
   * @param words the rest
   */
  public record Act(String title, String words) {}

  /** A check and all that stands beside it. */
  public static DossierPage of(Dossier dossier, DocketWords words, Texts texts) {
    Check check = dossier.check().check();
    List<Act> acts = new ArrayList<>();
    for (Protest protest : dossier.protests()) {
      acts.add(filed(protest, dossier, words, texts));
      protest.ruling().ifPresent(given -> acts.add(ruled(given, dossier, words, texts)));
    }
    for (Correction correction : dossier.corrections()) {
      acts.add(corrected(correction, dossier, words, texts));
    }
    return new DossierPage(
        texts.of("dossier.who", check.opened().bib(), check.opened().name()),
        dossier.checks().stream().map(view -> SheetPage.of(view, dossier, words, texts)).toList(),
        acts);
  }

  private static Act filed(Protest protest, Dossier dossier, DocketWords words, Texts texts) {
    ProtestFact.ProtestFiled fact = protest.fact();
    return new Act(
        texts.of(
            "dossier.filed",
            DocketWords.cause(fact.occasion(), texts),
            protest.number(),
            words.state(protest, dossier)),
        texts.of(
            "dossier.filed.words",
            fact.by(),
            fact.ground(),
            words.clock().format(protest.at()),
            dossier.nameOf(protest.signer())));
  }

  private static Act ruled(Protest.Given given, Dossier dossier, DocketWords words, Texts texts) {
    ProtestFact.ProtestRuled fact = given.fact();
    return new Act(
        texts.of(
            "dossier.ruled",
            DocketWords.answer(fact.ruling(), texts),
            dossier.nameOf(given.signer()),
            fact.stands()),
        words.ruling(given));
  }

  private static Act corrected(
      Correction correction, Dossier dossier, DocketWords words, Texts texts) {
    return new Act(
        correction
            .confirmation()
            .map(
                given ->
                    texts.of(
                        "dossier.confirmed",
                        correction.number(),
                        dossier.nameOf(correction.signer()),
                        dossier.nameOf(given.signer()),
                        words.clock().format(given.at()),
                        given.sequence()))
            .orElseGet(
                () ->
                    texts.of(
                        "dossier.corrected",
                        correction.number(),
                        dossier.nameOf(correction.signer()))),
        words.words(correction));
  }
}
