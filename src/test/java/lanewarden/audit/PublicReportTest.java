package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.audit.press.Conformance;
import lanewarden.journal.Fact;
import lanewarden.journal.ProtestFact;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The edition for everybody: nothing personal in any page, stream, string or metadata. */
class PublicReportTest {
  private static final List<String> NAMES =
      List.of(
          "Marta",
          "Olesund",
          "Takemizu",
          "Perpetua",
          "Ottoline",
          "Vantreese",
          "Wim Ezra",
          "Ingeborg",
          "Elmsworth",
          "512.0 ft/s");

  @TempDir Path folder;

  private Path ledger() throws Exception {
    Path file = folder.resolve("event.ledger");
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      ledger.check("101", "Marta Olesund", "OC", "312 ft/s", "312 ft/s", "312 ft/s");
      ledger.check("101", "Marta Olesund", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
      ledger.call("102", "Jun Takemizu", "OC");
      long clipped = ledger.read("512.0 ft/s");
      ledger.declareVoid(clipped, "Takemizu sneezed; Perpetua saw it");
      ledger.close("Perpetua called Takemizu away");
      ledger.say(new Fact.LinkChanged("lost", "Perpetua fell over it", ScriptedLedger.START));
      ledger.say(
          new Fact.StationOpened(
              "gate timer",
              ScriptedLedger.PROFILE,
              "Lanewarden 0.9.0",
              null,
              "# Perpetua lent it\nport = \"Perpetua\"",
              null,
              null));
      ledger.say(
          new Fact.DrawMade(
              "OC", "41523 61345, thrown by Perpetua", "50 %", List.of("101"), List.of("101")));
      dispute(ledger);
    }
    return file;
  }

  @Test
  void thatTheLedgerContradictsItselfHowOftenAndInWhatIsSaidWithoutAName() throws Exception {
    Path file = folder.resolve("other.ledger");
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      ledger.check("102", "Marta Olesund", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
      ledger.check("103", "Marta Olesund", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
    }
    Path pdf = folder.resolve("public.pdf");
    PrintedReport.report()
        .write(file, pdf, new ReportEdition(false, Optional.empty(), Optional.empty()), p -> {});
    String text = PrintedReport.textOf(pdf).replaceAll("\\s+", " ");
    assertTrue(text.contains("Checks that do not fit the roster in force (2)"), text);
    assertTrue(text.contains("The ledger contradicts itself here: 2 of this kind."), text);
    assertFalse(text.contains("Olesund"), text);
  }

  /** A protest with a ruling, and a check that was another competitor's. */
  private static void dispute(ScriptedLedger ledger) throws Exception {
    SigningKey judge = ledger.enrol("Ottoline Judge", Role.JUDGE);
    SigningKey other = ledger.enrol("Wim Ezra", Role.OFFICIAL);
    long over = ledger.standing().checksOf("101").get(0).number();
    long protest =
        ledger.say(
            new ProtestFact.ProtestFiled(
                over, ProtestFact.Cause.PROTEST, "Marta Olesund", "Perpetua stood in the light"));
    ledger.sayAs(
        judge,
        new ProtestFact.ProtestRuled(
            protest,
            ProtestFact.Answer.DISMISSED,
            over,
            "Olesund shoots on",
            "Perpetua stood still"));
    long wrong = ledger.check("103", "Ingeborg Hollin", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
    long correction =
        ledger.say(
            ProtestFact.CorrectionMade.ofBib(
                wrong, "104", "Rufus Elmsworth", "Perpetua misheard the bib"));
    ledger.sayAs(other, new ProtestFact.CorrectionConfirmed(correction));
  }

  private Path write(Path ledger, boolean named) throws Exception {
    Path pdf = folder.resolve("report.pdf");
    PrintedReport.report()
        .write(
            ledger, pdf, new ReportEdition(named, Optional.empty(), Optional.empty()), step -> {});
    return pdf;
  }

  /** All text, all strings and all streams, unpacked. */
  private static String everything(Path pdf) throws Exception {
    StringBuilder all = new StringBuilder(PrintedReport.textOf(pdf));
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      collect(
          document.getDocument().getTrailer(),
          all,
          Collections.newSetFromMap(new IdentityHashMap<>()));
    }
    return all.toString();
  }

  private static void collect(COSBase base, StringBuilder all, Set<COSBase> seen) throws Exception {
    COSBase value = base instanceof COSObject reference ? reference.getObject() : base;
    if (value == null || !seen.add(value)) {
      return;
    }
    if (value instanceof COSString string) {
      all.append(string.getString()).append('\n');
    } else if (value instanceof COSArray array) {
      for (COSBase item : array) {
        collect(item, all, seen);
      }
    } else if (value instanceof COSDictionary dictionary) {
      for (COSBase item : new ArrayList<>(dictionary.getValues())) {
        collect(item, all, seen);
      }
      if (value instanceof COSStream stream) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (InputStream in = stream.createInputStream()) {
          in.transferTo(bytes);
        }
        all.append(bytes.toString(StandardCharsets.UTF_8));
        all.append(bytes.toString(StandardCharsets.UTF_16BE));
      }
    }
  }

  @Test
  void holdsNoNameAndNoTypedWordAnywhere() throws Exception {
    Path ledger = ledger();
    String open = everything(write(ledger, false));
    assertEquals(List.of(), NAMES.stream().filter(open::contains).toList());
    assertFalse(open.contains("eyJhbGciOiJFZERTQSI"), "no entry of the ledger is inside");
    String whole = everything(write(ledger, true));
    assertEquals(
        NAMES, NAMES.stream().filter(whole::contains).toList(), "this search finds what is there");
    assertTrue(whole.contains("eyJhbGciOiJFZERTQSI"));
  }

  @Test
  void holdsEveryBibAndOutcomeTheHeadAndTheThumbprint() throws Exception {
    Path file = folder.resolve("event.ledger");
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      ledger.check("101", "Marta Olesund", "OC", "312 ft/s", "312 ft/s", "312 ft/s");
      ledger.check("102", "Jun Takemizu", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
      Path pdf = write(file, false);
      String text = PrintedReport.textOf(pdf);
      assertTrue(text.contains("Speed check audit, public edition"), text);
      assertTrue(text.contains("101 OC 1 ▲ over"), text);
      assertTrue(text.contains("102 OC 1 ● within"), text);
      assertTrue(text.contains(ledger.head().shortForm()), text);
      assertTrue(text.contains(ledger.organizerThumbprint()), text);
      assertEquals(List.of(), Conformance.faults(pdf));
    }
  }
}
