import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Builds the program as it is installed: with a runtime of its own, trimmed to what it uses, and an
 * archive of its classes for a quick start. Run from the top of the project:
 *
 * <pre>java src/packaging/BuildImage.java              the folder target/image/Lanewarden
 * java src/packaging/BuildImage.java --installer  also this system's kind of installer</pre>
 *
 * <p>Builds for the system it runs on. Needs a whole JDK 17 or newer and Maven; an installer also
 * needs what jpackage asks for: fakeroot and dpkg or rpm on Linux, WiX on Windows.
 */
final class BuildImage {
  private static final String NAME = "Lanewarden";
  private static final Path BUILD = Path.of("target", "image");
  private static final Path INPUT = BUILD.resolve("input");
  private static final Path RUNTIME = BUILD.resolve("runtime");
  private static final Path ICON =
      Path.of("src", "main", "resources", "lanewarden", "kiosk", "icon.png");
  private static final String SYSTEM = System.getProperty("os.name").toLowerCase(Locale.ROOT);

  /** Found by name at run time, where no tool sees them: ciphers, file systems, dates by locale. */
  private static final List<String> UNSEEN =
      List.of("jdk.crypto.ec", "jdk.localedata", "jdk.unsupported", "jdk.zipfs");

  /** How long the screens are watched for the classes they load, in seconds. */
  private static final int WATCHED = 20;

  private BuildImage() {}

  public static void main(String[] arguments) throws Exception {
    List<String> asked = List.of(arguments);
    if (!asked.isEmpty() && !asked.equals(List.of("--installer"))) {
      throw refused("Not understood: " + asked, "Give nothing, or --installer.");
    }
    if (!Files.exists(Path.of("pom.xml"))) {
      throw refused("There is no pom.xml here.", "Run this from the top of the project.");
    }
    clear(BUILD);
    say("the program");
    run(isWindows() ? "mvn.cmd" : "mvn", "-q", "package", "-DskipTests", "-Djacoco.skip");
    copy(Path.of("target", "lanewarden.jar"), INPUT.resolve("lanewarden.jar"));
    for (Path library : jars(Path.of("target", "lib"))) {
      copy(library, INPUT.resolve("lib").resolve(library.getFileName()));
    }
    String version = version();
    say("a runtime with " + modules());
    tool(
        "jlink",
        "--add-modules",
        modules(),
        "--strip-debug",
        "--no-header-files",
        "--no-man-pages",
        "--generate-cds-archive",
        "--output",
        RUNTIME.toString());
    say("the image of version " + version);
    Path icon = icon();
    List<String> image =
        new ArrayList<>(List.of("--type", "app-image", "--name", NAME, "--dest", BUILD.toString()));
    image.addAll(List.of("--input", INPUT.toString(), "--main-jar", "lanewarden.jar"));
    image.addAll(List.of("--runtime-image", RUNTIME.toString(), "--icon", icon.toString()));
    image.addAll(List.of("--app-version", version, "--vendor", NAME));
    image.addAll(List.of("--description", "The speed-check station of a 3D archery tournament"));
    image.addAll(List.of("--java-options", "-XX:SharedArchiveFile=$APPDIR/classes.jsa"));
    // A station starts often and computes little: it is sooner there without the second compiler
    image.addAll(List.of("--java-options", "-XX:TieredStopAtLevel=1"));
    image.addAll(List.of("--java-options", "-XX:+UseSerialGC"));
    image.addAll(List.of("--java-options", "-Xshare:auto", "--java-options", "-Xlog:disable"));
    image.addAll(List.of("--java-options", "-Xlog:all=error:stderr"));
    tool("jpackage", image.toArray(String[]::new));
    archive();
    if (asked.contains("--installer")) {
      say("the installer");
      tool("jpackage", installer(version));
    }
    try (Stream<Path> made = Files.list(BUILD)) {
      made.filter(p -> !List.of(INPUT, RUNTIME).contains(p)).sorted().forEach(System.out::println);
    }
  }

  private static String version() throws IOException {
    String pom = Files.readString(Path.of("pom.xml"));
    String version = pom.substring(pom.indexOf("<version>") + 9, pom.indexOf("</version>"));
    return version.replaceAll("[^0-9.].*", "");
  }

  /** What the program and its libraries use of Java, as the class files say, and what they hide. */
  private static String modules() throws IOException {
    List<String> arguments =
        new ArrayList<>(
            List.of("-q", "--multi-release", "17", "--ignore-missing-deps", "--print-module-deps"));
    arguments.addAll(List.of("--class-path", joined(jars(INPUT.resolve("lib")))));
    arguments.add(INPUT.resolve("lanewarden.jar").toString());
    jars(INPUT.resolve("lib")).stream()
        .filter(jar -> !jar.getFileName().toString().startsWith("javafx-"))
        .forEach(jar -> arguments.add(jar.toString()));
    Stream<String> seen = Arrays.stream(tool("jdeps", arguments.toArray(String[]::new)).split(","));
    return Stream.concat(seen.filter(m -> !m.startsWith("javafx.")), UNSEEN.stream())
        .distinct()
        .sorted()
        .collect(Collectors.joining(","));
  }

