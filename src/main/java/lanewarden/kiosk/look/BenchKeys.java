package lanewarden.kiosk.look;

import lanewarden.bench.Advised;
import lanewarden.bench.Foretold;
import lanewarden.bench.Told;
import lanewarden.metrology.Straying;

/** Under which key the screens have what is told of a set-up apart from any verdict. */
final class BenchKeys {

  private BenchKeys() {}

  static String of(Advised advised) {
    return switch (advised) {
      case ONE_WAY -> "advised.one-way";
      case EITHER_WAY -> "advised.either-way";
      case NO_WAY -> "advised.no-way";
      case HEAVIER -> "advised.heavier";
      case HEAVIER_UP_TO -> "advised.heavier-up-to";
      case HEAVIER_BUT -> "advised.heavier-but";
      case HEAVIER_UP_TO_BUT -> "advised.heavier-up-to-but";
      case TOO_HEAVY -> "advised.too-heavy";
      case FREE -> "advised.free";
      case FREE_BUT -> "advised.free-but";
      case FREE_FROM -> "advised.free-from";
      case AGAINST_ENERGY -> "advised.against-energy";
      case TOO_MUCH_ENERGY -> "advised.too-much-energy";
      case LOWER -> "advised.lower";
      case LOWER_UP_TO -> "advised.lower-up-to";
      case LOWER_SHARE -> "advised.lower-share";
      case LOWER_SHARE_UP_TO -> "advised.lower-share-up-to";
      case LOW_AND_FREE -> "advised.low-and-free";
      case TOO_LOW -> "advised.too-low";
      case LEAVE_ROOM -> "advised.leave-room";
      case SUPPOSED -> "advised.supposed";
      case SUPPOSED_SCATTER -> "advised.supposed-scatter";
    };
  }

  static String of(Foretold foretold) {
    return switch (foretold) {
      case NOT_ADMITTED -> "foretold.not-admitted";
      case NOT_KNOWN -> "foretold.not-known";
      case UNLIMITED -> "foretold.unlimited";
      case UNMEASURED -> "foretold.unmeasured";
      case MEASURED -> "foretold.measured";
      case MEASURED_AGAIN -> "foretold.measured-again";
      case SUPPOSED -> "foretold.supposed";
      case FLIES -> "foretold.flies";
      case CARRIES -> "foretold.carries";
      case MASS_IS_NOISE -> "foretold.mass-is-noise";
      case MASS -> "foretold.mass";
      case STORED -> "foretold.stored";
      case STORED_TOO_LITTLE -> "foretold.stored-too-little";
      case STORES_ABOUT -> "foretold.stores-about";
      case STORES_TOO_LITTLE -> "foretold.stores-too-little";
    };
  }

  static String of(Told told) {
    return switch (told) {
      case SUMMARY -> "told.summary";
      case ONE_SET_UP -> "told.one-set-up";
      case SET_UPS -> "told.set-ups";
      case ONE_SHOT -> "told.one-shot";
      case SHOTS -> "told.shots";
      case OF -> "told.of";
      case LEFT_OUT -> "told.left-out";
      case OF_SET_UP -> "told.of-set-up";
      case MISREAD -> "told.misread";
      case MISREAD_BECAUSE -> "told.misread-because";
      case AS_EXPECTED -> "told.as-expected";
      case SLOWER -> "told.slower";
      case FASTER -> "told.faster";
      case MASS -> "told.mass";
      case MASS_IS_NOISE -> "told.mass-is-noise";
      case NOT_ADMITTED -> "told.not-admitted";
      case NO_LIMIT -> "told.no-limit";
      case NOT_KNOWN -> "told.not-known";
      case NO_SHOT -> "told.no-shot";
      case TOO_FEW -> "told.too-few";
      case INSIDE -> "told.inside";
      case OVER -> "told.over";
      case TOO_NEAR -> "told.too-near";
      case SIFTED -> "told.sifted";
      case DIFFERENCES -> "told.differences";
      case THUMBS -> "told.thumbs";
    };
  }

  static String of(Straying straying) {
    return switch (straying) {
      case FROM_MEDIAN -> "straying.from-median";
    };
  }
}
