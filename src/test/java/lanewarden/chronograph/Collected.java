package lanewarden.chronograph;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Every signal that came, for tests: a sink that can be waited on. */
final class Collected implements Consumer<Signal> {
  /** A signal and when it came, in monotonic nanoseconds. */
  record Arrival(Signal signal, long nanos, Thread thread) {}

  private final List<Arrival> arrivals = new ArrayList<>();

  @Override
  public synchronized void accept(Signal signal) {
    arrivals.add(new Arrival(signal, System.nanoTime(), Thread.currentThread()));
    notifyAll();
  }

  synchronized List<Arrival> arrivals() {
    return List.copyOf(arrivals);
  }

  List<Signal> signals() {
    return arrivals().stream().map(Arrival::signal).toList();
  }

  List<String> speeds() {
    return speeds(signals());
  }

  List<Refusal> refusals() {
    return refusals(signals());
  }

  List<LinkState> links() {
    return signals().stream()
        .filter(Signal.LinkChanged.class::isInstance)
        .map(signal -> ((Signal.LinkChanged) signal).state())
        .toList();
  }

  static List<String> speeds(List<Signal> signals) {
    return signals.stream()
        .filter(Signal.Heard.class::isInstance)
        .map(signal -> ((Signal.Heard) signal).reading().speed().toString())
        .toList();
  }

  static List<Refusal> refusals(List<Signal> signals) {
    return signals.stream()
        .filter(Signal.Refused.class::isInstance)
        .map(signal -> ((Signal.Refused) signal).refusal())
        .toList();
  }

  static List<Reason> reasons(List<Signal> signals) {
    return refusals(signals).stream().map(Refusal::reason).toList();
  }

  /** The n-th arrival (from 1) that is wanted; fails if it does not come within five seconds. */
  synchronized Arrival await(int nth, Predicate<Signal> wanted) throws InterruptedException {
    long deadline = System.nanoTime() + 5_000_000_000L;
    while (true) {
      List<Arrival> found = arrivals.stream().filter(a -> wanted.test(a.signal())).toList();
      if (found.size() >= nth) {
        return found.get(nth - 1);
      }
      long left = (deadline - System.nanoTime()) / 1_000_000;
      if (left <= 0) {
        throw new AssertionError("waited in vain; came so far: " + arrivals);
      }
      wait(left);
    }
  }

  Arrival awaitLink(int nth, LinkState state) throws InterruptedException {
    return await(nth, s -> s instanceof Signal.LinkChanged link && link.state() == state);
  }

  Arrival awaitHeard(int nth) throws InterruptedException {
    return await(nth, Signal.Heard.class::isInstance);
  }

  Arrival awaitRefused(int nth) throws InterruptedException {
    return await(nth, Signal.Refused.class::isInstance);
  }
}
