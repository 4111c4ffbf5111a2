package lanewarden.station;

import java.util.List;
import java.util.Locale;

/** What the program runs on, as Java tells it: nothing of the user, and no path. */
final class Computer {

  private Computer() {}

  /** In a few words. */
  static String inWords() {
    return "Java " + property("java.version") + ", " + system();
  }

  /** A line each. */
  static List<String> inLines() {
    Runtime runtime = Runtime.getRuntime();
    return List.of(
        "Java: "
            + property("java.version")
            + ", "
            + property("java.vm.name")
            + ", "
            + property("java.vendor"),
        "JavaFX: " + property("javafx.runtime.version"),
        "System: " + system(),
        "Language: " + Locale.getDefault().toLanguageTag(),
        "Processors: " + runtime.availableProcessors(),
        "Most memory: " + (runtime.maxMemory() >> 20) + " MiB");
  }

  private static String system() {
    return property("os.name") + " " + property("os.version") + " " + property("os.arch");
  }

  private static String property(String name) {
    return System.getProperty(name, "not told");
  }
}
