package lanewarden.audit;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.findings.Seals;
import lanewarden.audit.press.Destination;
import lanewarden.audit.press.Enclosure;
import lanewarden.audit.press.Press;
import lanewarden.audit.press.Typefaces;
import lanewarden.audit.seal.Seal;
import lanewarden.audit.seal.Sealing;
import lanewarden.audit.seal.TimeStampAuthority;
import lanewarden.audit.seal.TimeStampRefused;

/**
 * One report on its way to paper: composed, set, and sealed if it is to be.
 *
 * <p>Owned by one thread.
 */
final class Issue {
  private final ReportEdition edition;
  private final Seals seals;
  private final Composition composition;
  private final List<Enclosure> enclosures;
  private final Instant made;
  private final Press press;

  Issue(Evidence evidence, AuditSummary summary, ReportEdition edition, Instant made, Press press)
      throws IOException {
    this.edition = edition;
    this.seals = evidence.seals();
    this.composition = new Composition(evidence, summary, made, edition.named());
    this.enclosures = Enclosures.of(evidence, edition.named());
    this.made = made;
    this.press = press;
  }

  /**
   * Brings it into its place.
   *
   * @return why it has no time-stamp although one was asked for
   */
  Optional<TimeStampRefused> into(Destination destination) throws IOException {
    if (edition.seal().isEmpty()) {
      destination.deliver(
          out -> {
            try (OutputStream buffered = new BufferedOutputStream(out)) {
              print(Optional.empty(), buffered);
            }
          });
      return Optional.empty();
    }
    Seal seal = edition.seal().get();
    try {
      deliver(sealed(seal, edition.authority(), Optional.empty()), destination);
      return Optional.empty();
    } catch (TimeStampRefused refused) {
      // Whether there is a stamp stands in the text that is sealed, so the text is set anew.
      deliver(sealed(seal, Optional.empty(), Optional.of(refused)), destination);
      return Optional.of(refused);
    }
  }

  private byte[] sealed(
      Seal seal, Optional<TimeStampAuthority> authority, Optional<TimeStampRefused> refused)
      throws IOException {
    ByteArrayOutputStream unsealed = new ByteArrayOutputStream();
    print(refused, unsealed);
    ByteArrayOutputStream sealed = new ByteArrayOutputStream();
    new Sealing(seal, authority).seal(unsealed.toByteArray(), made, sealed);
    return sealed.toByteArray();
  }

  private void print(Optional<TimeStampRefused> refused, OutputStream out) throws IOException {
    SealWords words = SealWords.of(edition, seals, refused);
    try (Typefaces faces = Typefaces.open()) {
      press.print(composition.html(faces, words, enclosures), faces, made, enclosures, out);
    }
  }

  private static void deliver(byte[] pdf, Destination destination) throws IOException {
    destination.deliver(out -> out.write(pdf));
  }
}
