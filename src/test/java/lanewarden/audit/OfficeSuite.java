package lanewarden.audit;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A general office suite that turns a page of HTML into a PDF, as its own process with a profile of
 * its own.
 */
record OfficeSuite(Path program) {
  private static final int POLL_MILLISECONDS = 25;
  private static final String PEAK = "VmHWM:";

  /**
   * What a conversion took.
   *
   * @param seconds from starting the process to its end
   * @param megabytes most memory resident of all its processes; 0 where the system does not tell
   */
  record Taken(double seconds, long megabytes) {}

  /** The one on this machine, if there is one. */
  static Optional<OfficeSuite> find() {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .map(folder -> Path.of(folder, "soffice"))
        .filter(Files::isExecutable)
        .findFirst()
        .map(OfficeSuite::new);
  }

  /**
   * Converts a page of HTML.
   *
   * @return what it took; the PDF lies beside the page
   * @throws IllegalStateException if no PDF came of it, with what the suite said
   */
  Taken convert(Path html, Path profile) throws Exception {
    Path pdf = html.resolveSibling(html.getFileName().toString().replace(".html", ".pdf"));
    Files.deleteIfExists(pdf);
    Path said = html.resolveSibling("office.log");
    long began = System.nanoTime();
    Process process =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "-env:UserInstallation=" + profile.toUri(),
                "--infilter=HTML (StarWriter)",
                "--convert-to",
                "pdf:writer_pdf_Export",
                "--outdir",
                html.getParent().toString(),
                html.toString())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    long peak = 0;
    do {
      peak = Math.max(peak, resident(process.toHandle()));
    } while (!process.waitFor(POLL_MILLISECONDS, TimeUnit.MILLISECONDS));
    double seconds = (System.nanoTime() - began) / 1e9;
    if (!Files.exists(pdf)) {
      throw new IllegalStateException("The office suite made no PDF: " + Files.readString(said));
    }
    return new Taken(seconds, peak >> 10);
  }

  /** Kilobytes of the process and of those it started. */
  private static long resident(ProcessHandle process) {
    return Stream.concat(Stream.of(process), process.descendants())
        .mapToLong(one -> peak(Path.of("/proc", String.valueOf(one.pid()), "status")))
        .sum();
  }

  private static long peak(Path status) {
    try {
      List<String> lines = Files.readAllLines(status, StandardCharsets.UTF_8);
      return lines.stream()
          .filter(line -> line.startsWith(PEAK))
          .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")))
          .sum();
    } catch (IOException ended) {
      return 0;
    }
  }
}
