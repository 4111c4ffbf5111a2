package lanewarden.journal;

import java.util.HashMap;
import java.util.Map;
import lanewarden.ledger.Enrolled;
import org.jspecify.annotations.Nullable;

/**
 * Which keys are one person's: those that the organizer enrolled under the same name, as happens
 * when a lost key is replaced, and whatever names a single key was enrolled under. Names are the
 * same as {@link PersonName} has it: two officials never have such names at a time.
 *
 * <p>The organizer's key has no name in a ledger, and its holder may be enrolled under one besides:
 * so it shows nobody to be somebody else. Nobody can tell so when an organizer enrols one person
 * under two names.
 */
final class KeyHolders {
  private final Map<String, Integer> byKey = new HashMap<>();
  private final Map<String, Integer> byName = new HashMap<>();
  private int known;
  private @Nullable String organizer;

  /** Takes the key that the ledger was opened with. */
  void organizer(String key) {
    organizer = key;
  }

  /** Takes an enrolment that the organizer signed. */
  void note(Enrolled enrolled) {
    Integer holder = byKey.get(enrolled.thumbprint());
    String name = new PersonName(enrolled.name()).plain();
    Integer named = byName.get(name);
    if (holder == null) {
      holder = named == null ? known++ : named;
    } else if (named != null && !named.equals(holder)) {
      join(named, holder);
    }
    byKey.put(enrolled.thumbprint(), holder);
    byName.put(name, holder);
  }

  private void join(int one, int other) {
    byKey.replaceAll((key, holder) -> holder == one ? other : holder);
    byName.replaceAll((name, holder) -> holder == one ? other : holder);
  }

  /** Whether one person holds both keys, or may: the roll does not show two; by thumbprint. */
  boolean mayBeOne(String key, String other) {
    Integer holder = byKey.get(key);
    return key.equals(other)
        || key.equals(organizer)
        || other.equals(organizer)
        || (holder != null && holder.equals(byKey.get(other)));
  }
}
