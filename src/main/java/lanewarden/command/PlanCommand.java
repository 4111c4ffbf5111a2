package lanewarden.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.station.LaneFigure;
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

  @Option(
      names = "--competitors",
      paramLabel = "COUNT",
      required = true,
      description = "How many competitors there are.")
  private String competitors = "";

  @Option(
      names = "--minutes",
      paramLabel = "NUMBER",
      required = true,
      description = "In how many minutes those who are checked come to the lanes.")
  private String minutes = "";

  @Option(
      names = "--lanes",
      paramLabel = "COUNT",
      defaultValue = LaneFigure.Usual.LANES,
      description = "Lanes side by side, each with its instrument (default: ${DEFAULT-VALUE}).")
  private String lanes = "";

  @Option(
      names = "--shots",
      paramLabel = "NUMBER",
      defaultValue = LaneFigure.Usual.SHOTS,
      description =
          "Shots a check takes on average, re-checks and void ones included (default:"
              + " ${DEFAULT-VALUE}).")
  private String shots = "";

  @Option(
      names = "--seconds",
      paramLabel = "NUMBER",
      defaultValue = LaneFigure.Usual.SECONDS_A_SHOT,
      description = "Seconds a shot (default: ${DEFAULT-VALUE}).")
  private String seconds = "";

  @Option(
      names = "--change",
      paramLabel = "NUMBER",
      defaultValue = LaneFigure.Usual.SECONDS_A_CHANGE,
      description =
          "Seconds from the last shot of one archer to the first of the next (default:"
              + " ${DEFAULT-VALUE}).")
  private String change = "";

  @Option(
      names = "--drawn",
      paramLabel = "COUNT",
      description =
          "How many of the competitors are drawn at random and come to be checked (default: all).")
  private Optional<String> drawn = Optional.empty();

  @Option(
      names = "--over",
      paramLabel = "COUNT",
      defaultValue = LaneFigure.Usual.OVER_LIMIT,
      description =
          "How many of the competitors shoot over the limit, as supposed (default:"
              + " ${DEFAULT-VALUE}).")
  private String over = "";

  @Option(
      names = "--caught",
      paramLabel = "SHARE",
      defaultValue = LaneFigure.Usual.CAUGHT,
      description =
          "How often a check finds such an archer, as rules tells it (default: ${DEFAULT-VALUE}).")
  private String caught = "";

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  PlanCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    LaneQuestion question = question();
    LaneQuestion.Answer answer = question.answer();
    Terminal terminal = workplace.terminal();
    if (json) {
      terminal.result(JsonLine.of(members(answer)));
      return ExitCode.FINE;
    }
    terminal.result(
        told("check", "takes %.0f s on a lane", answer.secondsACheck())
            + (question.drawn() == 0 ? "" : timeForAll(question.drawn(), answer)));
    terminal.result(
        told(
            "lanes",
            "%s can check %d in %s if never idle; for the line not to grow, %s",
            lanes(question.lanes()),
            answer.capacity(),
            time(60 * question.minutes()),
            answer.lanesNeeded() == 1 ? "1 is needed" : answer.lanesNeeded() + " are needed"));
    terminal.result(
        told("busy", "a lane is taken %.0f %% of the time", 100 * Math.min(1, answer.busy())));
    terminal.result(
        answer
            .waiting()
            .map(PlanCommand::waiting)
            .orElseGet(() -> told("waiting", "the line grows as long as archers come")));
    samples(question, answer).forEach(terminal::result);
    return ExitCode.FINE;
  }

  private static String timeForAll(int drawn, LaneQuestion.Answer answer) {
    return String.format(
        Locale.ROOT,
        "; for %d to be checked in time it may take %.0f s",
        drawn,
        answer.secondsAvailable());
  }

  private static String waiting(LaneQuestion.Waiting waiting) {
    return told(
        "waiting",
        "%s on average in the long run, %.1f archers in line; %.0f of 100 have to wait",
        time(waiting.meanSeconds()),
        waiting.meanLength(),
        100 * waiting.probability());
  }

  private static List<String> samples(LaneQuestion question, LaneQuestion.Answer answer) {
    if (question.overLimit() == 0) {
      return List.of(told("sample", "nobody is over the limit, so there is nobody to find"));
    }
    boolean inTime = question.drawn() <= answer.capacity();
    List<String> said = new ArrayList<>();
    said.add(
        told(
            "sample",
            "%d of %d checked %s at least one of %d over the limit %.1f times in 100",
            question.drawn(),
            question.competitors(),
            inTime ? "find" : "would find",
            question.overLimit(),
            100 * answer.finds()));
    if (!inTime) {
      said.add(
          told(
              "sample",
              "but there is time for %d only: those find one %.1f times in 100",
              answer.capacity(),
              100 * answer.findsInTime()));
    }
    said.add(enough(answer));
    return said;
  }

  private static String enough(LaneQuestion.Answer answer) {
    double wanted = 100 * LaneQuestion.WANTED;
    if (answer.enough().isEmpty()) {
      return told("sample", "not even checking all finds one %.0f times in 100", wanted);
    }
    int enough = answer.enough().getAsInt();
    return told(
        "sample",
        "to find one %.0f times in 100, draw %d%s",
        wanted,
        enough,
        enough > answer.capacity() ? ", more than there is time for" : "");
  }

  private static String lanes(int lanes) {
    return lanes == 1 ? "1 lane" : lanes + " lanes";
  }

  private static String time(double seconds) {
    return seconds < 2 * 60
        ? String.format(Locale.ROOT, "%.0f s", seconds)
        : String.format(Locale.ROOT, "%.1f minutes", seconds / 60).replace(".0 ", " ");
  }

  private LaneQuestion question() throws CommandRefused {
    LaneQuestion.Typed read = LaneQuestion.read(this::typed);
    if (read.question().isPresent()) {
      return read.question().get();
    }
    List<String> faults = new ArrayList<>();
    read.faults()
        .forEach(
            (figure, mend) ->
                faults.add(option(figure) + " is \"" + typed(figure) + "\": " + mend + "."));
    throw CommandRefused.misstep(
        "PLAN",
        "Nothing was worked out.",
        String.join("\n       ", faults),
        "Correct what is named.");
  }

  private String typed(LaneFigure figure) {
    return switch (figure) {
      case COMPETITORS -> competitors;
      case MINUTES -> minutes;
      case SHOTS -> shots;
      case SECONDS_A_SHOT -> seconds;
      case SECONDS_A_CHANGE -> change;
      case LANES -> lanes;
      case DRAWN -> drawn.orElse(competitors);
      case OVER_LIMIT -> over;
      case CAUGHT -> caught;
    };
  }

  private static String option(LaneFigure figure) {
    return switch (figure) {
      case COMPETITORS -> "--competitors";
      case MINUTES -> "--minutes";
      case SHOTS -> "--shots";
      case SECONDS_A_SHOT -> "--seconds";
      case SECONDS_A_CHANGE -> "--change";
      case LANES -> "--lanes";
      case DRAWN -> "--drawn";
      case OVER_LIMIT -> "--over";
      case CAUGHT -> "--caught";
    };
  }

  private static String told(String kind, String words, Object... figures) {
    return Notice.of(kind, String.format(Locale.ROOT, words, figures)).line();
  }

  private static Map<String, Object> members(LaneQuestion.Answer answer) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("checkSeconds", answer.secondsACheck());
    members.put("availableSeconds", answer.secondsAvailable());
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
    members.put("findsInTime", answer.findsInTime());
    answer.enough().ifPresent(enough -> members.put("enough", enough));
    return members;
  }
}
