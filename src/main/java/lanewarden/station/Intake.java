package lanewarden.station;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lanewarden.chronograph.Signal;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.SigningKey;
import org.jspecify.annotations.Nullable;

/**
 * What the instrument says, on its way into the ledger; under the station's lock.
 *
 * <p>It is written as it comes, as long as somebody signs and the disk takes it; else it waits. A
 * {@link RefusedFlood} is told in few entries.
 */
final class Intake {
  private final Book book;
  private final Taking taking;
  private final Waiting waiting = new Waiting();
  private RefusedFlood flood = RefusedFlood.none();
  private Signal.@Nullable LinkChanged link;
  private Fact.@Nullable LineRefused refused;

  Intake(Book book, StationPapers papers) {
    this.book = book;
    this.taking = new Taking(papers);
  }

  /**
   * Takes a signal, to be written in its turn.
   *
   * @param onDuty whether somebody was on duty when it came
   */
  void hear(Signal signal, boolean onDuty) {
    if (signal instanceof Signal.LinkChanged changed) {
      link = changed;
    }
    waiting.add(
        signer -> write(signer, () -> onDuty ? taking.of(signal, book) : taking.offDuty(signal)),
        !(signal instanceof Signal.LinkChanged));
  }

  /**
   * A stop of the line: it is signed before anything that comes after it, which then comes to a
   * line that is not clear.
   *
   * @param reason in the official's words, if it was said
   */
  void stop(Optional<String> reason) {
    waiting.addStop(signer -> write(signer, () -> stopped(reason)));
  }

  private static List<Fact> stopped(Optional<String> reason) {
    return List.of(new FrameFact.LineStopped(reason.orElse(null)));
  }

  /** Whether a stop waits to be signed. */
  boolean stops() {
    return waiting.stops();
  }

  /** Writes what waits, as far as it can be written; nothing that waits is lost. */
  void write(SigningKey signer) {
    waiting.write(signer);
  }

  private void write(SigningKey signer, Supplier<List<Fact>> meaning) throws StationException {
    List<Fact> facts = meaning.get();
    if (facts.size() == 1 && facts.get(0) instanceof Fact.LineRefused line) {
      append(signer, flood.take(line));
      return;
    }
    if (flood.counted().isPresent()) {
      settle(signer);
      // Facts name the entries they stand in, and one more stands before them now
      facts = meaning.get();
    }
    append(signer, new RefusedFlood.Step(flood, facts));
  }

  /** Writes how many refused lines were only counted, before anything else is written. */
  void settle(SigningKey signer) throws StationException {
    append(signer, flood.settled());
  }

  private void append(SigningKey signer, RefusedFlood.Step step) throws StationException {
    if (!step.facts().isEmpty()) {
      book.append(signer, step.facts());
    }
    flood = step.next();
    for (Fact fact : step.facts()) {
      if (fact instanceof Fact.LineRefused line) {
        refused = line;
      } else if (fact instanceof Fact.ReadingTaken || fact instanceof Fact.VerificationShot) {
        refused = null;
      }
    }
  }

  /** The line refused last, until a reading or {@link #clearAfter}. */
  Optional<Fact.LineRefused> refused() {
    return Optional.ofNullable(refused);
  }

  /** What was refused before is of no more use once somebody comes or leaves. */
  void clearAfter(List<Fact> done) {
    if (done.stream().anyMatch(Intake::begins)) {
      refused = null;
    }
  }

  private static boolean begins(Fact fact) {
    return fact instanceof Fact.CheckOpened
        || fact instanceof Fact.CheckClosed
        || fact instanceof Fact.VerificationBegan;
  }

  /** What was last heard of the link. */
  Optional<Signal.LinkChanged> link() {
    return Optional.ofNullable(link);
  }

  /** Why the first that waits could not be written, if that was tried. */
  Optional<Trouble> trouble() {
    return waiting.trouble().map(why -> stops() ? StopGate.waiting(why) : why);
  }

  /**
   * @throws StationException if something waits because it could not be written
   */
  void requireWritten() throws StationException {
    Optional<Trouble> stuck = trouble();
    if (stuck.isPresent()) {
      throw StationException.stuck(stuck.get());
    }
  }

  /** How many of them would be lost with the program. */
  int losable() {
    return waiting.losable();
  }

  /** How many signals wait. */
  int size() {
    return waiting.size();
  }
}
