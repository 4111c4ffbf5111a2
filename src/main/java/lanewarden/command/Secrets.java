package lanewarden.command;

import java.io.IOException;
import lanewarden.station.StationException;

/**
 * The passphrases that a word of a session takes: typed unseen, or, where there is no keyboard for
 * that, the script's next lines. Such a line is never taken for a word to obey, and never told:
 * neither where the word was refused before it was read. One thread types.
 */
final class Secrets {
  private final Terminal terminal;
  private int mayFollow;

  /** What refuses a word before a passphrase is asked for it. */
  @FunctionalInterface
  interface Precondition {
    void require() throws StationException, CommandRefused;
  }

  Secrets(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * Refuses, before any is asked for, a word that needs no passphrase to be refused.
   *
   * @param count how many passphrases the word takes
   */
  void expect(int count, Precondition first) throws StationException, CommandRefused {
    // Set first, so that it holds whatever goes wrong
    mayFollow = terminal.hasKeyboard() ? 0 : count;
    first.require();
  }

  /** The passphrase of a person who has one. The caller wipes it. */
  char[] of(String person, LineSource typed) throws CommandRefused, IOException {
    char[] passphrase = new Passphrases(terminal).in(typed, person);
    mayFollow = Math.max(0, mayFollow - 1);
    return passphrase;
  }

  /** The passphrase of a person who gets a key: a keyboard is asked twice. The caller wipes it. */
  char[] fresh(String person, LineSource typed) throws CommandRefused, IOException {
    char[] passphrase = new Passphrases(terminal).freshIn(typed, person);
    mayFollow = Math.max(0, mayFollow - 1);
    return passphrase;
  }

  /**
   * Whether the next line must be passed over, since it may be a passphrase.
   *
   * @param asks whether it begins with a word that takes one: then it is the word, tried again
   */
  boolean passesOver(boolean asks) {
    boolean passes = mayFollow > 0 && !asks;
    mayFollow = passes ? mayFollow - 1 : 0;
    return passes;
  }
}
