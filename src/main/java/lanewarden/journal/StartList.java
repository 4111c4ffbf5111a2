package lanewarden.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lanewarden.roster.Competitor;
import lanewarden.roster.Roster;
import lanewarden.roster.RosterDifference;
import lanewarden.written.WrittenRefused;
import org.jspecify.annotations.Nullable;

/**
 * Who may be called by a roster that was adopted: its competitors, and what speaks against a call.
 *
 * <p>Immutable.
 */
public final class StartList {
  private final Optional<Roster> roster;
  private final Optional<String> fault;
  private final Map<String, Competitor> byBib = new HashMap<>();

  private StartList(Optional<Roster> roster, Optional<String> fault) {
    this.roster = roster;
    this.fault = fault;
    roster.ifPresent(read -> read.competitors().forEach(c -> byBib.put(key(c.bib()), c)));
  }

  /** The competitors of a roster, as its entry signed them. */
  public static StartList of(Fact.RosterAdopted adopted) {
    try {
      Roster read = Roster.signed(adopted.file(), adopted.text());
      return read.sha256().equals(adopted.sha256())
          ? new StartList(Optional.of(read), Optional.empty())
          : refused("its text has the hash " + read.sha256() + ", not " + adopted.sha256());
    } catch (WrittenRefused e) {
      return refused(String.valueOf(e.getMessage()));
    }
  }

  private static StartList refused(String why) {
    return new StartList(Optional.empty(), Optional.of(why));
  }

  /** Why it cannot be read; empty where it can. */
  public Optional<String> fault() {
    return fault;
  }

  /**
   * What another roster that takes its place changes, as {@link RosterDifference#summary} says it;
   * empty where either cannot be read.
   */
  public Optional<String> changedBy(StartList next) {
    return roster.flatMap(
        was -> next.roster.map(now -> RosterDifference.between(was, now).summary()));
  }

  /**
   * What speaks against a call, in sentences' parts; nothing where it is as the roster has it, or
   * where the roster cannot be read. A figure that the call does not state speaks for nothing:
   * older versions stated fewer.
   */
  public List<String> against(Fact.CheckOpened call) {
    List<String> against = new ArrayList<>(against(call.bib(), call.name()));
    Competitor listed = byBib.get(key(call.bib()));
    if (listed != null) {
      differs("the division", call.division(), listed.division(), against);
      differs("the arrow mass", call.arrowMass(), listed.arrowMass(), against);
      differs("the draw weight", call.drawWeight(), listed.drawWeight(), against);
      differs(
          "the certified draw weight",
          call.certifiedDrawWeight(),
          listed.certifiedDrawWeight(),
          against);
      differs("the draw length", call.drawLength(), listed.drawLength(), against);
      differs("the brace height", call.braceHeight(), listed.braceHeight(), against);
    }
    return against;
  }

  /** What speaks against this bib being the one of this name. */
  public List<String> against(String bib, String name) {
    List<String> against = new ArrayList<>();
    Competitor listed = byBib.get(key(bib));
    if (listed != null) {
      differs("the name", name, listed.name(), against);
    } else if (fault.isEmpty()) {
      against.add("the roster in force has no bib " + bib);
    }
    return against;
  }

  private static void differs(
      String what, @Nullable Object signed, @Nullable Object listed, List<String> against) {
    if (signed != null && !signed.equals(listed)) {
      against.add(
          what
              + " was signed as "
              + signed
              + ", but the roster "
              + (listed == null ? "has none" : "has " + listed));
    }
  }

  private static String key(String bib) {
    return bib.strip().toUpperCase(Locale.ROOT);
  }
}
