package org.relegend.circuit;

import org.relegend.map.BoardMap;

/** More circuits in the shape of published decks, each with what is known of it from elsewhere. */
public final class OtherDecks {
  private static final String RCA3040 =
      """
      RCA3040
      VIN 1 0 AC 1
      VCC 2 0 15
      VEE 3 0 -15
      RS1 30 %s 1K
      RS2 31 0 1K
      R1 5 3 4.8K
      R2 6 3 4.8K
      R3 9 3 811
      R4 8 3 2.17K
      R5 8 0 820
      R6 2 14 1.32K
      R7 2 12 4.5K
      R8 2 15 1.32K
      R9 16 0 5.25K
      R10 17 0 5.25K
      Q1 2 30 5 QNL
      Q2 2 31 6 QNL
      Q3 10 5 7 QNL
      Q4 11 6 7 QNL
      Q5 14 12 10 QNL
      Q6 15 12 11 QNL
      Q7 12 12 13 QNL
      Q8 13 13 0 QNL
      Q9 7 8 9 QNL
      Q10 2 15 16 QNL
      Q11 2 14 17 QNL
      """;

  private static final String FILTER =
      """
      .SUBCKT FILTER 1 2 3
      C1 1 4 330N
      C2 4 5 330N
      R1 4 6 2780
      R2 6 8 2780
      R3 5 7 2780
      R4 7 0 2780
      C3 8 9 330N
      C4 9 10 330N
      R5 9 11 2780
      R6 11 13 2780
      R7 10 12 2780
      R8 12 0 2780
      R9 8 0 10K
      R10 13 0 10K
      R11 13 0 100K
      U1 8 8 5 3 10 13 13 2 DUAL
      .ENDS FILTER
      """;

  private OtherDecks() {}

  /**
   * A two-sided wideband amplifier published with the same simulator, from memory: 11 transistors,
   * 12 resistors, 3 sources, and no symmetry, since only one input is driven. Reference notes,
   * section 9.
   */
  public static Deck wideband() {
    return new Deck(RCA3040.formatted("1"));
  }

  /** The same with both inputs to ground: two halves that are twins. */
  public static Deck widebandBalanced() {
    return new Deck(RCA3040.formatted("0"));
  }

  /**
   * Three equal fourth-order filter channels on one input, made to the counts of a published deck
   * (reference notes, section 9: 48 parts, 34 nets, 16 classes of three): the inside of a channel
   * is our own, since only the counts are at hand. Nodes of a channel: input, V+, V-.
   */
  public static Deck threeFilters() {
    return new Deck(
        "THREE FILTERS\n" + FILTER + "X1 1 2 3 FILTER\nX2 1 2 3 FILTER\nX3 1 2 3 FILTER\n");
  }

  public static BoardMap threeFiltersMap() {
    return threeFilters().map();
  }
}
