package lanewarden.command;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.station.LaneQuestion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says whether the lanes cope with the competitors, and what a random share of them finds. */
@Command(
    description = {
      "Say how many competitors the lanes can check, how long archers wait, and how likely a"
          + " random share finds at least one who is over the limit.",
      "Waiting is Erlang's formula for arrivals at random; checks vary less than it supposes, so"
          + " the true waiting is shorter."
    })
final class PlanCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Option(names = "--competitors", required = true, description = "How many may be checked.")
  private int competitors;

  @Option(names = "--minutes", required = true, description = "In which they come.")
  private double minutes;

  @Option(
      names = "--lanes",
      defaultValue = "1",
      description = "Lanes side by side (default: ${DEFAULT-VALUE}).")
  private int lanes;

  @Option(
      names = "--shots",
      defaultValue = "3",
      description =
          "Shots a check takes on average, re-checks included (default: ${DEFAULT-VALUE}).")
  private double shots;

  @Option(
      names = "--seconds",
      defaultValue = "15",
      description = "Seconds a shot (default: ${DEFAULT-VALUE}).")
  private double seconds;

  @Option(
      names = "--change",
      defaultValue = "20",
      description = "Seconds from one archer to the next (default: ${DEFAULT-VALUE}).")
  private double change;

  @Option(
      names = "--drawn",
      paramLabel = "COUNT",
      description = "How many of them are drawn at random and checked (default: all).")
  private Optional<Integer> drawn = Optional.empty();

  @Option(
      names = "--over",
      paramLabel = "COUNT",
      defaultValue = "1",
      description = "How many of them shoot over the limit (default: ${DEFAULT-VALUE}).")
  private int over;

  @Option(
      names = "--caught",
      paramLabel = "CHANCE",
      defaultValue = "1",
      description =
          "The chance from 0 to 1 that a check finds such an archer, as rules tells it (default:"
              + " ${DEFAULT-VALUE}).")
  private double caught;

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  PlanCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    LaneQuestion.Answer answer = answer();
    Terminal terminal = workplace.terminal();
    if (json) {
      terminal.result(JsonLine.of(members(answer)));
      return ExitCode.FINE;
    }
    int checked = drawn.orElse(competitors);
    terminal.result(
        told(
            "lanes",
            "%d lane(s) can check %d in %.0f minutes; %d are to be checked, which needs %d lane(s)",
            lanes,
            answer.capacity(),
            minutes,
            checked,
            answer.lanesNeeded()));
    terminal.result(
        answer
            .waiting()
            .map(
                waiting ->
                    told(
                        "waiting",
                        "%.0f s on average, %.1f archers in line; %.0f of 100 have to wait",
                        waiting.meanSeconds(),
                        waiting.meanLength(),
                        100 * waiting.probability()))
            .orElseGet(() -> told("waiting", "the line grows as long as archers come")));
    terminal.result(
        told(
            "sample",
            "%d of %d checked find at least one of %d over the limit %.1f times in 100",
            checked,
            competitors,
            over,
            100 * answer.finds()));
    answer
        .enough()
        .ifPresent(
            enough ->
                terminal.result(
                    told(
                        "sample",
                        "for %.0f times in 100, draw %d",
                        100 * LaneQuestion.WANTED,
                        enough)));
    return ExitCode.FINE;
  }

  private LaneQuestion.Answer answer() throws CommandRefused {
    try {
      return new LaneQuestion(
              competitors,
              minutes,
              shots,
              seconds,
              change,
              lanes,
              drawn.orElse(competitors),
              over,
              caught)
          .answer();
    } catch (IllegalArgumentException e) {
      throw CommandRefused.misstep(
          "PLAN",
          "Nothing was worked out.",
          "In what was given, " + e.getMessage() + ".",
          "Correct that number.");
    }
  }

  private static String told(String kind, String words, Object... figures) {
    return Notice.of(kind, String.format(Locale.ROOT, words, figures)).line();
  }

  private static Map<String, Object> members(LaneQuestion.Answer answer) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("capacity", answer.capacity());
    members.put("lanesNeeded", answer.lanesNeeded());
    members.put("busy", answer.busy());
    answer
        .waiting()
        .ifPresent(
            waiting -> {
              members.put("waitProbability", waiting.probability());
              members.put("waitSeconds", waiting.meanSeconds());
              members.put("waitLength", waiting.meanLength());
            });
    members.put("finds", answer.finds());
    answer.enough().ifPresent(enough -> members.put("enough", enough));
    return members;
  }
}
