package lanewarden.command;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lanewarden.station.Trouble;

/** What is done at an open line instead of with a command that needs the ledger to itself. */
final class BesideTheLine {
  private static final String IN_USE = "LEDGER-IN-USE";

  private static final Map<String, List<LineWord>> WORDS =
      Map.of(
          "official",
          List.of(LineWord.ENROL, LineWord.SUSPEND, LineWord.REPLACE, LineWord.READMIT),
          "witness",
          List.of(LineWord.WITNESS),
          "seal-key",
          List.of(LineWord.SEAL),
          "draw",
          List.of(LineWord.DRAW),
          "adopt",
          List.of(LineWord.ADOPT),
          "protest",
          List.of(LineWord.PROTEST),
          "ruling",
          List.of(LineWord.RULE),
          "correct",
          List.of(LineWord.CORRECT),
          "confirm",
          List.of(LineWord.CONFIRM));

  private static final Map<String, String> OTHERWISE =
      Map.of(
          "set-ups",
          "Shoot at that kiosk (Set-ups compared), or leave the line in the terminal (out): the"
              + " check stays; and go back to it afterwards.",
          "compare",
          "Compare without --keep-in, and keep the file once the line was left (out); or open and"
              + " sign it at that kiosk (Set-ups compared).",
          "port",
          "Leave that line first (out), then change the port.");

  private BesideTheLine() {}

  /**
   * The trouble with what to do at the line, where it is that a line is open.
   *
   * @param command that was refused
   */
  static Trouble told(String command, Trouble trouble) {
    if (!trouble.code().equals(IN_USE)) {
      return trouble;
    }
    List<LineWord> words = WORDS.getOrDefault(command, List.of());
    String remedy =
        words.isEmpty()
            ? OTHERWISE.getOrDefault(command, "")
            : "Do it where the line is open. In its terminal type: "
                + words.stream().map(LineWord::form).collect(Collectors.joining("; or: "))
                + ".";
    return remedy.isEmpty()
        ? trouble
        : new Trouble(
            trouble.what(),
            trouble.why(),
            remedy + " " + trouble.remedy(),
            trouble.code(),
            trouble.kind());
  }
}
