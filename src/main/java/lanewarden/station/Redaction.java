package lanewarden.station;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.journal.Fact;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Verification;
import lanewarden.roster.Competitor;
import lanewarden.roster.Roster;
import lanewarden.written.WrittenRefused;

/**
 * Takes the names of an event out of a text, word by word: of competitors, officials, the event and
 * its station, and the folder's path. A name is found as it is written, so that words of the
 * program in small letters stay. A second net: what it is used on is written so that no name gets
 * into it.
 */
final class Redaction {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}]+");
  private static final int SHORTEST = 3;
  private static final String STRUCK = "…";

  private final Set<String> words = new HashSet<>();

  private final String path;

  private Redaction(String path) {
    this.path = path;
  }

  /** Of an event, as far as its ledger and its files can be read. */
  static Redaction of(EventFolder folder) {
    Redaction redaction = new Redaction(folder.path().toAbsolutePath().normalize().toString());
    redaction.takeLedger(folder);
    redaction.takeFiles(folder);
    return redaction;
  }

  private void takeLedger(EventFolder folder) {
    LedgerMeaning meaning = new LedgerMeaning();
    try {
      Verification found = Verification.of(folder.ledger(), List.of(), meaning::take);
      found.officials().stream().map(Enrolled::name).forEach(this::take);
      found.station().ifPresent(this::take);
    } catch (LedgerException unreadable) {
      // Nothing of what cannot be read is in the text
      return;
    }
    meaning.standing().ruleBook().ifPresent(book -> take(book.event()));
    meaning.standing().checks().forEach(check -> takePerson(check.opened()));
    meaning.standing().roster().flatMap(Redaction::read).ifPresent(this::takeRoster);
  }

  private static Optional<Roster> read(Fact.RosterAdopted adopted) {
    try {
      return Optional.of(Roster.signed(adopted.file(), adopted.text()));
    } catch (WrittenRefused unreadable) {
      return Optional.empty();
    }
  }

  private void takeFiles(EventFolder folder) {
    quietly(() -> takeRoster(folder.roster()));
    quietly(() -> folder.officials().forEach(this::take));
    quietly(() -> take(folder.settings().station()));
  }

  /** A file, which may be faulty. */
  @FunctionalInterface
  private interface Reading {
    void read() throws StationException;
  }

  private static void quietly(Reading file) {
    try {
      file.read();
    } catch (StationException unreadable) {
      // Nothing of what cannot be read is in the text
      return;
    }
  }

  private void takeRoster(Roster roster) {
    for (Competitor competitor : roster.competitors()) {
      take(competitor.name());
      takeBib(competitor.bib());
    }
  }

  private void takePerson(Fact.CheckOpened opened) {
    take(opened.name());
    takeBib(opened.bib());
  }

  /** A bib of digits alone is told from no other number, and is not looked for. */
  private void takeBib(String bib) {
    if (bib.chars().anyMatch(Character::isLetter)) {
      words(bib, word -> words.add(word));
    }
  }

  private void take(String name) {
    words(
        name,
        word -> {
          if (word.length() >= SHORTEST) {
            words.add(word);
          }
        });
  }

  private static void words(String text, Consumer<String> each) {
    Matcher found = WORD.matcher(text);
    while (found.find()) {
      each.accept(found.group());
    }
  }

  /** The text without them. */
  String of(String text) {
    return WORD.matcher(text.replace(path, STRUCK))
        .replaceAll(
            found ->
                words.contains(found.group()) ? STRUCK : Matcher.quoteReplacement(found.group()));
  }
}
