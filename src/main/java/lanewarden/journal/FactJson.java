package lanewarden.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.std.FromStringDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializerBase;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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
 * missing member is refused.
 */
public final class FactJson {

  private static final Map<String, Class<? extends Fact>> KINDS = kinds();
  private static final Map<Class<? extends Fact>, String> NAMES = names();
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
    written(quantities, BigDecimal.class, BigDecimal::toPlainString, BigDecimal::new);
    written(quantities, Instant.class, Instant::toString, Instant::parse);
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
        .build();
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
        new FromStringDeserializer<T>(type) {
          private static final long serialVersionUID = 1L;

          @Override
          protected T _deserialize(String value, DeserializationContext context) {
            return read.apply(value);
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
