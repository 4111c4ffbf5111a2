package lanewarden.kiosk;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanewarden.station.EventFolder;

/**
 * From the start of the process to the first frame that can be used: the kiosk on an event against
 * an empty window of the toolkit, by turns, with the same flags of Java.
 *
 * <p>Arguments: how many entries the event's ledger has (10,000 if none), and rounds (7).
 */
public final class StartBenchmark {
  private StartBenchmark() {}

  /** Prints the median of each and their ratio. */
  public static void main(String[] arguments) throws Exception {
    int entries = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
    int rounds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 7;
    EventFolder event = FullDay.morning();
    try {
      FullDay.shoot(event, entries);
      List<Double> bare = new ArrayList<>();
      List<Double> kiosk = new ArrayList<>();
      for (int round = -1; round < rounds; round++) {
        double empty = millis(List.of());
        double whole = millis(List.of("kiosk", event.path().toString()));
        if (round >= 0) { // The first fills the system's caches
          bare.add(empty);
          kiosk.add(whole);
        }
      }
      System.out.printf(
          Locale.ROOT,
          "first frame: bare window %.0f ms, kiosk with a ledger of %d entries %.0f ms;"
              + " ratio %.2f (aim at most 1.5)%n",
          median(bare),
          entries,
          median(kiosk),
          median(kiosk) / median(bare));
    } finally {
      FullDay.delete(event);
    }
  }

  private static double millis(List<String> arguments) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    for (String flag : List.of("glass.platform", "monocle.platform", "prism.order")) {
      if (System.getProperty(flag) != null) {
        command.add("-D" + flag + "=" + System.getProperty(flag));
      }
    }
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(FirstFrame.class.getName());
    command.addAll(arguments);
    long begun = System.nanoTime();
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        if (line.equals(FirstFrame.SHOWN)) {
          double took = (System.nanoTime() - begun) / 1e6;
          process.waitFor();
          return took;
        }
      }
    }
    throw new IllegalStateException("no frame came of " + command);
  }

  private static double median(List<Double> of) {
    return of.stream().sorted().toList().get(of.size() / 2);
  }
}
