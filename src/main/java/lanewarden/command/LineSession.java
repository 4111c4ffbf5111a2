package lanewarden.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.journal.Check;
import lanewarden.journal.TakenShot;
import lanewarden.station.CheckInLine;
import lanewarden.station.CheckView;
import lanewarden.station.Station;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;

/** An official at the line in a terminal. */
final class LineSession extends Session<LineWord> {

  /** A line of real archers that was quiet so long brings no more arrows. */
  private static final Duration QUIET = Duration.ofSeconds(60);

  private static final Pattern SHOT = Pattern.compile("#([0-9]{1,3})\\s+(.*)");

  static final Pattern BECAUSE =
      Pattern.compile("(.+?)\\s+because\\s+(.+)", Pattern.CASE_INSENSITIVE);

  private final CheckInLine line;
  private final Station station;
  private final Optional<Path> organizerKey;
  private final PeopleWords people;
  private final Consumer<Notice> ear;

  /**
   * @param organizerKey where the organizer's key is, or empty for its place in the folder
   * @param ear takes what happens
   * @param refusals takes why a word was not obeyed
   */
  LineSession(
      CheckInLine line,
      Workplace workplace,
      Optional<Path> organizerKey,
      Consumer<Notice> ear,
      Consumer<? super Trouble> refusals) {
    super(
        LineWord.values(), line, workplace.terminal(), Narrator.of(line.station(), ear), refusals);
    this.line = line;
    this.station = line.station();
    this.organizerKey = organizerKey;
    this.people =
        new PeopleWords(station.keyOffice(workplace.here().random()), organizerKey, secrets(), ear);
    this.ear = ear;
  }

  @Override
  boolean obey(LineWord word, String rest, LineSource typed)
      throws StationException, CommandRefused, InterruptedException, IOException {
    switch (word) {
      case CALL -> because(rest, station::call);
      case SETUP -> station.officiating().state(SetUpWords.read(rest));
      case TICK -> tick(rest);
      case TYPED -> station.type(rest);
      case VOID ->
          ofShot(rest, station.officiating()::declareVoid, station.officiating()::declareLastVoid);
      case KEEP -> ofShot(rest, station.officiating()::keep, station.officiating()::keepFirst);
      case NEXT -> station.next();
      case END -> station.endCheck(rest);
      case STATUS -> Narration.of(station.view()).forEach(ear);
      case WIRE -> WireNarration.of(station.wire()).forEach(ear);
      case WAIT -> line.awaitArrows(QUIET);
      case RETRY -> station.retry();
      case PHASE -> because(rest, station.proceedings()::begin);
      case LATE -> late(rest);
      case DRAW -> draw(rest);
      case ADOPT -> adopt(rest, typed);
      case IN -> signIn(rest, typed);
      case ENROL -> people.enrol(rest, typed);
      case SUSPEND -> people.suspend(rest, typed);
      case REPLACE -> people.replace(rest, typed);
      case READMIT -> people.readmit(rest, typed);
      case SEAL -> people.seal(typed);
      case WITNESS -> witness(rest);
      case HELP -> terminal().say(LineWord.list());
      case OUT -> {
        return false;
      }
      case PROVE -> station.proving().begin();
      case REFERENCE -> station.proving().reference(rest);
      case BREAK -> station.proving().breakOff(rest);
      case HOLD -> station.proving().hold(rest);
      case STOP -> station.proceedings().stopLine(rest);
      case CLEAR -> station.proceedings().clearLine();
      case LIFT -> station.proving().lift(rest);
      case PROTEST -> DocketWords.at(station).file(rest);
      case RECHECK -> station.recheck(DocketWords.protest(rest));
      case RULE -> DocketWords.at(station).rule(rest);
      case CORRECT -> DocketWords.at(station).correct(rest);
      case CONFIRM -> DocketWords.at(station).confirm(rest);
      case CLOSE -> {
        station.closeLine(rest.replaceFirst("(?i)^because\\s+", ""));
        return false;
      }
    }
    return true;
  }

  private void adopt(String reason, LineSource typed)
      throws StationException, CommandRefused, IOException {
    secrets().expect(1, () -> station.proceedings().requireAdoptable(reason));
    char[] passphrase = secrets().of("the organizer", typed);
    station.proceedings().adoptRuleBook(organizerKey, passphrase, reason);
  }

  @Override
  void obeyOther(String typed) throws StationException {
    because(typed, station::call);
  }

  /** What can be done with words that say why. */
  @FunctionalInterface
  private interface Reasoned {
    void act(String what, String why) throws StationException;
  }

  private static void because(String typed, Reasoned act) throws StationException {
    Matcher because = BECAUSE.matcher(typed);
    if (because.matches()) {
      act.act(because.group(1), because.group(2));
    } else {
      act.act(typed, "");
    }
  }

  private void tick(String rest) throws StationException {
    if (rest.isEmpty()) {
      station.officiating().tickAll();
      return;
    }
    List<String> conditions =
        station.view().check().map(c -> c.division().rule().conditions()).orElse(List.of());
    boolean numbered = rest.matches("[0-9]{1,2}");
    int number = numbered ? Integer.parseInt(rest) : 0;
    boolean named = number >= 1 && number <= conditions.size();
    station.officiating().tick(named ? conditions.get(number - 1) : rest);
  }

  private void late(String rest) throws StationException {
    String[] words = rest.split("\\s+", 3);
    String division = words.length > 1 ? words[1] : "";
    String name = words.length > 2 ? words[2] : "";
    station.proceedings().addLate(words[0], name, division);
    ear.accept(
        Notice.of("late", words[0] + " " + name + ", " + division)
            .with("bib", words[0])
            .with("name", name)
            .with("division", division));
  }

  /** The head stands last: a station's name may have several words. */
  private void witness(String rest) throws StationException {
    int head = rest.lastIndexOf(' ') + 1;
    ear.accept(
        WitnessCommand.signed(
            rest.substring(0, head).strip(),
            rest.substring(head),
            (other, printed) -> station.proceedings().witness(other, printed)));
  }

  private void draw(String rest) throws StationException {
    String[] words = rest.split("\\s+", 2);
    ear.accept(
        Narration.draw(station.proceedings().draw(words[0], words.length > 1 ? words[1] : "")));
  }

  /** What can be done with one reading. */
  @FunctionalInterface
  private interface OnReading {
    void act(long reading, String why) throws StationException;
  }

  /** What can be done with the reading that stands nearest. */
  @FunctionalInterface
  private interface OnAny {
    void act(String why) throws StationException;
  }

  /** A reason, for the reading of a shot where one is named. */
  private void ofShot(String rest, OnReading one, OnAny any)
      throws StationException, CommandRefused {
    Matcher shot = SHOT.matcher(rest);
    if (!shot.matches()) {
      any.act(rest);
      return;
    }
    int number = Integer.parseInt(shot.group(1));
    Optional<Check> check = station.view().check().map(CheckView::check);
    List<TakenShot> shots = check.map(Check::shots).orElse(List.of());
    boolean taken = number >= 1 && number <= shots.size();
    if (check.isPresent() && !taken) {
      throw CommandRefused.misstep(
          "NO-SUCH-SHOT",
          "Nothing was changed.",
          "The check at the line has no shot " + number + ".",
          shots.isEmpty() ? "Wait for a shot first." : "Name one from 1 to " + shots.size() + ".");
    }
    one.act(taken ? shots.get(number - 1).sequence() : 0, shot.group(2));
  }
}
