package lanewarden.audit.comparison;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Typeface;
import lanewarden.audit.wording.Wording;
import lanewarden.bench.Comparison;
import lanewarden.bench.ComparisonSheet;
import lanewarden.quantity.Sentence;

/**
 * Everything that the paper of a comparison shows; texts are not escaped yet, pictures are.
 *
 * @param file the practice file's name, without its folder
 * @param unit of the speeds
 * @param energyUnit of the energies
 * @param momentumUnit of the momenta
 * @param means picture of the means with their intervals against the limits
 * @param arrows picture of speed over arrow mass
 */
record ComparisonPage(
    String file,
    String sha256,
    String made,
    String summary,
    String unit,
    String energyUnit,
    String momentumUnit,
    List<ComparisonSheet.Line> lines,
    List<String> leftOut,
    List<ComparisonSheet.Pair> pairs,
    List<ComparisonSheet.Margin> margins,
    List<String> expectations,
    List<String> masses,
    List<String> notes,
    String means,
    String arrows) {

  static ComparisonPage of(Comparison comparison, Instant made, Typeface face, Ink ink)
      throws IOException {
    ComparisonSheet sheet = new ComparisonSheet(comparison);
    Path name = Path.of(comparison.practice().file()).getFileName();
    return new ComparisonPage(
        String.valueOf(name),
        comparison.practice().sha256(),
        Wording.time(made),
        sheet.summary().toString(),
        sheet.unit().symbol(),
        sheet.energyUnit().symbol(),
        sheet.momentumUnit().symbol(),
        sheet.lines(),
        strings(sheet.leftOut()),
        sheet.pairs(),
        sheet.margins(),
        strings(sheet.expectations()),
        strings(sheet.masses()),
        sheet.notes(),
        new MeansPicture(sheet, face, ink).svg(ink.escape(sheet.means())),
        new ArrowPicture(sheet, face, ink)
            .svg(ink.escape("Speed over arrow mass, a line a bow: " + sheet.means())));
  }

  private static List<String> strings(List<Sentence> sentences) {
    return sentences.stream().map(Sentence::toString).toList();
  }
}
