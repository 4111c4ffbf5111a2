package lanewarden.kiosk.look;

import lanewarden.metrology.Compared;
import lanewarden.station.Verified;

/** Under which key the screens have what a verification of the instrument found. */
final class InstrumentKeys {

  private InstrumentKeys() {}

  static String of(Compared compared) {
    return switch (compared) {
      case ONE_SHOT -> "compared.one-shot";
      case SHOTS -> "compared.shots";
      case BIAS_AT_MOST -> "compared.bias-at-most";
      case BIAS_MORE -> "compared.bias-more";
      case SPREAD_AT_MOST -> "compared.spread-at-most";
      case SPREAD_MORE -> "compared.spread-more";
      case NO_SPREAD -> "compared.no-spread";
    };
  }

  static String of(Verified verified) {
    return switch (verified) {
      case NO_SHOT -> "verified.no-shot";
      case BROKEN_OFF -> "verified.broken-off";
      case BECAUSE -> "verified.because";
    };
  }
}
