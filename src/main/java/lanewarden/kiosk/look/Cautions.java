package lanewarden.kiosk.look;

import java.util.Arrays;
import java.util.stream.Collectors;
import lanewarden.bench.Caution;

/** The cautions that stand beside advice, in the language of the screens: all, or none is. */
public final class Cautions {

  private Cautions() {}

  /** All of them in one paragraph. */
  public static String paragraph(Texts texts) {
    return Arrays.stream(Caution.values())
        .map(caution -> sentence(caution, texts))
        .collect(Collectors.joining(" "));
  }

  private static String sentence(Caution caution, Texts texts) {
    return switch (caution) {
      case LEAST_ARROW -> texts.of("advice.least-arrow");
      case MAKERS_LIMITS -> texts.of("advice.makers-limits");
      case COMPETENT_PERSON -> texts.of("advice.competent-person");
      case CHECK_AGAIN -> texts.of("advice.check-again");
      case NO_DRY_FIRE -> texts.of("advice.no-dry-fire");
    };
  }
}
