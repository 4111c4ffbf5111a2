package lanewarden.audit.seal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.cert.CertificateEncodingException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Optional;
import lanewarden.ledger.Sha256;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureOptions;
import org.bouncycastle.asn1.ASN1EncodableVector;
import org.bouncycastle.asn1.ASN1Primitive;
import org.bouncycastle.asn1.DERSet;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateHolder;
import org.bouncycastle.cms.CMSAttributeTableGenerator;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.CMSSignedDataGenerator;
import org.bouncycastle.cms.DefaultSignedAttributeTableGenerator;
import org.bouncycastle.cms.SignerInfoGeneratorBuilder;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.cms.SignerInformationStore;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.bc.BcDigestCalculatorProvider;

/**
 * Signs a PDF so that a general reader can check it: CAdES within PDF (ETSI EN 319 142-1, baseline
 * B, and T with a time-stamp).
 *
 * <p>The signature is appended: the bytes it covers stay as they were.
 */
public final class Sealing {
  private static final COSName CADES = COSName.getPDFName("ETSI.CAdES.detached");

  /** Room for the signature, in bytes: a time-stamp brings the certificates of its authority. */
  private static final int ROOM = 0x6000;

  private final Seal seal;
  private final Optional<TimeStampAuthority> authority;

  /**
   * @param authority asked for a time-stamp, if there is one
   */
  public Sealing(Seal seal, Optional<TimeStampAuthority> authority) {
    this.seal = seal;
    this.authority = authority;
  }

  /**
   * Signs the document.
   *
   * @param made the time that the signature claims
   * @throws TimeStampRefused when the authority gives no time-stamp; {@code out} is worthless then
   */
  public void seal(byte[] pdf, Instant made, OutputStream out) throws IOException {
    PDSignature signature = new PDSignature();
    signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
    signature.setSubFilter(CADES);
    signature.setName(seal.name());
    signature.setReason("Seal of an audit report");
    signature.setSignDate(GregorianCalendar.from(made.atZone(ZoneOffset.UTC)));
    try (PDDocument document = Loader.loadPDF(pdf);
        SignatureOptions options = new SignatureOptions()) {
      options.setPreferredSignatureSize(ROOM);
      document.addSignature(signature, this::signature, options);
      document.saveIncremental(out);
    }
  }

  private byte[] signature(InputStream content) throws IOException {
    try {
      X509CertificateHolder certificate = new JcaX509CertificateHolder(seal.key().certificate());
      CMSSignedDataGenerator generator = new CMSSignedDataGenerator();
      generator.addSignerInfoGenerator(
          new SignerInfoGeneratorBuilder(new BcDigestCalculatorProvider())
              .setSignedAttributeGenerator(signedAttributes())
              .build(seal.key().signer(), certificate));
      generator.addCertificate(certificate);
      CMSSignedData signed =
          generator.generate(new CMSProcessableByteArray(content.readAllBytes()), false);
      return (authority.isPresent() ? stamped(signed, authority.get()) : signed).getEncoded();
    } catch (CMSException | OperatorCreationException | CertificateEncodingException e) {
      throw new IllegalStateException("This Java cannot sign a report.", e);
    }
  }

  /** CAdES wants the certificate named among what is signed, and the time elsewhere. */
  private CMSAttributeTableGenerator signedAttributes() {
    ESSCertIDv2 certificate = new ESSCertIDv2(Sha256.of(seal.key().certificateBytes()).bytes());
    ASN1EncodableVector attributes = new ASN1EncodableVector();
    attributes.add(
        new Attribute(
            PKCSObjectIdentifiers.id_aa_signingCertificateV2,
            new DERSet(new SigningCertificateV2(certificate))));
    CMSAttributeTableGenerator standard =
        new DefaultSignedAttributeTableGenerator(new AttributeTable(attributes));
    return parameters -> standard.getAttributes(parameters).remove(CMSAttributes.signingTime);
  }

  private static CMSSignedData stamped(CMSSignedData signed, TimeStampAuthority authority)
      throws IOException {
    SignerInformation signer = signed.getSignerInfos().iterator().next();
    ASN1Primitive token = ASN1Primitive.fromByteArray(authority.token(signer.getSignature()));
    ASN1EncodableVector attributes = new ASN1EncodableVector();
    attributes.add(
        new Attribute(PKCSObjectIdentifiers.id_aa_signatureTimeStampToken, new DERSet(token)));
    SignerInformation stamped =
        SignerInformation.replaceUnsignedAttributes(signer, new AttributeTable(attributes));
    return CMSSignedData.replaceSigners(signed, new SignerInformationStore(List.of(stamped)));
  }
}
