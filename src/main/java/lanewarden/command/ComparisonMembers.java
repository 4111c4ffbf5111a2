package lanewarden.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import lanewarden.bench.BowMass;
import lanewarden.bench.Caution;
import lanewarden.bench.Comparison;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.LeftOut;
import lanewarden.bench.LimitMargin;
import lanewarden.bench.PairDifference;
import lanewarden.bench.Rating;
import lanewarden.bench.Showing;
import lanewarden.metrology.Interval;
import lanewarden.quantity.Sentence;

/** A comparison for machines: speeds in m/s, masses in kg, energies in J, momenta in kg·m/s. */
final class ComparisonMembers {

  private ComparisonMembers() {}

  static Map<String, Object> of(
      Comparison comparison, Optional<Path> pdf, Optional<Path> csv, OptionalLong entry) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("file", comparison.practice().file());
    members.put("sha256", comparison.practice().sha256());
    members.put("confidence", Comparison.CONFIDENCE);
    members.put("setUps", comparison.showings().stream().map(s -> setUp(comparison, s)).toList());
    members.put("pairs", comparison.pairs().stream().map(ComparisonMembers::pair).toList());
    members.put("margins", comparison.margins().stream().map(ComparisonMembers::margin).toList());
    members.put("bowMasses", comparison.masses().stream().map(ComparisonMembers::mass).toList());
    members.put("howToRead", strings(new ComparisonSheet(comparison).readings()));
    members.put("noVerdict", ComparisonSheet.NO_VERDICT);
    members.put("cautions", Caution.sentences());
    pdf.ifPresent(out -> members.put("pdf", out.toString()));
    csv.ifPresent(out -> members.put("csv", out.toString()));
    entry.ifPresent(number -> members.put("entry", number));
    return members;
  }

  private static List<String> strings(List<Sentence> sentences) {
    return sentences.stream().map(Sentence::toString).toList();
  }

  private static Map<String, Object> setUp(Comparison comparison, Showing showing) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("bow", showing.series().bow().label());
    members.put("arrow", showing.series().arrow());
    members.put("arrowMass", showing.series().mass().siDouble());
    members.put("shots", showing.series().shots().size());
    members.put("counted", showing.counted().size());
    members.put("leftOut", strings(showing.leftOut().stream().map(LeftOut::inWords).toList()));
    comparison.place(showing).ifPresent(place -> members.put("place", place));
    showing.mean().ifPresent(mean -> members.put("mean", mean));
    put(members, showing.interval());
    showing.deviation().ifPresent(deviation -> members.put("deviation", deviation));
    showing.energy().ifPresent(energy -> members.put("energy", energy.siDouble()));
    showing.momentum().ifPresent(momentum -> members.put("momentum", momentum.siDouble()));
    showing
        .series()
        .bow()
        .rating()
        .ifPresent(rating -> members.put("ratedSpeed", rating.speed().siDouble()));
    showing.expected().ifPresent(expected -> members.put("byRating", rated(expected, showing)));
    return members;
  }

  private static Map<String, Object> rated(Rating.Expected expected, Showing showing) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("expected", expected.usual());
    put(members, Optional.of(expected.range()));
    showing.mean().ifPresent(mean -> members.put("meanIs", expected.side(mean)));
    return members;
  }

  private static Map<String, Object> pair(PairDifference pair) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("faster", pair.one().series().name());
    members.put("slower", pair.other().series().name());
    members.put("difference", pair.difference());
    put(members, pair.interval());
    members.put("sense", pair.sense().inWords());
    return members;
  }

  private static Map<String, Object> margin(LimitMargin margin) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("setUp", margin.showing().series().name());
    members.put("division", margin.division().code());
    margin.allowed().ifPresent(allowed -> members.put("allowed", allowed.siDouble()));
    margin.margin().ifPresent(left -> members.put("margin", left));
    put(members, margin.interval());
    members.put("meanAgainstLimit", margin.words().toString());
    return members;
  }

  private static Map<String, Object> mass(BowMass mass) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("bow", mass.bow().label());
    members.put("fitted", mass.fitted().value());
    members.put("noise", mass.noise());
    members.put("supposed", mass.supposedInWords());
    put(members, Optional.of(mass.interval()));
    return members;
  }

  private static void put(Map<String, Object> members, Optional<Interval> interval) {
    interval.ifPresent(i -> members.put("interval", List.of(i.low(), i.high())));
  }
}
