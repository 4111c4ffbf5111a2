package lanewarden.audit.press;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** What veraPDF says of a file. */
public final class Conformance {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Conformance() {}

  /** What breaks PDF/A-3 level A or PDF/UA-1, as far as a machine can tell; none in a good file. */
  public static List<String> faults(Path pdf) throws Exception {
    List<String> faults = new ArrayList<>(faults(pdf, PDFAFlavour.PDFA_3_A));
    faults.addAll(faults(pdf, PDFAFlavour.PDFUA_1));
    return faults;
  }

  private static List<String> faults(Path pdf, PDFAFlavour flavour) throws Exception {
    try (InputStream in = Files.newInputStream(pdf);
        PDFAParser parser = Foundries.defaultInstance().createParser(in, flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      List<String> faults =
          result.getTestAssertions().stream()
              .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
              .map(a -> flavour.getId() + " " + a.getRuleId().getClause() + ": " + a.getMessage())
              .distinct()
              .toList();
      if (faults.isEmpty() && !result.isCompliant()) {
        throw new VeraPDFException("not compliant, without saying why");
      }
      return faults;
    }
  }
}
