package lanewarden.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lanewarden.station.EventFolder;
import lanewarden.station.PracticeEvent;

/** The line command in a Java machine of its own, on a real port, telling in JSON. */
final class LiveLine implements AutoCloseable {
  private static final long PATIENCE = 60_000;

  private final Process process;
  private final Thread reader;
  private final ObjectMapper mapper = new ObjectMapper();
  private final List<JsonNode> told = new ArrayList<>();
  private boolean ended;

  private LiveLine(Process process) {
    this.process = process;
    this.reader = new Thread(this::read, "what the line tells");
    reader.start();
  }

  static LiveLine start(EventFolder event, Path port, Path passphrase) throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Duser.home=" + event.path().resolveSibling("home"),
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                "lanewarden.Main",
                "line",
                event.path().toString(),
                "--port",
                port.toString(),
                "--official",
                PracticeEvent.OFFICIAL,
                "--passphrase-file",
                passphrase.toString(),
                "--json")
            .redirectError(ProcessBuilder.Redirect.DISCARD);
    // Its log goes to a home of its own, not to the developer's
    builder.environment().keySet().removeAll(List.of("XDG_CONFIG_HOME", "APPDATA"));
    return new LiveLine(builder.start());
  }

  private void read() {
    try (BufferedReader out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), UTF_8))) {
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        take(line);
      }
    } catch (IOException e) {
      // The machine was killed in the middle of a line: what was told whole is all there is
      take("");
    } finally {
      end();
    }
  }

  private synchronized void take(String line) {
    // A line that was cut by the kill was not told
    if (line.endsWith("}")) {
      try {
        told.add(mapper.readTree(line));
      } catch (IOException e) {
        throw new AssertionError("not JSON: " + line, e);
      }
    }
    notifyAll();
  }

  private synchronized void end() {
    ended = true;
    notifyAll();
  }

  void type(String line) throws IOException {
    process.getOutputStream().write((line + "\n").getBytes(UTF_8));
    process.getOutputStream().flush();
  }

  /** Waits until so many things that fit were told. */
  synchronized void await(Predicate<JsonNode> wanted, int count) throws InterruptedException {
    long until = System.nanoTime() + PATIENCE * 1_000_000;
    while (told.stream().filter(wanted).count() < count) {
      long left = (until - System.nanoTime()) / 1_000_000;
      if (ended || left <= 0) {
        throw new AssertionError("was not told" + (ended ? ", and it ended" : "") + ": " + told);
      }
      wait(left);
    }
  }

  /** Waits until the official is on duty and the instrument is heard. */
  void awaitReady() throws InterruptedException {
    await(told -> kind(told).equals("official"), 1);
    await(told -> kind(told).equals("link") && words(told).startsWith("instrument listening"), 1);
  }

  static String kind(JsonNode told) {
    return told.get("kind").asText();
  }

  static String words(JsonNode told) {
    return told.get("words").asText();
  }

  synchronized List<JsonNode> told(String kind) {
    return told.stream().filter(t -> kind(t).equals(kind)).toList();
  }

  /** Kills the machine (SIGKILL where there are signals) and waits for what it still had told. */
  void kill() throws InterruptedException {
    // By its handle: the process's own method would close the stream with the last words in it
    process.toHandle().destroyForcibly();
    process.waitFor();
    reader.join();
  }

  /** Tells the machine to end (SIGTERM where there are signals). */
  int terminate() throws InterruptedException {
    process.toHandle().destroy();
    int code = process.waitFor();
    reader.join();
    return code;
  }

  /** Ends the input and waits for the end. */
  int finish() throws IOException, InterruptedException {
    process.getOutputStream().close();
    int code = process.waitFor();
    reader.join();
    return code;
  }

  @Override
  public void close() {
    try {
      kill();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }
}
