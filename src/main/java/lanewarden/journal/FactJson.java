package lanewarden.journal;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializerBase;
import com.fasterxml.jackson.databind.type.LogicalType;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import lanewarden.ledger.Draft;
import lanewarden.ledger.Entry;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import lanewarden.rules.Consequence;
import lanewarden.rules.Phase;

/**
 * The JSON form of facts, and their kinds.
 *
 * <p>A quantity is a string such as {@code "300.1 ft/s"}, a number with decimals one such as {@code
 * "1.8"}, so that no reader turns it into a binary fraction. Reading is strict: an unknown or a
 * missing member is refused, and so is a number where a text must be, or the other way round. Times
 * lie in the years 1 to 9999 (as RFC 3339 can write them), and a number with decimals has at most
 * twelve digits on either side of its point: nobody measures or waits for more, and arithmetic on
 * either can then never fail.
 */
public final class FactJson {

  private static final Map<String, Class<? extends Fact>> KINDS = kinds();
  private static final Map<Class<? extends Fact>, String> NAMES = names();
  private static final Instant EARLIEST = Instant.parse("0001-01-01T00:00:00Z");
  private static final Instant LATEST = Instant.parse("9999-12-31T23:59:59.999999999Z");
  private static final Pattern DECIMAL = Pattern.compile("-?[0-9]{1,12}(?:\\.[0-9]{1,12})?");
  private static final ObjectMapper MAPPER = mapper();

  private FactJson() {}

  private static Map<String, Class<? extends Fact>> kinds() {
    Map<String, Class<? extends Fact>> kinds = new LinkedHashMap<>();
    kinds.put("rule-book-adopted", Fact.RuleBookAdopted.class);
    kinds.put("roster-adopted", Fact.RosterAdopted.class);
    kinds.put("report-seal-adopted", FrameFact.ReportSealAdopted.class);
    kinds.put("phase-began", Fact.PhaseBegan.class);
    kinds.put("draw-made", Fact.DrawMade.class);
    kinds.put("station-opened", Fact.StationOpened.class);
    kinds.put("official-signed-in", Fact.OfficialSignedIn.class);
    kinds.put("official-signed-out", FrameFact.OfficialSignedOut.class);
    kinds.put("clock-stepped", FrameFact.ClockStepped.class);
    kinds.put("head-witnessed", FrameFact.HeadWitnessed.class);
    kinds.put("line-stopped", FrameFact.LineStopped.class);
    kinds.put("line-cleared", FrameFact.LineCleared.class);
    kinds.put("practice-kept", FrameFact.PracticeKept.class);
    kinds.put("check-opened", Fact.CheckOpened.class);
    kinds.put("set-up-stated", SetUpStated.class);
    kinds.put("condition-ticked", Fact.ConditionTicked.class);
    kinds.put("reading-taken", Fact.ReadingTaken.class);
    kinds.put("line-refused", Fact.LineRefused.class);
    kinds.put("reading-voided", Fact.ReadingVoided.class);
    kinds.put("reading-flagged", Fact.ReadingFlagged.class);
    kinds.put("reading-kept", Fact.ReadingKept.class);
    kinds.put("verdict-given", Fact.VerdictGiven.class);
    kinds.put("check-closed", Fact.CheckClosed.class);
    kinds.put("link-changed", Fact.LinkChanged.class);
    kinds.put("station-closed", Fact.StationClosed.class);
    kinds.put("verification-planned", Fact.VerificationPlanned.class);
    kinds.put("verification-began", Fact.VerificationBegan.class);
    kinds.put("verification-shot", Fact.VerificationShot.class);
    kinds.put("reference-typed", Fact.ReferenceTyped.class);
    kinds.put("verification-ended", Fact.VerificationEnded.class);
    kinds.put("line-held", Fact.LineHeld.class);
    kinds.put("hold-lifted", Fact.HoldLifted.class);
    kinds.put("protest-filed", ProtestFact.ProtestFiled.class);
    kinds.put("protest-ruled", ProtestFact.ProtestRuled.class);
    kinds.put("correction-made", ProtestFact.CorrectionMade.class);
    kinds.put("correction-confirmed", ProtestFact.CorrectionConfirmed.class);
    return kinds;
  }

