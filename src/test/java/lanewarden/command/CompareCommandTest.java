package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.bench.Caution;
import lanewarden.bench.ComparisonSheet;
import lanewarden.station.PracticeEvent;
import lanewarden.written.Fingerprint;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class CompareCommandTest extends PracticeRun {
  private static final String DEMO = "demo-data/practice.csv";

  @Test
  void saysWhichDifferencesAreRealAndWhatWasLeftOut() {
    Typed typed = new Typed().run("compare", DEMO, "--rules", "demo-data/rule-book.toml");
    assertEquals(0, typed.code(), typed.toString());
    for (String line :
        List.of(
            "practice 8 set-ups, 49 shots, 1 left out",
            "left out Club bow + short shaft: 390 ft/s (line 45): 390 ft/s is impossible: 118"
                + " ft·lbf of 105 ft·lbf available",
            "place  set-up                     arrow      shots  mean ft/s  ± 95 %  spread  ft·lbf"
                + "  slug·ft/s",
            "1=     Club bow + short shaft     350 gr    6 of 7      300.0     1.3     1.3   69.93"
                + "  0.466",
            "Grey riser + short shaft   Red riser + short shaft        2.7   0.2   5.2  real",
            "Club bow + long shaft      Green riser + long shaft       1.5  -1.6   4.6  within"
                + " noise",
            "Red riser + short shaft    HC               282.0    -2.0    -3.1    -0.9  over",
            "rated    Red riser + long shaft: slower than expected of the bow by rules of thumb, about 291 ft/s (282"
                + " to 300)")) {
      assertTrue(typed.lines().contains(line), line + "\nin " + typed);
    }
  }

  @Test
  void answersMachinesInSiUnits() throws Exception {
    Typed typed = new Typed().run("compare", DEMO, "--json");
    JsonNode answer = new ObjectMapper().readTree(typed.results());
    assertEquals(8, answer.get("setUps").size());
    assertEquals(91.44, answer.get("setUps").get(0).get("mean").asDouble(), 1e-9);
    assertEquals(6, answer.get("setUps").get(0).get("counted").asInt());
    assertEquals(1, answer.get("setUps").get(0).get("leftOut").size());
    assertEquals(28, answer.get("pairs").size());
    assertEquals("real", answer.get("pairs").get(0).get("sense").asText());
    assertEquals(0, answer.get("margins").size());
    assertEquals(100.584, answer.get("setUps").get(0).get("ratedSpeed").asDouble(), 1e-9);
    assertEquals("as expected", answer.get("setUps").get(0).get("byRating").get("meanIs").asText());
  }

  @Test
  void machinesAreToldThatItIsNoCheckAndWhatToMind() throws Exception {
    JsonNode answer =
        new ObjectMapper().readTree(new Typed().run("compare", DEMO, "--json").results());
    assertEquals(ComparisonSheet.NO_VERDICT, answer.get("noVerdict").asText());
    List<String> cautions = new ArrayList<>();
    answer.get("cautions").forEach(caution -> cautions.add(caution.asText()));
    assertEquals(Caution.sentences(), cautions);
    assertTrue(answer.get("howToRead").toString().contains("Rules of thumb, not measured"));
  }

  @Test
  void writesPaperAndTable() {
    Path pdf = here.resolve("out.pdf");
    Path csv = here.resolve("out.csv");
    Typed typed =
        new Typed().run("compare", DEMO, "--pdf", pdf.toString(), "--csv", csv.toString());
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(Files.exists(pdf) && Files.exists(csv));
    assertTrue(typed.lines().contains("pdf      " + pdf));
  }

  @Test
  void tellsEveryFaultOfAFileAndTakesNothingFromIt() throws Exception {
    Path file =
        Files.writeString(
            here.resolve("faulty.csv"),
            "bow,arrow,arrow-mass,speed\nRed,long,377.5 gr,298\nRed,long,,-1 ft/s\n");
    Typed typed = new Typed().run("compare", file.toString());
    assertEquals(2, typed.code(), typed.toString());
    assertEquals("", typed.results());
    assertTrue(typed.talk().contains("faulty.csv:2:19: expected a speed"), typed.talk());
    assertTrue(typed.talk().contains("faulty.csv:3:11: expected a speed"), typed.talk());
  }

  @Test
  void oneSetUpAloneIsToldWithoutPairs() throws Exception {
    Path file =
        Files.writeString(
            here.resolve("one.csv"),
            "bow,arrow,arrow-mass,speed\nRed,long,377.5 gr,91.1 m/s\nRed,long,,91.3 m/s\n");
    Typed typed = new Typed().run("compare", file.toString());
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.lines().contains("practice 1 set-up, 2 shots, 0 left out"), typed.toString());
    assertTrue(typed.results().contains("mean m/s"), typed.results());
  }

  private Typed keep(Path file, String... more) {
    List<String> command =
        new ArrayList<>(
            List.of(
                "compare",
                file.toString(),
                "--keep-in",
                event.path().toString(),
                "--official",
                PracticeEvent.OFFICIAL,
                "--passphrase-file",
                passphrase.toString()));
    command.addAll(List.of(more));
    return new Typed().run(command.toArray(String[]::new));
  }

  @Test
  void keptFileIsSignedAndListedInTheReportButNotInThePublicOne() throws Exception {
    Typed kept = keep(Path.of(DEMO), "--title", "Club evening");
    assertEquals(0, kept.code(), kept.toString());
    assertTrue(kept.results().lines().anyMatch(l -> l.matches("kept {5}with entry \\d+")));
    assertEquals(0, new Typed().run("verify", event.path().toString()).code());
    Path pdf = here.resolve("report.pdf");
    Typed report =
        new Typed().run("report", event.path().toString(), "--out", pdf.toString(), "--json");
    assertEquals(0, report.code(), report.toString());
    String text = text(pdf);
    assertTrue(text.contains("Practice days"), text);
    assertTrue(text.contains("Club evening"), text);
    assertTrue(text.contains(Fingerprint.sha256(Files.readAllBytes(Path.of(DEMO)))), text);
    Path everybody = here.resolve("public.pdf");
    new Typed().run("report", event.path().toString(), "--public", "--out", everybody.toString());
    assertFalse(text(everybody).contains("Club evening"));
  }

  private static String text(Path pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
    }
  }

  @Test
  void nothingIsSignedOfAFaultyFileOrUnderATitleThatIsNone() throws Exception {
    byte[] before = Files.readAllBytes(event.ledger());
    Typed untitled = keep(Path.of(DEMO), "--title", "  ");
    assertEquals(2, untitled.code(), untitled.toString());
    assertTrue(untitled.talk().contains("PRACTICE-TITLE"), untitled.talk());
    Path faulty =
        Files.writeString(here.resolve("faulty.csv"), "bow,arrow,arrow-mass,speed\nRed,,,298\n");
    assertEquals(2, keep(faulty).code());
    assertArrayEquals(before, Files.readAllBytes(event.ledger()));
  }
}
