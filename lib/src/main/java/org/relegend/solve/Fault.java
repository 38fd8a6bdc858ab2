package org.relegend.solve;

/** One thing that can be wrong with a circuit: it turns the healthy netlist into the faulty one. */
public sealed interface Fault permits ChangedLaw, StrayResistance, SeveredTerminals {
  /** The part to blame; empty for what lies between parts. */
  String part();

  FailureMode mode();

  /** For people: "base to emitter shorted". */
  String text();

  /**
   * The netlist with the fault in it.
   *
   * @throws IllegalArgumentException where the netlist lacks what the fault is about
   */
  Netlist appliedTo(Netlist healthy);
}
