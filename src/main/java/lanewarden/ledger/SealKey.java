package lanewarden.ledger;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigInteger;
import java.security.SecureRandom;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Date;
import java.util.Map;
import org.bouncycastle.asn1.nist.NISTNamedCurves;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x509.AlgorithmIdentifier;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x9.ECNamedCurveTable;
import org.bouncycastle.asn1.x9.X9ObjectIdentifiers;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.bc.BcX509ExtensionUtils;
import org.bouncycastle.cert.bc.BcX509v3CertificateBuilder;
import org.bouncycastle.crypto.digests.SHA256Digest;
import org.bouncycastle.crypto.generators.ECKeyPairGenerator;
import org.bouncycastle.crypto.params.ECDomainParameters;
import org.bouncycastle.crypto.params.ECKeyGenerationParameters;
import org.bouncycastle.crypto.params.ECNamedDomainParameters;
import org.bouncycastle.crypto.params.ECPrivateKeyParameters;
import org.bouncycastle.crypto.params.ECPublicKeyParameters;
import org.bouncycastle.crypto.signers.DSADigestSigner;
import org.bouncycastle.crypto.signers.ECDSASigner;
import org.bouncycastle.crypto.signers.HMacDSAKCalculator;
import org.bouncycastle.operator.ContentSigner;

/**
 * A private P-256 key (FIPS 186-5) with its self-signed certificate (RFC 5280), for documents that
 * readers without knowledge of ledgers shall be able to check.
 *
 * <p>A ledger's own entries are never signed with it. Immutable; safe for any thread. Its text
 * never shows the private part. Rests on disk only sealed, see {@link KeyFile}.
 */
public final class SealKey {
  static final String CURVE = "P-256";

  /** The most characters of a common name (X.520, ub-common-name). */
  private static final int LONGEST_NAME = 64;

  private static final int SERIAL_BITS = 127;
  private static final Duration VALID = Duration.ofDays(100 * 365L);

  private static final ECNamedDomainParameters P256 =
      new ECNamedDomainParameters(
          ECNamedCurveTable.getOID(CURVE),
          new ECDomainParameters(NISTNamedCurves.getByName(CURVE)));

  private final ECPrivateKeyParameters key;
  private final X509Certificate certificate;

  private SealKey(ECPrivateKeyParameters key, X509Certificate certificate) {
    this.key = key;
    this.certificate = certificate;
  }

  /**
   * A new key with its certificate.
   *
   * @param unit what the key is for, the certificate's organizational unit
   * @param name whose it is, the certificate's common name; cut to 64 characters
   * @param from when it begins to be valid; it stays so for a hundred years, because a seal is to
   *     outlive the program
   */
  public static SealKey generate(String unit, String name, Instant from, SecureRandom random) {
    ECKeyPairGenerator generator = new ECKeyPairGenerator();
    generator.init(new ECKeyGenerationParameters(P256, random));
    var pair = generator.generateKeyPair();
    ECPrivateKeyParameters secret = (ECPrivateKeyParameters) pair.getPrivate();
    X500Name subject =
        new X500NameBuilder().addRDN(BCStyle.OU, cut(unit)).addRDN(BCStyle.CN, cut(name)).build();
    try {
      X509v3CertificateBuilder builder =
          new BcX509v3CertificateBuilder(
              subject,
              new BigInteger(SERIAL_BITS, random).add(BigInteger.ONE),
              Date.from(from),
              Date.from(from.plus(VALID)),
              subject,
              pair.getPublic());
      builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
      builder.addExtension(
          Extension.keyUsage,
          true,
          new KeyUsage(KeyUsage.digitalSignature | KeyUsage.nonRepudiation));
      builder.addExtension(
          Extension.subjectKeyIdentifier,
          false,
          new BcX509ExtensionUtils().createSubjectKeyIdentifier(pair.getPublic()));
      return new SealKey(secret, read(builder.build(signer(secret)).getEncoded()));
    } catch (IOException | CertificateException impossible) {
      throw new IllegalStateException("This Java cannot make a certificate.", impossible);
    }
  }

