package lanewarden.kiosk;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanewarden.station.EventFolder;

/**
 * From the start of the process to the first frame that can be used: the kiosk on an event against
 * an empty window of the toolkit, by turns, with the same flags of Java: those of the program, and
 * none; and, where {@code target/lanewarden.jar} was made, the kiosk as it is installed: with its
 * flags and an archive of its classes, against the empty window with its flags alone.
 *
 * <p>Arguments: how many entries the event's ledger has (10,000 if none), and rounds (7).
 */
public final class StartBenchmark {
  private static final Path PROGRAM = Path.of("target", "lanewarden.jar");
  private static final List<String> NO_FLAGS = List.of();

  private StartBenchmark() {}

  /** Prints the median of each and their ratios. */
  public static void main(String[] arguments) throws Exception {
    int entries = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
    int rounds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 7;
    EventFolder event = FullDay.morning();
    try {
      FullDay.shoot(event, entries);
      List<String> onEvent = List.of("kiosk", event.path().toString());
      Optional<Installed> installed =
          Files.exists(PROGRAM)
              ? Optional.of(Installed.watched(event.path().resolveSibling("start"), onEvent))
              : Optional.empty();
      List<String> flags = flags();
      List<Double> bare = new ArrayList<>();
      List<Double> kiosk = new ArrayList<>();
      List<Double> bareWithout = new ArrayList<>();
      List<Double> kioskWithout = new ArrayList<>();
      List<Double> image = new ArrayList<>();
      for (int round = -1; round < rounds; round++) {
        String path = System.getProperty("java.class.path");
        double empty = millis(flags, path, List.of());
        double whole = millis(flags, path, onEvent);
        double emptyWithout = millis(NO_FLAGS, path, List.of());
        double wholeWithout = millis(NO_FLAGS, path, onEvent);
        double quick = installed.isPresent() ? installed.get().millis(onEvent) : Double.NaN;
        if (round >= 0) { // The first fills the system's caches
          bare.add(empty);
          kiosk.add(whole);
          bareWithout.add(emptyWithout);
          kioskWithout.add(wholeWithout);
          image.add(quick);
        }
      }
      System.out.printf(
          Locale.ROOT,
          "first frame, with the program's flags: bare window %.0f ms, kiosk with a ledger of %d"
              + " entries %.0f ms; ratio %.2f (aim at most 1.5)%n",
          median(bare),
          entries,
          median(kiosk),
          median(kiosk) / median(bare));
      System.out.printf(
          Locale.ROOT,
          "without flags: bare window %.0f ms, kiosk %.0f ms; ratio %.2f%n",
          median(bareWithout),
          median(kioskWithout),
          median(kioskWithout) / median(bareWithout));
      if (installed.isPresent()) {
        System.out.printf(
            Locale.ROOT,
            "as installed, with its flags and archive: %.0f ms; ratio to the bare window without"
                + " one %.2f (aim at most 1)%n",
            median(image),
            median(image) / median(bare));
      }
    } finally {
      FullDay.delete(event);
    }
  }

  /**
   * The program in jars, as an archive of classes takes it.
   *
   * @param flags of the installed program
   */
  private record Installed(List<String> flags, String classPath) {

    /** Starts it once, and keeps the classes that it loads. */
    static Installed watched(Path folder, List<String> arguments) throws Exception {
      Files.createDirectories(folder);
      Path watch = folder.resolve("watch.jar");
      try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(watch))) {
        Path classes =
            Path.of(FirstFrame.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        jar.putNextEntry(new JarEntry(NAME_OF_WATCH));
        jar.write(Files.readAllBytes(classes.resolve(NAME_OF_WATCH)));
      }
      List<String> parts = new ArrayList<>(List.of(PROGRAM.toString()));
      try (Stream<Path> libraries = Files.list(Path.of("target", "lib"))) {
        libraries.map(Path::toString).sorted().forEach(parts::add);
      }
      // Not of the program: what draws where there is no display
      Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
          .filter(part -> part.contains("monocle"))
          .forEach(parts::add);
      parts.add(watch.toString());
      String path = String.join(File.pathSeparator, parts);
      String archive = folder.resolve("classes.jsa").toString();
      StartBenchmark.millis(with("-XX:ArchiveClassesAtExit=" + archive), path, arguments);
      if (!Files.exists(Path.of(archive))) {
        throw new IllegalStateException("no archive of classes was made");
      }
      return new Installed(with("-XX:SharedArchiveFile=" + archive), path);
    }

    private static List<String> with(String archive) throws IOException {
      List<String> flags = new ArrayList<>(List.of(archive, "-Xlog:disable"));
      flags.addAll(StartBenchmark.flags());
      return flags;
    }

    double millis(List<String> arguments) throws Exception {
      return StartBenchmark.millis(flags, classPath, arguments);
    }
  }

  private static final String NAME_OF_WATCH =
      FirstFrame.class.getName().replace('.', '/') + ".class";

  /** The flags that {@code src/packaging/BuildImage.java} gives the launcher. */
  private static List<String> flags() throws IOException {
    return Pattern.compile("\"(-XX:[+A-Z][A-Za-z0-9=]+)\"")
        .matcher(Files.readString(Path.of("src", "packaging", "BuildImage.java")))
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  private static double millis(List<String> flags, String classPath, List<String> arguments)
      throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(flags);
    for (String flag : List.of("glass.platform", "monocle.platform", "prism.order")) {
      if (System.getProperty(flag) != null) {
        command.add("-D" + flag + "=" + System.getProperty(flag));
      }
    }
    command.addAll(List.of("-cp", classPath));
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
