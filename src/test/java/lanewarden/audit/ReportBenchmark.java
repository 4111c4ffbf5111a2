package lanewarden.audit;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.audit.seal.Seal;
import lanewarden.journal.Check;
import lanewarden.ledger.SealKey;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The report of a large event against the same table of checks drawn plainly with PDFBox (no tags,
 * no findings, no pictures, no ledger inside) and against a general office suite that converts the
 * same table, by turns in one run.
 *
 * <p>A report reads and verifies every entry before it draws: what drawing alone takes is told
 * apart. Arguments: competitors (2000), rounds (5). Run it with {@code -Xmx256m} to see whether the
 * report keeps its aim for memory: with more, Java lets garbage lie that it could clear away.
 */
final class ReportBenchmark {
  private static final int SHOTS = 3;

  /** The step that the report announces when all evidence is ready. */
  private static final String DRAWING = "Writing the report";

  private final Path folder;
  private final List<Double> whole = new ArrayList<>();
  private final List<Double> drawing = new ArrayList<>();
  private long ready;

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

  /** Signs every shot of the event into a ledger. */
  private static List<Check> shoot(int competitors, Path file) throws Exception {
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      for (int i = 0; i < competitors; i++) {
        String[] speeds = new String[SHOTS];
        for (int shot = 0; shot < SHOTS; shot++) {
          speeds[shot] = String.format(Locale.ROOT, "%.1f ft/s", 280.0 + (i * 7 + shot * 3) % 30);
        }
        ledger.check("" + (1000 + i), "Competitor Number " + i, "OC", speeds);
        ledger.close(null);
      }
      return ledger.standing().checks();
    }
  }

  private void run(int competitors, int rounds) throws Exception {
    Path file = folder.resolve("event.ledger");
    PlainTable table = new PlainTable(shoot(competitors, file));
    Path report = folder.resolve("report.pdf");
    Path plain = folder.resolve("plain.pdf");
    double coldReport = seconds(() -> report(file, report));
    double coldPlain = seconds(() -> table.draw(plain));
    for (int round = 1; round <= rounds; round++) {
      double drawn = seconds(() -> table.draw(plain));
      resetPeak();
      double written = seconds(() -> report(file, report));
      double alone = (System.nanoTime() - ready) / 1e9;
      whole.add(written / drawn);
      drawing.add(alone / drawn);
      say(
          "round %d: report %.2f s, of it drawing %.2f s; plain %.2f s; most heap in use %d MB",
          round, written, alone, drawn, peak() >> 20);
    }
    resetPeak();
    double sealed = seconds(() -> sealed(file, folder.resolve("sealed.pdf")));
    say("sealed: report %.2f s, most heap in use %d MB", sealed, peak() >> 20);
    say("cold: report %.2f s, plain %.2f s", coldReport, coldPlain);
    say("pages: report %d, plain %d", pages(report), pages(plain));
    say("file: report %d KB, plain %d KB", Files.size(report) >> 10, Files.size(plain) >> 10);
    say(
        "against the plain drawing, median of the warm rounds: whole report %.2f (aim at most 4),"
            + " drawing alone %.2f",
        median(whole), median(drawing));
    say(
        "heap this run may have: %d MB (aim: the report ends with 256 MB)",
        Runtime.getRuntime().maxMemory() >> 20);
    office(table);
  }

  private void office(PlainTable table) throws Exception {
    Optional<OfficeSuite> suite = OfficeSuite.find();
    if (suite.isEmpty()) {
      say("general office suite (soffice): not installed");
      return;
    }
    Path html = folder.resolve("office.html");
    table.write(html);
    Path profile = folder.resolve("profile");
    suite.get().convert(html, profile); // The first start makes its profile.
    OfficeSuite.Taken taken = suite.get().convert(html, profile);
    say(
        "general office suite, the same table from HTML: %.2f s with its start, most memory %d MB,"
            + " %d pages",
        taken.seconds(), taken.megabytes(), pages(folder.resolve("office.pdf")));
  }

  private void report(Path ledger, Path pdf) throws Exception {
    PrintedReport.report()
        .write(
            ledger,
            pdf,
            step -> {
              if (step.step().equals(DRAWING)) {
                ready = System.nanoTime();
              }
            });
  }

  private static void sealed(Path ledger, Path pdf) throws Exception {
    Seal seal =
        new Seal(
            SealKey.generate("Report seal", "Range East", PrintedReport.MADE, new SecureRandom()));
    PrintedReport.report()
        .write(
            ledger, pdf, new ReportEdition(true, Optional.of(seal), Optional.empty()), step -> {});
  }

  private static void say(String words, Object... figures) {
    System.out.println(String.format(Locale.ROOT, words, figures));
  }

  private static double median(List<Double> of) {
    return of.stream().sorted().toList().get(of.size() / 2);
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
}