  /**
   * Starts the image once and keeps the classes it loads: an archive fits only the launcher that
   * made it. Its screens are watched where there is a display; elsewhere the same event is played
   * in the terminal.
   */
  private static void archive() throws Exception {
    say("the archive of its classes");
    Path settings = application().resolve(NAME + ".cfg");
    Path demo = BUILD.resolve("demo");
    String starting = Files.readString(settings);
    Files.writeString(settings, starting.replace("SharedArchiveFile", "ArchiveClassesAtExit"));
    Process watched =
        new ProcessBuilder(launcher().toString(), "demo", "--into", demo.toString())
            .redirectErrorStream(true)
            .redirectOutput(BUILD.resolve("watched.log").toFile())
            .start();
    if (!watched.waitFor(WATCHED, TimeUnit.SECONDS)) {
      watched.destroy();
      watched.waitFor();
    }
    Files.writeString(settings, starting);
    clear(demo);
    if (!Files.exists(application().resolve("classes.jsa"))) {
      throw refused(
          "The image did not start, so its classes could not be kept.",
          "Read " + BUILD.resolve("watched.log") + ".");
    }
  }

  private static Path launcher() {
    if (SYSTEM.startsWith("mac")) {
      return BUILD.resolve(NAME + ".app").resolve("Contents").resolve("MacOS").resolve(NAME);
    }
    Path image = BUILD.resolve(NAME);
    return isWindows() ? image.resolve(NAME + ".exe") : image.resolve("bin").resolve(NAME);
  }

  /** Where the image keeps the program's own files. */
  private static Path application() {
    if (SYSTEM.startsWith("mac")) {
      return BUILD.resolve(NAME + ".app").resolve("Contents").resolve("app");
    }
    Path image = BUILD.resolve(NAME);
    return isWindows() ? image.resolve("app") : image.resolve("lib").resolve("app");
  }

  /** The one picture of 256 by 256 pixels, wrapped as this system wants it. */
  private static Path icon() throws IOException {
    byte[] png = Files.readAllBytes(ICON);
    ByteBuffer wrapped = ByteBuffer.allocate(png.length + 22);
    if (SYSTEM.startsWith("mac")) {
      wrapped.put("icns".getBytes(StandardCharsets.US_ASCII)).putInt(png.length + 16);
      wrapped.put("ic08".getBytes(StandardCharsets.US_ASCII)).putInt(png.length + 8);
    } else if (isWindows()) {
      wrapped.order(ByteOrder.LITTLE_ENDIAN).putShort((short) 0).putShort((short) 1);
      // One picture; a side of 256 is written as 0; then colours, planes and bits of a pixel.
      wrapped.putShort((short) 1).putInt(0).putShort((short) 1).putShort((short) 32);
      wrapped.putInt(png.length).putInt(22);
    }
    wrapped.put(png);
    String ending = SYSTEM.startsWith("mac") ? "icns" : isWindows() ? "ico" : "png";
    Path icon = BUILD.resolve(NAME + "." + ending);
    return Files.write(icon, Arrays.copyOf(wrapped.array(), wrapped.position()));
  }

  private static String[] installer(String version) {
    String image = SYSTEM.startsWith("mac") ? NAME + ".app" : NAME;
    List<String> words = new ArrayList<>(List.of("--app-image", BUILD.resolve(image).toString()));
    words.addAll(List.of("--name", NAME, "--app-version", version, "--dest", BUILD.toString()));
    words.addAll(List.of("--license-file", "LICENSE"));
    if (isWindows()) {
      words.addAll(List.of("--win-menu", "--win-shortcut", "--win-dir-chooser"));
    } else if (!SYSTEM.startsWith("mac")) {
      words.addAll(List.of("--linux-shortcut", "--linux-menu-group", "Sports"));
    }
    return words.toArray(String[]::new);
  }

  private static boolean isWindows() {
    return SYSTEM.startsWith("windows");
  }

  private static String tool(String name, String... arguments) {
    ToolProvider tool =
        ToolProvider.findFirst(name)
            .orElseThrow(() -> refused("This Java has no " + name + ".", "Install a whole JDK."));
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said, true);
    if (tool.run(out, out, arguments) != 0) {
      throw refused(name + " failed: " + said, "Read what it says; mend it and run this again.");
    }
    return said.toString().strip();
  }

  private static void run(String... command) throws IOException, InterruptedException {
    if (new ProcessBuilder(command).inheritIO().start().waitFor() != 0) {
      throw refused(String.join(" ", command) + " failed.", "Read what it says above.");
    }
  }

  private static List<Path> jars(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".jar")).sorted().toList();
    }
  }

  private static String joined(List<Path> jars) {
    return jars.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to.getParent());
    Files.copy(from, to);
  }

  private static void clear(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }

  private static void say(String step) {
    System.err.println("== " + step);
  }

  private static IllegalStateException refused(String why, String mend) {
    return new IllegalStateException(why + " " + mend);
  }
}
