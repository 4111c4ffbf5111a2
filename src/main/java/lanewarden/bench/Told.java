package lanewarden.bench;

import lanewarden.quantity.Sentence;

/** The sentences that tell a comparison of set-ups, and the parts they are made of. */
public enum Told implements Sentence.Form {
  SUMMARY("{0}, {1}, {2} left out"),
  ONE_SET_UP("1 set-up"),
  SET_UPS("{0} set-ups"),
  ONE_SHOT("1 shot"),
  SHOTS("{0} shots"),
  OF("{0} of {1}"),

  // What is left out, and why
  LEFT_OUT("{0} (line {1}): {2}"),
  OF_SET_UP("{0}: {1}"),
  MISREAD("marked as a misread"),
  MISREAD_BECAUSE("marked as a misread: {0}"),

  // What the rating makes one expect of a set-up
  AS_EXPECTED("as expected of the bow by rules of thumb, about {0} ft/s ({1} to {2})"),
  SLOWER("slower than expected of the bow by rules of thumb, about {0} ft/s ({1} to {2})"),
  FASTER("faster than expected of the bow by rules of thumb, about {0} ft/s ({1} to {2})"),

  // A bow's virtual mass
  MASS("{0}: {1} gr by the speeds alone; with {2} to {3} supposed, {4} gr to {5} gr"),
  MASS_IS_NOISE(
      "{0}: {1} gr by the speeds alone, which no bow has: noise, not used; {2} to {3} is supposed"),

  // How far a mean stays below a limit
  NOT_ADMITTED("not admitted: {0}"),
  NO_LIMIT("no limit applies"),
  NOT_KNOWN("not known without {0}"),
  NO_SHOT("no shot counts"),
  TOO_FEW("not known: too few shots"),
  INSIDE("inside"),
  OVER("over"),
  TOO_NEAR("too near to tell"),

  // How the figures came about
  SIFTED(
      "A reading is left out if the file says that it is a misread, if the arrow would carry more energy than the bow can give by its stated figures, or if it lies more than 3.5 scaled median absolute deviations and 2 % from the median of three readings or more."),
  DIFFERENCES(
      "Welch's intervals, made wider for the number of pairs (Bonferroni): all of them hold at once 95 times in 100 where shots scatter by 2 ft/s or less, the step of the display included and a scatter of 1 ft/s taken where a few shots seem to have less. A difference is real where its interval leaves zero out; else it is within noise."),
  THUMBS(
      "Rules of thumb, not measured: an inch of draw length 10 ft/s (8 to 12), a pound of draw weight 2 ft/s (1.5 to 2.5), three grains of arrow 1 ft/s (2.5 to 4 grains).");

  private final String english;

  Told(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