  private static String cut(String name) {
    int end = Math.min(name.length(), LONGEST_NAME);
    // Half a character would make a name that no reader can show.
    boolean splits = end < name.length() && Character.isHighSurrogate(name.charAt(end - 1));
    return name.substring(0, splits ? end - 1 : end);
  }

  /**
   * The key of these parts.
   *
   * @throws CertificateException when they do not belong together
   */
  static SealKey of(BigInteger d, byte[] der) throws CertificateException {
    X509Certificate certificate = read(der);
    try {
      SealKey made = new SealKey(new ECPrivateKeyParameters(d, P256), certificate);
      ECPublicKeyParameters fromSecret = made.publicPoint();
      byte[] stated = certificate.getPublicKey().getEncoded();
      byte[] point = fromSecret.getQ().getEncoded(false);
      int start = stated.length - point.length;
      if (start < 0 || !Arrays.equals(stated, start, stated.length, point, 0, point.length)) {
        throw new CertificateException("the certificate is of another key");
      }
      return made;
    } catch (IllegalArgumentException outside) {
      throw new CertificateException("the number is no key of this curve", outside);
    }
  }

  private static X509Certificate read(byte[] der) throws CertificateException {
    return (X509Certificate)
        CertificateFactory.getInstance("X.509").generateCertificate(new ByteArrayInputStream(der));
  }

  private ECPublicKeyParameters publicPoint() {
    return new ECPublicKeyParameters(P256.getG().multiply(key.getD()).normalize(), P256);
  }

  /** The certificate, which anyone may have. */
  public X509Certificate certificate() {
    return certificate;
  }

  /** The certificate's bytes (DER). */
  public byte[] certificateBytes() {
    return encoded(certificate);
  }

  private static byte[] encoded(X509Certificate certificate) {
    try {
      return certificate.getEncoded();
    } catch (CertificateException impossible) {
      throw new IllegalStateException("A certificate that was read has bytes.", impossible);
    }
  }

  /** Coordinates of the public point as 32 bytes each, the first for 0 and the second for 1. */
  byte[] coordinate(int which) {
    var point = publicPoint().getQ();
    return (which == 0 ? point.getAffineXCoord() : point.getAffineYCoord()).getEncoded();
  }

  BigInteger secret() {
    return key.getD();
  }

  /**
   * Signs as X.509 and CMS want it: ECDSA with SHA-256. The same message always gives the same
   * signature (RFC 6979), so that no source of randomness can leak the key.
   */
  public ContentSigner signer() {
    return signer(key);
  }

  private static ContentSigner signer(ECPrivateKeyParameters secret) {
    ByteArrayOutputStream message = new ByteArrayOutputStream();
    return new ContentSigner() {
      @Override
      public AlgorithmIdentifier getAlgorithmIdentifier() {
        return new AlgorithmIdentifier(X9ObjectIdentifiers.ecdsa_with_SHA256);
      }

      @Override
      public OutputStream getOutputStream() {
        return message;
      }

      @Override
      public byte[] getSignature() {
        DSADigestSigner signer =
            new DSADigestSigner(
                new ECDSASigner(new HMacDSAKCalculator(new SHA256Digest())), new SHA256Digest());
        signer.init(true, secret);
        byte[] bytes = message.toByteArray();
        signer.update(bytes, 0, bytes.length);
        return signer.generateSignature();
      }
    };
  }

  /** RFC 7638 thumbprint of the public key. */
  public String thumbprint() {
    return Thumbprint.of(
        Map.of(
            "crv",
            CURVE,
            "kty",
            "EC",
            "x",
            Base64Url.encode(coordinate(0)),
            "y",
            Base64Url.encode(coordinate(1))));
  }

  @Override
  public String toString() {
    return "private seal key of " + thumbprint();
  }
}
