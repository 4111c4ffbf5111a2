package lanewarden.journal;

import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Checks that a fact read from JSON lacks no member it must have. */
final class Members {

  private Members() {}

  /**
   * @throws IllegalArgumentException naming the first member that is missing
   */
  static void check(Fact fact) {
    for (RecordComponent member : fact.getClass().getRecordComponents()) {
      if (!mayBeMissing(member.getAnnotatedType()) && valueOf(fact, member) == null) {
        throw new IllegalArgumentException("the member " + member.getName() + " is missing");
      }
    }
  }

  private static boolean mayBeMissing(AnnotatedType type) {
    return Arrays.stream(type.getAnnotations()).anyMatch(Nullable.class::isInstance);
  }

  private static @Nullable Object valueOf(Fact fact, RecordComponent member) {
    try {
      return member.getAccessor().invoke(fact);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a record whose member cannot be read: " + member, e);
    }
  }
}
