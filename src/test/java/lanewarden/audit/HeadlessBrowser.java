package lanewarden.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A real Chromium without a window, driven by the Chrome DevTools Protocol over its web socket.
 *
 * <p>Owned by one thread.
 */
final class HeadlessBrowser implements AutoCloseable {
  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");
  private static final Duration PATIENCE = Duration.ofSeconds(90);

  private final ObjectMapper json = new ObjectMapper();
  private final Process process;
  private final Path profile;
  private final WebSocket socket;
  private final BlockingQueue<JsonNode> answers = new LinkedBlockingQueue<>();
  private int sent;

  private HeadlessBrowser(Process process, Path profile) throws Exception {
    this.process = process;
    this.profile = profile;
    HttpClient http = HttpClient.newHttpClient();
    URI blank = URI.create("http://127.0.0.1:" + port() + "/json/new?about:blank");
    HttpRequest request =
        HttpRequest.newBuilder(blank).PUT(HttpRequest.BodyPublishers.noBody()).build();
    String tab = http.send(request, HttpResponse.BodyHandlers.ofString()).body();
    URI address = URI.create(json.readTree(tab).get("webSocketDebuggerUrl").asText());
    this.socket = http.newWebSocketBuilder().buildAsync(address, new Listener()).join();
  }

  /** The browser on this machine, if there is one. */
  static Optional<Path> find() {
    return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
        .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  static HeadlessBrowser start(Path browser) throws Exception {
    Path profile = Files.createTempDirectory("lanewarden-browser");
    List<String> command =
        new ArrayList<>(
            List.of(
                browser.toString(),
                "--headless=new",
                "--remote-debugging-port=0",
                "--remote-allow-origins=*",
                "--user-data-dir=" + profile,
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--no-first-run"));
    if (System.getProperty("user.name").equals("root")) {
      // Chromium's sandbox refuses to start as root, which is who runs this in a container
      command.add("--no-sandbox");
    }
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(profile.resolve("output.txt").toFile())
            .start();
    try {
      return new HeadlessBrowser(process, profile);
    } catch (Exception failed) {
      process.destroyForcibly();
      throw failed;
    }
  }

  private String port() throws Exception {
    Path file = profile.resolve("DevToolsActivePort");
    long until = System.nanoTime() + PATIENCE.toNanos();
    while (!Files.exists(file) || Files.readAllLines(file).size() < 2) {
      if (System.nanoTime() > until || !process.isAlive()) {
        throw new IOException(
            "The browser did not start: " + Files.readString(profile.resolve("output.txt")));
      }
      Thread.sleep(50);
    }
    return Files.readAllLines(file).get(0);
  }

  /** Opens a page from the disk, in a window of this size. */
  void open(Path page, int width, int height) throws Exception {
    ObjectNode size = json.createObjectNode();
    size.put("width", width).put("height", height).put("deviceScaleFactor", 1).put("mobile", false);
    call("Emulation.setDeviceMetricsOverride", size);
    call("Page.navigate", json.createObjectNode().put("url", page.toUri().toString()));
    await("location.protocol === 'file:' && document.readyState === 'complete'");
  }

  /** Puts a file into the one file input of the page, as if the user had picked it. */
  void choose(Path file) throws Exception {
    ObjectNode find = json.createObjectNode();
    find.put("expression", "document.querySelector('input[type=file]')");
    String input = call("Runtime.evaluate", find).at("/result/objectId").asText();
    ObjectNode pick = json.createObjectNode().put("objectId", input);
    pick.putArray("files").add(file.toAbsolutePath().toString());
    call("DOM.setFileInputFiles", pick);
  }

  /** The value of an expression in the page. */
  JsonNode evaluate(String expression) throws Exception {
    ObjectNode parameters = json.createObjectNode();
    parameters.put("expression", expression).put("returnByValue", true).put("awaitPromise", true);
    JsonNode answer = call("Runtime.evaluate", parameters);
    if (answer.has("exceptionDetails")) {
      throw new IOException(answer.get("exceptionDetails").toString());
    }
    return answer.at("/result/value");
  }

  /** Waits until an expression is true. */
  void await(String expression) throws Exception {
    await(expression, PATIENCE);
  }

  /** Waits at most so long until an expression is true. */
  void await(String expression, Duration patience) throws Exception {
    long until = System.nanoTime() + patience.toNanos();
    while (!evaluate(expression).asBoolean()) {
      if (System.nanoTime() > until) {
        throw new IOException("Waited in vain for " + expression);
      }
      Thread.sleep(20);
    }
  }

  /** A picture of the window, as PNG. */
  byte[] picture() throws Exception {
    JsonNode answer = call("Page.captureScreenshot", json.createObjectNode());
    return Base64.getDecoder().decode(answer.get("data").asText());
  }

  private JsonNode call(String method, ObjectNode parameters) throws Exception {
    int id = ++sent;
    ObjectNode message = json.createObjectNode().put("id", id).put("method", method);
    message.set("params", parameters);
    socket.sendText(message.toString(), true).join();
    while (true) {
      JsonNode answer = answers.poll(PATIENCE.toSeconds(), TimeUnit.SECONDS);
      if (answer == null) {
        throw new IOException("The browser did not answer " + method);
      }
      if (answer.path("id").asInt() == id) {
        if (answer.has("error")) {
          throw new IOException(method + ": " + answer.get("error"));
        }
        return answer.get("result");
      }
    }
  }

  @Override
  public void close() throws Exception {
    socket.abort();
    process.destroy();
    if (!process.waitFor(10, TimeUnit.SECONDS)) {
      process.destroyForcibly().waitFor();
    }
    for (int attempt = 0; Files.exists(profile) && attempt < 20; attempt++) {
      deleteProfile();
      Thread.sleep(50);
    }
  }

  /** Children of the browser that still end may write once more, so this is tried again. */
  private void deleteProfile() throws IOException {
    try (Stream<Path> files = Files.walk(profile)) {
      for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
        each.toFile().delete();
      }
    }
  }

  /** Puts messages together that come in pieces. */
  private final class Listener implements WebSocket.Listener {
    private final StringBuilder text = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence piece, boolean last) {
      text.append(piece);
      if (last) {
        try {
          answers.add(json.readTree(text.toString()));
        } catch (IOException noJson) {
          throw new IllegalStateException(noJson);
        }
        text.setLength(0);
      }
      from.request(1);
      return null;
    }
  }
}