  private static Map<Class<? extends Fact>, String> names() {
    Map<Class<? extends Fact>, String> names = new LinkedHashMap<>();
    KINDS.forEach((name, type) -> names.put(type, name));
    return names;
  }

  private static ObjectMapper mapper() {
    SimpleModule quantities = new SimpleModule();
    written(quantities, Speed.class, Speed::toString, Speed::parse);
    written(quantities, Mass.class, Mass::toString, Mass::parse);
    written(quantities, Force.class, Force::toString, Force::parse);
    written(quantities, Length.class, Length::toString, Length::parse);
    written(quantities, BigDecimal.class, BigDecimal::toPlainString, FactJson::decimal);
    written(quantities, Instant.class, Instant::toString, FactJson::instant);
    written(quantities, Phase.class, Phase::word, word -> known(word, Phase.ofWord(word)));
    written(
        quantities,
        Consequence.class,
        Consequence::word,
        word -> known(word, Consequence.ofWord(word)));
    return JsonMapper.builder()
        .addModule(quantities)
        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
        .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
        .withCoercionConfig(
            LogicalType.Textual,
            text ->
                text.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                    .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                    .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
        .build();
  }

  private static Instant instant(String text) {
    Instant at = Instant.parse(text);
    if (at.isBefore(EARLIEST) || at.isAfter(LATEST)) {
      throw new IllegalArgumentException("the time " + at + " is not in the years 1 to 9999");
    }
    return at;
  }

  private static BigDecimal decimal(String text) {
    if (!DECIMAL.matcher(text).matches()) {
      throw new IllegalArgumentException("no plain number of at most twelve digits and decimals");
    }
    return new BigDecimal(text);
  }

  private static <T> T known(String word, Optional<T> meant) {
    return meant.orElseThrow(
        () -> new IllegalArgumentException("the word \"" + word + "\" is not known here"));
  }

  private static <T> void written(
      SimpleModule module, Class<T> type, Function<T, String> write, Function<String, T> read) {
    module.addSerializer(
        type,
        new ToStringSerializerBase(type) {
          private static final long serialVersionUID = 1L;

          @Override
          public String valueToString(Object value) {
            return write.apply(type.cast(value));
          }
        });
    module.addDeserializer(
        type,
        new StdScalarDeserializer<T>(type) {
          private static final long serialVersionUID = 1L;

          @Override
          public T deserialize(JsonParser parser, DeserializationContext context)
              throws IOException {
            if (!parser.hasToken(JsonToken.VALUE_STRING)) {
              throw JsonMappingException.from(parser, "a text is due");
            }
            try {
              return read.apply(parser.getText());
            } catch (IllegalArgumentException | DateTimeException e) {
              throw JsonMappingException.from(parser, String.valueOf(e.getMessage()), e);
            }
          }
        });
  }

  /** The fact as it is to be signed. */
  public static Draft draft(Fact fact) {
    String kind = NAMES.get(fact.getClass());
    if (kind == null) {
      throw new IllegalStateException("no kind for " + fact.getClass());
    }
    try {
      return new Draft(kind, MAPPER.writeValueAsBytes(fact));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a fact that has no JSON form: " + fact, e);
    }
  }

  /**
   * What the entry says; empty if its kind is none of these: one of the ledger's own, as an
   * enrolment is, or one that a newer version wrote.
   *
   * @throws FactRefused if the body does not fit its kind
   */
  public static Optional<Fact> read(Entry entry) throws FactRefused {
    Class<? extends Fact> type = KINDS.get(entry.kind());
    if (type == null) {
      return Optional.empty();
    }
    try {
      Fact fact = MAPPER.readValue(entry.body(), type);
      Members.check(fact);
      return Optional.of(fact);
    } catch (IOException | IllegalArgumentException e) {
      throw new FactRefused(entry.sequence(), entry.kind(), e);
    }
  }
}
