package org.relegend.circuit;

import org.relegend.map.BoardMap;
import org.relegend.map.NetId;
import org.relegend.map.PartId;

/**
 * The four-bit all-NAND adder published with a university's circuit simulator: the classic example
 * of a nested circuit. The net list is written from memory; what is known of it from elsewhere
 * (reference notes on standards, section 9: counts of parts and nets, classes of alike parts) is
 * checked by {@code FourBitAdderTest}.
 *
 * <p>A NAND has nodes: input, input, output, supply; ONEBIT: input, input, carry in, sum, carry
 * out, supply. The whole is X1 (FOURBIT) of X1, X2 (TWOBIT) of X1, X2 (ONEBIT) of X1 to X9 (NAND).
 */
public final class FourBitAdder {
  /** One gate on its own, as subcircuit and as the only element. */
  static final String NAND =
      """
      .SUBCKT NAND 1 2 3 4
      Q1 9 5 1 QMOD
      D1CLAMP 0 1 DMOD
      Q2 9 5 2 QMOD
      D2CLAMP 0 2 DMOD
      RB 4 5 4K
      R1 4 6 1.6K
      Q3 6 9 8 QMOD
      R2 8 0 1K
      RC 4 7 130
      Q4 7 6 10 QMOD
      DVBEDROP 10 3 DMOD
      Q5 3 8 0 QMOD
      .ENDS NAND
      """;

  static final String ONEBIT =
      """
      .SUBCKT ONEBIT 1 2 3 4 5 6
      X1 1 2 7 6 NAND
      X2 1 7 8 6 NAND
      X3 2 7 9 6 NAND
      X4 8 9 10 6 NAND
      X5 3 10 11 6 NAND
      X6 3 11 12 6 NAND
      X7 10 11 13 6 NAND
      X8 12 13 4 6 NAND
      X9 11 7 5 6 NAND
      .ENDS ONEBIT
      """;

  private static final String REST =
      """
      .SUBCKT TWOBIT 1 2 3 4 5 6 7 8 9
      X1 1 2 7 5 10 9 ONEBIT
      X2 3 4 10 6 8 9 ONEBIT
      .ENDS TWOBIT
      .SUBCKT FOURBIT 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15
      X1 1 2 3 4 9 10 13 16 15 TWOBIT
      X2 5 6 7 8 11 12 16 14 15 TWOBIT
      .ENDS FOURBIT
      VCC 99 0 DC 5V
      VIN1A 1 0 PULSE(0 3 0 10NS 10NS 10NS 50NS)
      VIN1B 2 0 PULSE(0 3 0 10NS 10NS 20NS 100NS)
      VIN2A 3 0 PULSE(0 3 0 10NS 10NS 40NS 200NS)
      VIN2B 4 0 PULSE(0 3 0 10NS 10NS 80NS 400NS)
      VIN3A 5 0 PULSE(0 3 0 10NS 10NS 160NS 800NS)
      VIN3B 6 0 PULSE(0 3 0 10NS 10NS 320NS 1600NS)
      VIN4A 7 0 PULSE(0 3 0 10NS 10NS 640NS 3200NS)
      VIN4B 8 0 PULSE(0 3 0 10NS 10NS 1280NS 6400NS)
      X1 1 2 3 4 5 6 7 8 9 10 11 12 0 13 99 FOURBIT
      RBIT0 9 0 1K
      RBIT1 10 0 1K
      RBIT2 11 0 1K
      RBIT3 12 0 1K
      RCOUT 13 0 1K
      """;

  private static final Deck DECK = new Deck("ADDER\n" + NAND + ONEBIT + REST);

  private FourBitAdder() {}

  /** All 446 parts on 262 nets. */
  public static BoardMap map() {
    return DECK.map();
  }

  /** The same without its nine voltage sources. */
  public static BoardMap withoutSources() {
    return DECK.map(false);
  }

  /** One NAND gate alone: 12 parts. */
  public static BoardMap nand() {
    return new Deck("NAND\n" + NAND + "X1 1 2 3 4 NAND\n").map();
  }

  /** One ONEBIT alone: 108 parts on 67 nets and ground. */
  public static BoardMap oneBit() {
    return oneBitDeck().map();
  }

  static Deck oneBitDeck() {
    return new Deck("ONEBIT\n" + NAND + ONEBIT + "X1 1 2 3 4 5 6 ONEBIT\n");
  }

  /** The part of a hierarchical name: "X1.X2.X1.X9.Q5". */
  public static PartId part(String path) {
    return DECK.part(path);
  }

  /** The net of a hierarchical name: "X1.X2.10", "99"; ground is "0". */
  public static NetId net(String path) {
    return new NetId(path);
  }

  static Deck deck() {
    return DECK;
  }
}
