package lanewarden.audit;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import lanewarden.journal.Check;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The report of a large event against the same table of checks drawn plainly with PDFBox, by turns
 * in one run: no tags, no findings, no pictures, no ledger inside.
 *
 * <p>Arguments: competitors (2000), rounds (5).
 */
final class ReportBenchmark {
  private static final int SHOTS = 3;
  private static final float SIZE = 7;
  private static final float MARGIN = 42;

  private final Path folder;

  private ReportBenchmark(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] arguments) throws Exception {
    int competitors = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2_000;
    int rounds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 5;
    Path folder = Files.createTempDirectory("lanewarden-benchmark");
    try {
      new ReportBenchmark(folder).run(competitors, rounds);
    } finally {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  private void run(int competitors, int rounds) throws Exception {
    Path file = folder.resolve("event.ledger");
    List<Check> checks;
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      for (int i = 0; i < competitors; i++) {
        String[] speeds = new String[SHOTS];
        for (int shot = 0; shot < SHOTS; shot++) {
          speeds[shot] = String.format(Locale.ROOT, "%.1f ft/s", 280.0 + (i * 7 + shot * 3) % 30);
        }
        ledger.check("" + (1000 + i), "Competitor Number " + i, "OC", speeds);
        ledger.close(null);
      }
      checks = ledger.standing().checks();
    }
    Path report = folder.resolve("report.pdf");
    Path plain = folder.resolve("plain.pdf");
    double coldReport = seconds(() -> PrintedReport.report().write(file, report, step -> {}));
    double coldPlain = seconds(() -> draw(checks, plain));
    List<Double> ratios = new ArrayList<>();
    for (int round = 1; round <= rounds; round++) {
      double drawn = seconds(() -> draw(checks, plain));
      resetPeak();
      double written = seconds(() -> PrintedReport.report().write(file, report, step -> {}));
      ratios.add(written / drawn);
      System.out.printf(
          Locale.ROOT,
          "round %d: report %.2f s, plain %.2f s, ratio %.2f, most heap in use %d MB%n",
          round,
          written,
          drawn,
          written / drawn,
          peak() >> 20);
    }
    ratios.sort(Comparator.naturalOrder());
    System.out.printf(
        Locale.ROOT,
        "cold: report %.2f s, plain %.2f s; pages %d and %d; median ratio warm %.2f (aim 4)%n",
        coldReport,
        coldPlain,
        pages(report),
        pages(plain),
        ratios.get(ratios.size() / 2));
  }

  /** A piece of work that may fail. */
  private interface Work {
    void run() throws Exception;
  }

  private static double seconds(Work work) throws Exception {
    long began = System.nanoTime();
    work.run();
    return (System.nanoTime() - began) / 1e9;
  }

  private static void resetPeak() {
    System.gc();
    heap().forEach(MemoryPoolMXBean::resetPeakUsage);
  }

  private static long peak() {
    return heap().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
  }

  private static Stream<MemoryPoolMXBean> heap() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP);
  }

  private static int pages(Path pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getNumberOfPages();
    }
  }

  /** Each check as a row of text, with the same typeface embedded. */
  private static void draw(List<Check> checks, Path pdf) throws Exception {
    try (PDDocument document = new PDDocument();
        RandomAccessReadBuffer bytes = new RandomAccessReadBuffer(Cut.TEXT.bytes())) {
      PDFont font = PDType0Font.load(document, new TTFParser().parse(bytes), true);
      PDPageContentStream page = null;
      float y = 0;
      for (Check check : checks) {
        if (page == null || y < MARGIN) {
          if (page != null) {
            page.close();
          }
          PDPage sheet = new PDPage(PDRectangle.A4);
          document.addPage(sheet);
          page = new PDPageContentStream(document, sheet);
          y = PDRectangle.A4.getHeight() - MARGIN;
        }
        y = row(check, page, font, y);
      }
      if (page != null) {
        page.close();
      }
      document.save(pdf.toFile());
    }
  }

  private static float row(Check check, PDPageContentStream page, PDFont font, float y)
      throws Exception {
    List<String> readings =
        check.shots().stream().map(shot -> shot.reading().speed().toString()).toList();
    float below = y;
    cell(page, font, 0, y, String.valueOf(check.number()));
    cell(page, font, 40, y, Wording.time(check.at()));
    cell(page, font, 130, y, check.opened().bib() + " " + check.opened().name());
    cell(page, font, 130, y - SIZE - 2, check.opened().division());
    for (String reading : readings) {
      cell(page, font, 260, below, reading);
      below -= SIZE + 2;
    }
    cell(page, font, 320, y, OutcomeMark.of(check).shape() + " " + OutcomeMark.of(check).word());
    cell(page, font, 320, y - SIZE - 2, CheckRow.reason(check));
    return below - 4;
  }

  private static void cell(PDPageContentStream page, PDFont font, float x, float y, String text)
      throws Exception {
    page.beginText();
    page.setFont(font, SIZE);
    page.newLineAtOffset(MARGIN + x, y);
    page.showText(text);
    page.endText();
  }
}
