package lanewarden.audit;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import lanewarden.journal.Fact;
import lanewarden.journal.SetUpStated;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;

/** The demo event's roster shot through once, with everything that goes wrong on a real day. */
public final class DemoSizeLedger {
  private DemoSizeLedger() {}

  /** Rounds of the whole roster, each under bibs of its own. */
  public static ScriptedLedger make(Path file, int rounds, long seed) throws Exception {
    Random random = new Random(seed);
    String rules = Files.readString(Path.of("demo-data/rule-book.toml"));
    RuleBook book =
        RuleBook.read("rule-book.toml", Files.readAllBytes(Path.of("demo-data/rule-book.toml")));
    List<String> roster = Files.readAllLines(Path.of("demo-data/roster.csv"));
    ScriptedLedger ledger = ScriptedLedger.with(file, rules, roster(roster, rounds));
    for (int round = 0; round < rounds; round++) {
      for (String line : roster.subList(1, roster.size())) {
        String[] cells = line.split(",", -1);
        String bib = bib(cells[0], round);
        Mass mass = cells[3].isEmpty() ? null : Mass.parse(cells[3]);
        shoot(ledger, book.division(cells[2]).orElseThrow(), bib, cells[1], mass, random);
      }
    }
    return ledger;
  }

  private static String bib(String bib, int round) {
    return round == 0 ? bib : bib + "-" + round;
  }

  private static String roster(List<String> once, int rounds) {
    StringBuilder all = new StringBuilder(once.get(0)).append('\n');
    for (int round = 0; round < rounds; round++) {
      for (String line : once.subList(1, once.size())) {
        int comma = line.indexOf(',');
        all.append(bib(line.substring(0, comma), round)).append(line.substring(comma)).append('\n');
      }
    }
    return all.toString();
  }

  private static void shoot(
      ScriptedLedger ledger, Division division, String bib, String name, Mass mass, Random random)
      throws Exception {
    double limit = division.rule().speed().orElseThrow().limit().value().doubleValue();
    double level = random.nextInt(8) == 0 ? 1.035 : 0.93 + 0.06 * random.nextDouble();
    for (int attempt = 0; attempt <= division.rule().aftermath().rechecks(); attempt++) {
      ledger.call(bib, name, division.code(), mass);
      prepare(ledger, division, mass);
      boolean trouble = random.nextInt(9) == 0;
      while (ledger.now().outcome().isEmpty()) {
        double speed = limit * (level + 0.008 * random.nextGaussian());
        String text =
            String.format(
                Locale.ROOT,
                "%.1f %s",
                speed,
                division.rule().speed().orElseThrow().limit().unit().symbol());
        if (trouble) {
          trouble = false;
          text = trouble(ledger, division, text, random);
        }
        ledger.take(text, random.nextInt(40) == 0 ? "typed" : "serial port");
        ledger.verdict();
      }
      ledger.close(null);
      if (ledger.now().outcome().orElseThrow() != lanewarden.journal.Outcome.OVER) {
        return;
      }
      level = random.nextInt(3) == 0 ? 1.04 : 0.97;
    }
  }

  /** Without figures and ticks that the rule asks for, no check would end. */
  private static void prepare(ScriptedLedger ledger, Division division, Mass mass)
      throws Exception {
    long check = ledger.now().number();
    if (!division.rule().figuresAsked().isEmpty()) {
      ledger.say(
          new SetUpStated(
              check, mass == null ? Mass.parse("30 g") : mass, Force.parse("38 lbf"), null));
    }
    for (String condition : division.rule().conditions()) {
      ledger.say(new Fact.ConditionTicked(check, condition));
    }
  }

  private static String trouble(
      ScriptedLedger ledger, Division division, String text, Random random) throws Exception {
    switch (random.nextInt(3)) {
      case 0 -> {
        String mad =
            String.format(
                Locale.ROOT,
                "%.1f %s",
                1.7 * division.rule().speed().orElseThrow().limit().value().doubleValue(),
                division.rule().speed().orElseThrow().limit().unit().symbol());
        long reading = ledger.read(mad);
        ledger.verdict();
        ledger.declareVoid(
            reading, "The arrow clipped the frame of the instrument; \"clack\" heard");
        ledger.verdict();
      }
      case 1 ->
          ledger.say(
              new Fact.LineRefused(
                  ledger.now().number(),
                  Base64.getEncoder().encodeToString(new byte[] {'$', '2', '9', -1, '\r', '\n'}),
                  "not the sentence",
                  "The line does not have the form of this instrument's sentence.",
                  "serial port",
                  "gate timer",
                  ScriptedLedger.START));
      default -> {
        List<Fact> link = new ArrayList<>();
        link.add(
            new Fact.LinkChanged("lost", "The port /dev/ttyUSB0 went away.", ScriptedLedger.START));
        link.add(new Fact.LinkChanged("up", "The port is back.", ScriptedLedger.START));
        ledger.sign(link);
      }
    }
    return text;
  }
}
