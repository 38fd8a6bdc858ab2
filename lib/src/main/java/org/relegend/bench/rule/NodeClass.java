package org.relegend.bench.rule;

/** How a node bears the touch of a probe. */
public enum NodeClass {
  /** Held by a supply or an output: a probe changes nothing. */
  DRIVEN("driven"),
  /** Held through resistors: the change can be computed. */
  RESISTIVE("resistive"),
  /** Only gates, capacitors, collectors, or resistors of megohms. */
  HIGH_IMPEDANCE("high impedance");

  private final String word;

  NodeClass(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
