package lanewarden.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.station.Trouble;

/**
 * Where a command reads and writes: results to one stream, talk to the other.
 *
 * <p>Every line is out on return. Any thread may write; one reads.
 */
public final class Terminal {

  /** Control characters, those that end a line, and those that turn the direction of writing. */
  private static final Pattern WORKING =
      Pattern.compile("[\\p{Cc}\\u2028\\u2029\\u200e\\u200f\\u061c\\u202a-\\u202e\\u2066-\\u2069]");

  private final BufferedReader in;
  private final PrintWriter results;
  private final PrintWriter talk;
  private final Optional<HiddenEntry> hidden;

  /** A terminal on three streams and, where a person sits at it, a keyboard for secrets. */
  public Terminal(
      InputStream in,
      OutputStream results,
      OutputStream talk,
      Charset charset,
      Optional<HiddenEntry> hidden) {
    this.in = new BufferedReader(new InputStreamReader(in, charset));
    this.results = new PrintWriter(new OutputStreamWriter(results, charset), true);
    this.talk = new PrintWriter(new OutputStreamWriter(talk, charset), true);
    this.hidden = hidden;
  }

  /** The next line typed; empty at the end of the input. */
  Optional<String> line() throws IOException {
    return Optional.ofNullable(in.readLine());
  }

  /** Whether secrets can be typed unseen; where not, a script may be what types. */
  boolean hasKeyboard() {
    return hidden.isPresent();
  }

  /** Asks for a secret; empty if there is no keyboard, or it ended. */
  Optional<char[]> secret(String prompt) {
    return hidden.flatMap(keyboard -> keyboard.ask(legible(prompt, "")));
  }

  /** Writes a line of the result; what would work the terminal is shown instead. */
  void result(String line) {
    results.println(legible(line, ""));
  }

  /** Writes lines beside the result; what would work the terminal is shown instead. */
  void say(String lines) {
    talk.println(legible(lines, "\n\t"));
  }

  /** People read a refusal beside the result; a machine that asked for JSON gets one object too. */
  void refusal(Trouble trouble, boolean json) {
    say(trouble.toString());
    if (json) {
      result(Narration.trouble(trouble).json());
    }
  }

  /** With such characters as four hex digits each, which JSON reads back as what they were. */
  private static String legible(String text, String kept) {
    return WORKING
        .matcher(text.replace("\r\n", "\n"))
        .replaceAll(
            found ->
                Matcher.quoteReplacement(
                    kept.contains(found.group())
                        ? found.group()
                        : String.format(Locale.ROOT, "\\u%04x", (int) found.group().charAt(0))));
  }

  PrintWriter results() {
    return results;
  }

  PrintWriter talk() {
    return talk;
  }
}
