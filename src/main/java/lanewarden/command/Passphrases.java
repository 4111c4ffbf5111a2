package lanewarden.command;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * Where passphrases come from: a file or descriptor, or the keyboard, unseen. Never the command
 * line, which every user of the machine can read.
 */
final class Passphrases {
  private final Terminal terminal;

  Passphrases(Terminal terminal) {
    this.terminal = terminal;
  }

  /** The first line of the file, or what is typed. The caller wipes it. */
  char[] of(String person, Optional<Path> file) throws IOException, CommandRefused {
    if (file.isEmpty()) {
      return typed(promptFor(person));
    }
    char[] text = read(file.get());
    char[] line = firstLine(text);
    Arrays.fill(text, '\0');
    return line;
  }

  /** The passphrase of a person who gets a key: typed twice, or from a line "name: passphrase". */
  char[] fresh(String person, Optional<Path> file) throws IOException, CommandRefused {
    try (Fresh all = fresh(file)) {
      return all.of(person);
    }
  }

  /** The passphrases of several who get keys; the file is read once, since it may be a pipe. */
  Fresh fresh(Optional<Path> file) throws IOException, CommandRefused {
    return file.isPresent() ? new Listed(file.get(), read(file.get())) : this::twice;
  }

  /** Passphrases of those who get keys. */
  interface Fresh extends AutoCloseable {
    /** The passphrase of a person. The caller wipes it. */
    char[] of(String person) throws CommandRefused;

    /** Wipes what was read. */
    @Override
    default void close() {}
  }

  /** Passphrases from the lines of a file. */
  private static final class Listed implements Fresh {
    private final Path file;
    private final char[] text;

    Listed(Path file, char[] text) {
      this.file = file;
      this.text = text;
    }

    @Override
    public char[] of(String person) throws CommandRefused {
      return listed(person, file, text);
    }

    @Override
    public void close() {
      Arrays.fill(text, '\0');
    }
  }

  /**
   * The passphrase of a person in the middle of a session: typed unseen; where there is no keyboard
   * for that, the session is a script, and its next line is the passphrase. So it is never taken
   * for a word to obey, and never told.
   */
  char[] in(LineSource script, String person) throws IOException, CommandRefused {
    Optional<char[]> unseen = terminal.secret(promptFor(person));
    if (unseen.isPresent()) {
      return unseen.get();
    }
    return script.next().map(line -> line.strip().toCharArray()).orElseThrow(Passphrases::missing);
  }

  /** The same of a person who gets a key, typed twice where it is typed unseen. */
  char[] freshIn(LineSource script, String person) throws IOException, CommandRefused {
    return terminal.hasKeyboard() ? twice(person) : in(script, person);
  }

  private static String promptFor(String person) {
    return "Passphrase of " + person + ": ";
  }

  private char[] twice(String person) throws CommandRefused {
    char[] once = typed("New passphrase of " + person + ": ");
    char[] again = typed("The same again: ");
    boolean same = Arrays.equals(once, again);
    Arrays.fill(again, '\0');
    if (!same) {
      Arrays.fill(once, '\0');
      throw CommandRefused.misstep(
          "PASSPHRASES-DIFFER",
          "No key was made.",
          "The two passphrases of " + person + " differ.",
          "Start again, and type the same twice.");
    }
    return once;
  }

  private char[] typed(String prompt) throws CommandRefused {
    return terminal.secret(prompt).orElseThrow(Passphrases::missing);
  }

  private static CommandRefused missing() {
    return CommandRefused.misstep(
        "NO-KEYBOARD",
        "No passphrase could be asked for.",
        "The program does not run in a terminal of its own, or the input ended.",
        "Give the passphrase in a file; --help says how.");
  }

  private static char[] listed(String person, Path file, char[] text) throws CommandRefused {
    int start = 0;
    while (start < text.length) {
      int end = lineEnd(text, start);
      int colon = start;
      while (colon < end && text[colon] != ':') {
        colon++;
      }
      if (colon < end && new String(text, start, colon - start).strip().equals(person)) {
        return stripped(text, colon + 1, end);
      }
      start = end + 1;
    }
    throw CommandRefused.misstep(
        "PASSPHRASE-MISSING",
        "No key was made.",
        file + " has no line for " + person + ".",
        "Give each person one line: the name, a colon, the passphrase.");
  }

  private static char[] firstLine(char[] text) {
    return stripped(text, 0, lineEnd(text, 0));
  }

  private static int lineEnd(char[] text, int from) {
    int end = from;
    while (end < text.length && text[end] != '\n') {
      end++;
    }
    return end;
  }

  private static char[] stripped(char[] text, int from, int end) {
    int first = from;
    int last = end;
    while (first < last && Character.isWhitespace(text[first])) {
      first++;
    }
    while (last > first && Character.isWhitespace(text[last - 1])) {
      last--;
    }
    return Arrays.copyOfRange(text, first, last);
  }

  private static char[] read(Path file) throws IOException, CommandRefused {
    byte[] bytes = Files.readAllBytes(file);
    try {
      CharBuffer text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      char[] characters = new char[text.remaining()];
      text.get(characters);
      Arrays.fill(text.array(), '\0');
      return characters;
    } catch (CharacterCodingException e) {
      throw CommandRefused.misstep(
          "PASSPHRASE-FILE",
          "The passphrase file was refused.",
          file + " is not UTF-8 text.",
          "Save it as UTF-8.");
    } finally {
      Arrays.fill(bytes, (byte) 0);
    }
  }
}
