package lanewarden.audit.seal;

import java.io.IOException;
import java.math.BigInteger;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.security.SecureRandom;
import java.security.cert.CertificateException;
import java.time.Duration;
import java.util.Collection;
import lanewarden.ledger.Sha256;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.tsp.TSPAlgorithms;
import org.bouncycastle.tsp.TSPException;
import org.bouncycastle.tsp.TimeStampRequest;
import org.bouncycastle.tsp.TimeStampRequestGenerator;
import org.bouncycastle.tsp.TimeStampResponse;
import org.bouncycastle.tsp.TimeStampToken;

/**
 * Somebody else who vouches for a time (RFC 3161), asked over HTTP.
 *
 * <p>It gets to see a hash and nothing else. Whether it is to be believed is for the reader to say:
 * here is only checked that its answer is about this request and signed by the certificate it
 * names. Safe for any thread.
 */
public final class TimeStampAuthority {
  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final int NONCE_BITS = 64;
  private static final int FINE = 200;

  private final URI url;
  private final SecureRandom random;

  /**
   * @param url an http or https address
   * @param random for the number that ties an answer to its request
   * @throws IllegalArgumentException when the address has another form
   */
  public TimeStampAuthority(String url, SecureRandom random) {
    this.url = URI.create(url.strip());
    this.random = random;
    String scheme = String.valueOf(this.url.getScheme());
    boolean web = scheme.equals("http") || scheme.equals("https");
    if (!web || this.url.getHost() == null) {
      throw new IllegalArgumentException(
          "The address of a time-stamp authority begins with http:// or https://; found \""
              + url
              + "\".");
    }
  }

  /** Its address. */
  public String url() {
    return url.toString();
  }

  /**
   * A token over these bytes.
   *
   * @throws TimeStampRefused when it cannot be reached, or its answer is not in order
   */
  byte[] token(byte[] stamped) throws TimeStampRefused {
    try {
      TimeStampRequestGenerator generator = new TimeStampRequestGenerator();
      generator.setCertReq(true);
      TimeStampRequest request =
          generator.generate(
              TSPAlgorithms.SHA256, Sha256.of(stamped).bytes(), new BigInteger(NONCE_BITS, random));
      TimeStampResponse response = new TimeStampResponse(answer(request.getEncoded()));
      response.validate(request);
      TimeStampToken token = response.getTimeStampToken();
      if (token == null) {
        throw new TimeStampRefused(
            url(), "it refused: " + String.valueOf(response.getStatusString()), null);
      }
      check(token);
      return token.getEncoded();
    } catch (TSPException | OperatorCreationException e) {
      throw new TimeStampRefused(url(), "its answer is not in order: " + e.getMessage(), e);
    } catch (TimeStampRefused e) {
      throw e;
    } catch (IOException e) {
      String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
      throw new TimeStampRefused(url(), "it could not be reached: " + why, e);
    }
  }

  private void check(TimeStampToken token) throws TSPException, OperatorCreationException {
    @SuppressWarnings("unchecked") // a selector of certificates selects certificates
    Collection<X509CertificateHolder> signers = token.getCertificates().getMatches(token.getSID());
    if (signers.isEmpty()) {
      throw new TSPException("it names no certificate");
    }
    try {
      token.validate(new JcaSimpleSignerInfoVerifierBuilder().build(signers.iterator().next()));
    } catch (CertificateException e) {
      throw new TSPException("its certificate cannot be read", e);
    }
  }

  private byte[] answer(byte[] request) throws IOException {
    HttpClient client = HttpClient.newBuilder().connectTimeout(PATIENCE).build();
    HttpRequest post =
        HttpRequest.newBuilder(url)
            .timeout(PATIENCE)
            .header("Content-Type", "application/timestamp-query")
            .POST(HttpRequest.BodyPublishers.ofByteArray(request))
            .build();
    try {
      HttpResponse<byte[]> response = client.send(post, HttpResponse.BodyHandlers.ofByteArray());
      if (response.statusCode() != FINE) {
        throw new TimeStampRefused(
            url(), "it answered with HTTP status " + response.statusCode(), null);
      }
      return response.body();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new TimeStampRefused(url(), "the program was told to stop", e);
    }
  }
}
