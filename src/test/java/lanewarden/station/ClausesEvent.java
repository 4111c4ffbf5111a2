package lanewarden.station;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;

/** An event under a rule book with every clause that changes what happens at the line. */
public final class ClausesEvent {

  private static final String RULES =
      """
      format = 1
      [event]
      name = "Clauses"
      edition = "1"
      """
          + division("EQ", "300 ft/s", 1, "least-arrow = \"6 gr/lb\"")
          + division("GR", "300 ft/s", 1, "least-arrow = \"6 gr/lb\"\ndraw-weight = \"greater\"")
          + division("LI", "280 ft/s", 1, "only-below = \"5 gr/lb\"")
          + division(
              "CO", "300 ft/s", 1, "conditions = [\"full draw\", \"4 yd from the instrument\"]")
          + division("RS", "300 ft/s", 1, "who = \"random share\"\nshare = \"50 %\"")
          + division(
              "NJ",
              "300 ft/s",
              1,
              "who = \"named by a judge\"\nlapses = [\"another bow\", \"another class\"]")
          + division("NM", "300 ft/s", 1, "who = \"not measured\"")
          + division(
              "BD", "300 ft/s", 1, "bands = [\"up to 1 %: re-check\", \"up to 3 %: barred\"]")
          + division("PH", "300 ft/s", 1, "fail-during = \"struck\"")
          + """
          [[division]]
          code = "NO"
          name = "Nothing"
          limit = "none"
          """;

  /** A division that decides by one reading of two shots. */
  static String division(String code, String limit, int rechecks, String more) {
    return """
        [[division]]
        code = "%s"
        name = "Division %s"
        limit = "%s"
        tolerance = "none"
        decide = "highest"
        counted = 1
        shots = 2
        voids = 1
        rechecks = %d
        %s
        """
        .formatted(code, code, limit, rechecks, more);
  }

  static final String ROSTER =
      """
      bib,name,division,arrow-mass,draw-weight,certified-draw-weight
      11,Ann Equip,EQ,,,
      12,Ben Equip,EQ,360 gr,60 lbf,
      13,Cat Equip,EQ,359.9 gr,60 lbf,
      14,Dan Greater,GR,372 gr,60 lbf,
      21,Eve Light,LI,,60 lbf,
      22,Fay Heavy,LI,300 gr,60 lbf,
      31,Gus Condit,CO,,,
      41,Hal Random,RS,,,
      42,Ida Random,RS,,,
      43,Jon Random,RS,,,
      44,Kim Random,RS,,,
      51,Lea Named,NJ,,,
      61,Max Unmeasured,NM,,,
      71,Nan Banded,BD,,,
      81,Oda Phase,PH,,,
      91,Pat Nothing,NO,,,
      """;

  private static EventFolder event;

  private ClausesEvent() {}

  /** A copy of the event, with the simulator as its instrument. */
  public static EventFolder copy(Path target) throws Exception {
    return PracticeEvent.copy(made(), target);
  }

  private static synchronized EventFolder made() throws Exception {
    if (event == null) {
      Path made = Files.createTempDirectory("clauses").resolve("event");
      event =
          PracticeEvent.draft(RULES, ROSTER)
              .make(made, Clock.systemUTC(), System::nanoTime, new SecureRandom());
    }
    return event;
  }
}
