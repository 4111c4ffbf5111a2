package lanewarden.command;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.station.CheckInLine;
import lanewarden.station.Station;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;

/**
 * A station worked in a terminal: obeys typed words, and tells everything that happens.
 *
 * <p>A word that cannot be obeyed is answered and changes nothing. One thread types; the end may
 * come from another.
 *
 * @param <W> its words
 */
abstract class Session<W extends SessionWord> {
  private final W[] words;
  private final CheckInLine line;
  private final Terminal terminal;
  private final Consumer<? super Trouble> refusals;
  private final Narrator narrator;
  private final Secrets secrets;

  /**
   * @param words every word of the session
   * @param narrator tells what happens at the line's station
   * @param refusals takes why a word was not obeyed
   */
  Session(
      W[] words,
      CheckInLine line,
      Terminal terminal,
      Narrator narrator,
      Consumer<? super Trouble> refusals) {
    this.words = words.clone();
    this.line = line;
    this.terminal = terminal;
    this.secrets = new Secrets(terminal);
    this.narrator = narrator;
    this.refusals = refusals;
  }

  /**
   * Obeys a word; false if it leaves.
   *
   * @param rest what follows the word
   * @param typed where a passphrase may come from
   */
  abstract boolean obey(W word, String rest, LineSource typed)
      throws StationException, CommandRefused, InterruptedException, IOException;

  /** Obeys a line that begins with none of the words. */
  abstract void obeyOther(String line) throws StationException, CommandRefused;

  /** Where it is worked. */
  final Terminal terminal() {
    return terminal;
  }

  /** The station that it works. */
  final Station station() {
    return line.station();
  }

  /** Obeys one line after the other, up to the last or to one that leaves. */
  final void obey(LineSource typed) throws IOException, InterruptedException {
    boolean stays = true;
    Optional<String> next = typed.next();
    while (stays && next.isPresent()) {
      stays = obey(next.get().strip(), typed);
      narrator.settle();
      next = stays ? typed.next() : Optional.empty();
    }
  }

  /** Obeys a line; false if it leaves. */
  private boolean obey(String typedLine, LineSource typed)
      throws InterruptedException, IOException {
    if (typedLine.isEmpty() || typedLine.startsWith("#")) {
      return true;
    }
    Optional<W> word = SessionWord.first(words, typedLine);
    if (secrets.passesOver(word.filter(W::asksPassphrase).isPresent())) {
      terminal.say(
          "The line after the word that was refused was passed over: it may be the passphrase.");
      return true;
    }
    try {
      if (word.isPresent()) {
        return obey(word.get(), word.get().rest(typedLine), typed);
      }
      obeyOther(typedLine);
    } catch (StationException e) {
      refusals.accept(e.trouble());
    } catch (CommandRefused e) {
      refusals.accept(e.trouble());
    }
    return true;
  }

  /** Where the passphrases come from that words take. */
  final Secrets secrets() {
    return secrets;
  }

  /** An official comes on duty. */
  final void signIn(String name, LineSource typed)
      throws StationException, CommandRefused, IOException {
    Station station = station();
    secrets.expect(1, () -> station.requireOfficial(name));
    station.signIn(name, secrets.of(name, typed));
  }

  /** Leaves in order: the official signs out, all is told, the ledger is closed. */
  final void leave() throws StationException, InterruptedException {
    try {
      line.signOut();
      narrator.end();
    } finally {
      int lost = station().view().losable();
      if (lost > 0) {
        terminal.say(
            "What was received last could not be written and ends with this program: "
                + lost
                + ". Nothing of it counts; the check at the line stands as it was signed.");
      }
      line.close();
    }
  }
}
