package lanewarden.bench;

import lanewarden.quantity.Sentence;

/** The sentences that tell what a set-up does and what awaits it, before anybody shoots. */
public enum Foretold implements Sentence.Form {
  NOT_ADMITTED("Not admitted: {0}."),
  NOT_KNOWN("Not known: state {0}."),
  UNLIMITED("Passes without a shot; {0}."),
  UNMEASURED("Admitted; the limit holds, but nobody is measured."),
  MEASURED("To be measured; up to {0} passes. The first check is passed {1}."),
  MEASURED_AGAIN(
      "To be measured; up to {0} passes. The first check is passed {1}, and with the re-checks allowed {2}."),
  SUPPOSED(
      "Supposed of the check: arrows that scatter by {0}, an instrument uncertain by {1} a reading and {2} for all, {3} void shots."),

  // The set-up itself
  FLIES("An arrow of {0} at {1} ({2} to {3} with 95 % confidence)."),
  CARRIES("It carries {0} ({1}) and {2}."),
  MASS_IS_NOISE(
      "By the shots alone the bow's virtual mass is {0} gr with a standard uncertainty of {1} gr: less than nothing, which no bow has. That is noise and is not used; supposed are {2} to {3}."),
  MASS(
      "By the shots alone the bow's virtual mass is {0} gr with a standard uncertainty of {1} gr; with {2} to {3} supposed, it is {4} to {5} gr with 95 % confidence."),
  STORED(
      "By its force-draw curve the bow stores {0}; the arrow takes {1} % of it, a virtual mass of {2} gr."),
  STORED_TOO_LITTLE(
      "By its force-draw curve the bow stores {0}; the arrow takes {1} % of it, a virtual mass of {2} gr. More than all cannot be: look at the figures again."),
  STORES_ABOUT(
      "A compound bow of these figures stores about {0} to {1} (rule of thumb); the arrow takes {2} to {3} % of it."),
  STORES_TOO_LITTLE(
      "A compound bow of these figures stores about {0} to {1} (rule of thumb); the arrow takes {2} to {3} % of it. More than all cannot be: look at the figures again.");

  private final String english;

  Foretold(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
