package lanewarden.journal;

import java.util.HashMap;
import java.util.Map;
import lanewarden.ledger.Enrolled;

/**
 * Which keys are one person's: those that the organizer enrolled under the same name, as happens
 * when a lost key is replaced, and whatever names a single key was enrolled under.
 *
 * <p>Nobody can tell so when an organizer enrols one person under two names.
 */
final class KeyHolders {
  private final Map<String, Integer> byKey = new HashMap<>();
  private final Map<String, Integer> byName = new HashMap<>();
  private int known;

  /** Takes an enrolment that the organizer signed. */
  void note(Enrolled enrolled) {
    Integer holder = byKey.get(enrolled.thumbprint());
    Integer named = byName.get(enrolled.name());
    if (holder == null) {
      holder = named == null ? known++ : named;
    } else if (named != null && !named.equals(holder)) {
      join(named, holder);
    }
    byKey.put(enrolled.thumbprint(), holder);
    byName.put(enrolled.name(), holder);
  }

  private void join(int one, int other) {
    byKey.replaceAll((key, holder) -> holder == one ? other : holder);
    byName.replaceAll((name, holder) -> holder == one ? other : holder);
  }

  /** Whether one person holds both keys, by their thumbprints. */
  boolean areOne(String key, String other) {
    Integer holder = byKey.get(key);
    return key.equals(other) || (holder != null && holder.equals(byKey.get(other)));
  }
}
