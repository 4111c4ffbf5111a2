package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lanewarden.chronograph.PseudoTerminal;
import lanewarden.station.LedgerInspection;
import lanewarden.station.PracticeEvent;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** The program as it is started, with an instrument on a real pseudo-terminal. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "Windows has no pseudo-terminals of this kind")
class LineOnPortTest extends PracticeRun {

  @Test
  void bytesAtOneEndBecomeVerdictsAtTheOther() throws Exception {
    try (PseudoTerminal port = PseudoTerminal.open();
        LiveLine line = LiveLine.start(event, port.path(), passphrase)) {
      line.awaitReady();
      line.type("1");
      line.await(t -> LiveLine.kind(t).equals("rule"), 1);
      String first = Sentences.of(1, "301.2");
      port.write(first.substring(0, 9));
      port.write(first.substring(9));
      line.await(t -> LiveLine.kind(t).equals("reading"), 1);
      port.write(Sentences.of(2, "302.0").replace("A*", "W*"));
      line.await(t -> LiveLine.kind(t).equals("refused"), 1);
      port.write(Sentences.of(3, "301.5"));
      line.await(t -> LiveLine.kind(t).equals("reading"), 2);
      port.write(Sentences.of(4, "302.1"));
      line.await(t -> LiveLine.kind(t).equals("outcome"), 1);
      assertEquals(0, line.finish());

      assertEquals(
          List.of("301.2 ft/s", "301.5 ft/s", "302.1 ft/s"),
          line.told("reading").stream().map(t -> t.get("speed").asText()).toList());
      assertEquals("serial port", line.told("reading").get(0).get("source").asText());
      assertEquals("within", line.told("outcome").get(0).get("outcome").asText());
      assertTrue(LiveLine.words(line.told("refused").get(0)).contains("wrong checksum"));
    }
    assertEquals(List.of(), LedgerInspection.of(event.path(), List.of()).faults());
    assertEquals(0, new Typed().run("report", event.path().toString()).code());
    assertTrue(printed(PracticeEvent.report(event)).contains("Ann Archer"));
  }

  /** What stands in the log of the program that was told to end. */
  private String logged() throws Exception {
    try (Stream<Path> all = Files.walk(here.resolve("home"))) {
      return Files.readString(
          all.filter(f -> f.toString().endsWith("-0.0.log")).findAny().orElseThrow());
    }
  }

  private static String printed(Path pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void aPulledPlugIsToldAndTheLineGoesOn() throws Exception {
    PseudoTerminal port = PseudoTerminal.linkedAs(here.resolve("timer"));
    try (LiveLine line = LiveLine.start(event, here.resolve("timer"), passphrase)) {
      line.awaitReady();
      line.type("3");
      port.close();
      line.await(t -> LiveLine.words(t).startsWith("instrument lost"), 1);
      PseudoTerminal again = PseudoTerminal.linkedAs(here.resolve("timer"));
      line.await(t -> LiveLine.words(t).startsWith("instrument listening"), 2);
      again.write(Sentences.of(1, "180.0"));
      line.await(t -> LiveLine.kind(t).equals("outcome"), 1);
      assertEquals(0, line.finish());
      again.close();
    }
  }

  @Test
  void toldToEndItSignsOutAndLeavesTheCheckAtTheLine() throws Exception {
    try (PseudoTerminal port = PseudoTerminal.open();
        LiveLine line = LiveLine.start(event, port.path(), passphrase)) {
      line.awaitReady();
      line.type("1");
      line.await(t -> LiveLine.kind(t).equals("rule"), 1);
      port.write(Sentences.of(1, "301.2"));
      line.await(t -> LiveLine.kind(t).equals("reading"), 1);
      line.terminate();
      assertEquals("signed out", LiveLine.words(line.told("official").get(1)));
    }
    assertTrue(logged().contains("event closed, ledger head "), logged());
    assertEquals(List.of(), LedgerInspection.of(event.path(), List.of()).faults());
    Typed again = line("typed 302");
    assertTrue(again.results().contains("reading  1: 301.2 ft/s, serial port"), again.toString());
  }
}
