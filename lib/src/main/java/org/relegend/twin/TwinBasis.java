package org.relegend.twin;

/** How a pair of twins is known. */
public enum TwinBasis {
  /** A person said so, or accepted it. */
  DECLARED("declared"),
  /** Nothing else stands so in the circuit. */
  STRUCTURE("structure"),
  /** Of those that stand so, only this has the value. */
  VALUE("value"),
  /** One of several that can't be told apart by the circuit. */
  ONE_OF_SEVERAL("one of several");

  private final String word;

  TwinBasis(String word) {
    this.word = word;
  }

  /** The word used in lists and on screens. */
  public String word() {
    return word;
  }
}
