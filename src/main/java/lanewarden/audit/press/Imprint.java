package lanewarden.audit.press;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * What a document says of itself: title, author, subject and time, in both of the places that a PDF
 * has for them, as PDF/A demands; its language, its colours, and the standards it keeps.
 */
record Imprint(String title, String subject, String author, Instant made) {
  private static final String PRODUCER = "Lanewarden";
  private static final String SRGB = "sRGB IEC61966-2.1";
  private static final float VERSION = 1.7f;

  void into(PDDocument document, Ink ink) throws IOException {
    document.setVersion(VERSION);
    Calendar time = GregorianCalendar.from(made.atZone(ZoneOffset.UTC));
    PDDocumentInformation information = document.getDocumentInformation();
    information.setTitle(title);
    information.setSubject(subject);
    information.setAuthor(author);
    information.setProducer(PRODUCER);
    information.setCreationDate(time);
    information.setModificationDate(time);
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage("en");
    catalog.setViewerPreferences(new PDViewerPreferences(new COSDictionary()));
    catalog.getViewerPreferences().setDisplayDocTitle(true);
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(xmp(ink).getBytes(StandardCharsets.UTF_8));
    catalog.setMetadata(metadata);
    catalog.addOutputIntent(colours(document));
  }

  private String xmp(Ink ink) throws IOException {
    return new Template(Imprint.class, "imprint.xml", ink)
        .fill(
            Map.of(
                "title", title,
                "subject", subject,
                "author", author,
                "producer", PRODUCER,
                "made", made.truncatedTo(ChronoUnit.SECONDS)));
  }

  private static PDOutputIntent colours(PDDocument document) throws IOException {
    byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
    intent.setInfo(SRGB);
    intent.setOutputCondition(SRGB);
    intent.setOutputConditionIdentifier(SRGB);
    intent.setRegistryName("http://www.color.org");
    return intent;
  }
}
