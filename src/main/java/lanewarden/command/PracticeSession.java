package lanewarden.command;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.audit.comparison.ComparisonPaper;
import lanewarden.bench.Comparison;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.PracticeShot;
import lanewarden.station.CheckInLine;
import lanewarden.station.Practising;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;

/** Set-ups shot beside each other in a terminal; nobody is checked. */
final class PracticeSession extends Session<PracticeWord> {

  /** Archers who were quiet so long shoot no more. */
  private static final Duration QUIET = Duration.ofSeconds(60);

  private static final Pattern BY = Pattern.compile("(.+)\\s+by\\s+(.+)", Pattern.CASE_INSENSITIVE);

  private final CheckInLine line;
  private final Practising practising;
  private final ComparisonPaper paper;
  private final Consumer<Notice> ear;
  private final boolean json;

  /** Writes what was found to a file. */
  @FunctionalInterface
  private interface Press {
    void write(Comparison found, Path to) throws IOException;
  }

  /**
   * @param paper writes what was found
   * @param ear takes what happens
   * @param json whether a machine listens
   * @param refusals takes why a word was not obeyed
   */
  PracticeSession(
      CheckInLine line,
      ComparisonPaper paper,
      Terminal terminal,
      Consumer<Notice> ear,
      boolean json,
      Consumer<? super Trouble> refusals) {
    super(
        PracticeWord.values(),
        line,
        terminal,
        Narrator.of(line.station(), ear, PracticeNarration::of, PracticeNarration::between),
        refusals);
    this.line = line;
    this.practising = line.station().practising();
    this.paper = paper;
    this.ear = ear;
    this.json = json;
  }

  @Override
  boolean obey(PracticeWord word, String rest, LineSource typed)
      throws StationException, CommandRefused, InterruptedException, IOException {
    switch (word) {
      case SETUP -> practising.shoot(PracticeSetUpWords.read(rest));
      case LISTEN -> practising.listen();
      case REST -> practising.rest();
      case TYPED -> practising.type(rest);
      case MISREAD -> mark(rest, PracticeShot.Word.MISREAD);
      case GOOD -> mark(rest, PracticeShot.Word.GOOD);
      case TESTS -> mark(rest, PracticeShot.Word.NONE);
      case SHOTS -> PracticeNarration.listed(station().view().practice()).forEach(ear);
      case COMPARE -> compare(found());
      case OPEN -> practising.open(path(rest));
      case NEW -> practising.beginAnew();
      case WRITE -> {
        practising.save(path(rest));
        written(path(rest));
      }
      case TABLE -> write(rest, paper::csv);
      case PAPER -> write(rest, paper::pdf);
      case KEEP -> keep(rest, typed);
      case IN -> signIn(rest, typed);
      case STOP -> station().proceedings().stopLine(rest);
      case CLEAR -> station().proceedings().clearLine();
      case STATUS -> PracticeNarration.of(station().view()).forEach(ear);
      case WAIT -> line.awaitArrows(QUIET);
      case HELP -> terminal().say(PracticeWord.list());
      case OUT -> {
        return false;
      }
    }
    return true;
  }

  @Override
  void obeyOther(String typed) throws CommandRefused {
    throw CommandRefused.misstep(
        "NO-SUCH-WORD",
        "Nothing was done.",
        "\"" + typed + "\" begins with none of the words here.",
        "Type help to see them. A reading is typed behind its word: typed 301.2");
  }

  private void mark(String rest, PracticeShot.Word said) throws CommandRefused {
    int number = rest.matches("[0-9]{1,6}") ? Integer.parseInt(rest) : -1;
    if (!PracticeNarration.hasLine(station().view().practice(), number)) {
      throw CommandRefused.misstep(
          "NO-SUCH-SHOT",
          "Nothing was changed.",
          "No shot stands on line \"" + rest + "\" of the practice.",
          "Type shots to see every shot with its line.");
    }
    practising.mark(number, said);
  }

  private Comparison found() throws CommandRefused {
    return practising
        .comparison()
        .orElseThrow(
            () ->
                CommandRefused.misstep(
                    "PRACTICE-EMPTY",
                    "Nothing was done.",
                    "Nothing was shot yet.",
                    "Take a shot first."));
  }

  private void compare(Comparison comparison) {
    if (json) {
      ear.accept(
          new Notice(
              "comparison",
              new ComparisonSheet(comparison).summary().toString(),
              ComparisonMembers.of(
                  comparison, Optional.empty(), Optional.empty(), OptionalLong.empty())));
      return;
    }
    ComparisonLines.of(comparison).forEach(terminal()::result);
  }

  private void write(String rest, Press press) throws CommandRefused {
    Comparison found = found();
    Path to = path(rest);
    try {
      if (Files.exists(to)) {
        throw new FileAlreadyExistsException(to.toString());
      }
      press.write(found, to);
    } catch (IOException e) {
      throw new CommandRefused(Trouble.of(e));
    }
    written(to);
  }

  private void written(Path to) {
    ear.accept(Notice.of("written", to.toString()).with("file", to.toString()));
  }

  private static Path path(String typed) throws CommandRefused {
    try {
      if (!typed.isBlank()) {
        return Path.of(typed);
      }
    } catch (InvalidPathException e) {
      throw noFile(String.valueOf(e.getMessage()));
    }
    throw noFile("No file was named.");
  }

  private static CommandRefused noFile(String why) {
    return CommandRefused.misstep(
        "NO-FILE", "Nothing was done.", why, "Type the file's name behind the word.");
  }

  /** Whoever is on duty signs; else an official who comes for it. */
  private void keep(String rest, LineSource typed)
      throws StationException, CommandRefused, IOException {
    long entry;
    if (station().view().official().isPresent()) {
      entry = practising.keep(rest);
    } else {
      List<String> officials = station().officials();
      Matcher by = BY.matcher(rest);
      boolean named = by.matches() && officials.contains(by.group(2));
      String title = named ? by.group(1) : rest;
      String official = named ? by.group(2) : officials.size() == 1 ? officials.get(0) : "";
      secrets().expect(1, () -> requireKeepable(official));
      entry = practising.keep(official, secrets().of(official, typed), title);
    }
    ear.accept(Notice.of("kept", "with entry " + entry).with("entry", entry));
  }

  private void requireKeepable(String official) throws StationException, CommandRefused {
    Comparison unused = found();
    if (official.isEmpty()) {
      throw CommandRefused.misstep(
          "WHICH-OFFICIAL",
          "Nothing was signed.",
          "It is not clear who signs. The officials are "
              + String.join(", ", station().officials())
              + ".",
          "Say who: keep TITLE by OFFICIAL");
    }
  }
}
