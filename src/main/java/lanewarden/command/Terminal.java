package lanewarden.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.Optional;

/**
 * Where a command reads and writes: results to one stream, talk to the other.
 *
 * <p>Every line is out on return. Any thread may write; one reads.
 */
public final class Terminal {
  private final BufferedReader in;
  private final PrintWriter results;
  private final PrintWriter talk;
  private final HiddenEntry hidden;

  /** A terminal on three streams and a keyboard for secrets. */
  public Terminal(
      InputStream in,
      OutputStream results,
      OutputStream talk,
      Charset charset,
      HiddenEntry hidden) {
    this.in = new BufferedReader(new InputStreamReader(in, charset));
    this.results = new PrintWriter(new OutputStreamWriter(results, charset), true);
    this.talk = new PrintWriter(new OutputStreamWriter(talk, charset), true);
    this.hidden = hidden;
  }

  /** The next line typed; empty at the end of the input. */
  Optional<String> line() throws IOException {
    return Optional.ofNullable(in.readLine());
  }

  /** Asks for a secret. */
  Optional<char[]> secret(String prompt) {
    return hidden.ask(prompt);
  }

  /** Writes a line of the result. */
  void result(String line) {
    results.println(line);
  }

  /** Writes a line beside the result. */
  void say(String line) {
    talk.println(line);
  }

  PrintWriter results() {
    return results;
  }

  PrintWriter talk() {
    return talk;
  }
}
