package org.relegend.bench;

import java.util.Locale;
import org.relegend.map.FixedWords;

/**
 * The steps of a job in their usual order: what can hurt first, then looking, then supply rails
 * before signals (common practice; order of checks after US Army IT0338, frame 18).
 */
public enum CheckStep {
  PHOTOGRAPH("Photograph both sides before touching anything."),
  DANGER(
      "Unplug. Find mains parts and stored charge, outline them on the photos, and measure what is"
          + " left on the reservoir capacitors before touching. Local codes and licensed practice"
          + " come first."),
  LOOK("Look at both sides: replaced, re-soldered, damaged, burnt, bulging, cracked, bridged."),
  DATES("Read date codes: what is later than the rest was put in later."),
  COLD("Without power: fuses, shorts across the rails, junctions, and ohms against the twin."),
  FIRST_POWER("First power through a current limit, with the current in view."),
  RAILS("Supply rails, at the pins of the circuits that use them."),
  SIGNAL("The signal path: from the last good point to the first bad one."),
  COMPARE("The same nodes in the twin channel."),
  PROVE("Prove the suspect in circuit before it is unsoldered."),
  REPAIR("Repair, and beep out every net that the pads served."),
  VERIFY("Read the same nodes again, and ask why the part failed."),
  ADJUST("Warm up and adjust."),
  LEAKAGE("Insulation and protective earth, by the limits that hold where you work."),
  HAND_BACK("Write down what was found, changed, left, and what to watch.");

  private final String text;

  CheckStep(String text) {
    this.text = text;
  }

  /** What to do, a sentence. */
  public String text() {
    return text;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Reads such a word.
   *
   * @throws IllegalArgumentException where it is none of them
   */
  public static CheckStep of(String word) {
    return FixedWords.find(values(), CheckStep::word, "step of the checklist", word);
  }
}
