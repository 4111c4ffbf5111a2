package lanewarden.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.quantity.Sentence;
import org.jspecify.annotations.Nullable;

/**
 * Where a division's rule comes from.
 *
 * @param body whose rule it is
 * @param source where it stands
 * @param edition of that source
 * @param effective from which day it is in effect
 */
public record Origin(
    @Nullable String body,
    @Nullable String source,
    @Nullable String edition,
    @Nullable LocalDate effective) {

  /** In a sentence, where anything is said. */
  public Optional<Sentence> inWords() {
    List<Object> parts = new ArrayList<>();
    if (body != null) {
      parts.add(body);
    }
    if (source != null) {
      parts.add(source);
    }
    if (edition != null) {
      parts.add(Sentence.of(Demand.EDITION, edition));
    }
    Sentence.Row origin = new Sentence.Row(", ", parts);
    if (effective == null) {
      return parts.isEmpty() ? Optional.empty() : Optional.of(Sentence.of(Demand.ORIGIN, origin));
    }
    return Optional.of(
        parts.isEmpty()
            ? Sentence.of(Demand.IN_EFFECT, effective)
            : Sentence.of(Demand.ORIGIN_FROM, origin, effective));
  }
}
