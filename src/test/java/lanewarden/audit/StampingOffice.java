package lanewarden.audit;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.math.BigInteger;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import org.bouncycastle.asn1.ASN1ObjectIdentifier;
import org.bouncycastle.asn1.nist.NISTObjectIdentifiers;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.AlgorithmIdentifier;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoGeneratorBuilder;
import org.bouncycastle.operator.ContentSigner;
import org.bouncycastle.operator.bc.BcDigestCalculatorProvider;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.bouncycastle.tsp.TSPAlgorithms;
import org.bouncycastle.tsp.TimeStampRequest;
import org.bouncycastle.tsp.TimeStampRequestGenerator;
import org.bouncycastle.tsp.TimeStampResponse;
import org.bouncycastle.tsp.TimeStampResponseGenerator;
import org.bouncycastle.tsp.TimeStampTokenGenerator;

/** A time-stamp authority on this machine, which proves no time to anyone. */
final class StampingOffice implements AutoCloseable {
  static final Instant STAMPED = Instant.parse("2026-05-30T16:00:05Z");
  private static final ASN1ObjectIdentifier POLICY = new ASN1ObjectIdentifier("1.2.3.4.1");

  private final HttpServer server;
  private final KeyPair keys;
  private final X509CertificateHolder certificate;
  private int served;

  StampingOffice() throws Exception {
    KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
    generator.initialize(2048);
    keys = generator.generateKeyPair();
    X500Name name = new X500Name("CN=Stamping office of a test");
    ContentSigner signer = new JcaContentSignerBuilder("SHA256withRSA").build(keys.getPrivate());
    certificate =
        new JcaX509v3CertificateBuilder(
                name,
                BigInteger.ONE,
                Date.from(Instant.parse("2020-01-01T00:00:00Z")),
                Date.from(Instant.parse("2050-01-01T00:00:00Z")),
                name,
                keys.getPublic())
            .addExtension(
                Extension.extendedKeyUsage,
                true,
                new ExtendedKeyUsage(KeyPurposeId.id_kp_timeStamping))
            .build(signer);
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext("/stamp", exchange -> answer(exchange, 200, false));
    server.createContext("/broken", exchange -> answer(exchange, 500, false));
    server.createContext("/other", exchange -> answer(exchange, 200, true));
    server.start();
  }

  String url(String path) {
    return "http://localhost:" + server.getAddress().getPort() + path;
  }

  X509CertificateHolder certificate() {
    return certificate;
  }

  int served() {
    return served;
  }

  private void answer(HttpExchange exchange, int status, boolean wrongHash) throws IOException {
    byte[] asked = exchange.getRequestBody().readAllBytes();
    byte[] answer = status == 200 ? stamp(asked, wrongHash) : new byte[0];
    served++;
    exchange.getResponseHeaders().add("Content-Type", "application/timestamp-reply");
    exchange.sendResponseHeaders(status, answer.length == 0 ? -1 : answer.length);
    exchange.getResponseBody().write(answer);
    exchange.close();
  }

  private byte[] stamp(byte[] asked, boolean wrongHash) throws IOException {
    try {
      TimeStampRequest request = new TimeStampRequest(asked);
      if (wrongHash) {
        request =
            new TimeStampRequestGenerator()
                .generate(TSPAlgorithms.SHA256, new byte[32], request.getNonce());
      }
      TimeStampTokenGenerator tokens =
          new TimeStampTokenGenerator(
              new JcaSimpleSignerInfoGeneratorBuilder()
                  .build("SHA256withRSA", keys.getPrivate(), certificate),
              new BcDigestCalculatorProvider()
                  .get(new AlgorithmIdentifier(NISTObjectIdentifiers.id_sha256)),
              POLICY);
      tokens.addCertificates(new JcaCertStore(List.of(certificate)));
      TimeStampResponse response =
          new TimeStampResponseGenerator(tokens, TSPAlgorithms.ALLOWED)
              .generate(request, BigInteger.TEN, Date.from(STAMPED));
      return response.getEncoded();
    } catch (Exception e) {
      throw new IOException(e);
    }
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
