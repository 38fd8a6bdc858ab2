package org.relegend.marking;

/**
 * What sort of part a marking stands on, as far as that decides how it is read: "100KB" is 100 kΩ
 * ±0.1 % on a fixed resistor and a potentiometer of law B.
 */
public enum PartClass {
  RESISTOR(Quantity.RESISTANCE),
  POTENTIOMETER(Quantity.RESISTANCE),
  THERMISTOR(Quantity.RESISTANCE),
  VARISTOR(Quantity.VOLTAGE),
  CAPACITOR(Quantity.CAPACITANCE),
  INDUCTOR(Quantity.INDUCTANCE),
  FUSE(Quantity.CURRENT),
  /** Zener and reference diodes; other diodes' types tell no value. */
  DIODE(Quantity.VOLTAGE),
  REGULATOR(Quantity.VOLTAGE),
  CRYSTAL(Quantity.FREQUENCY),
  LAMP(Quantity.VOLTAGE),
  RELAY(Quantity.VOLTAGE);

  private final Quantity quantity;

  PartClass(Quantity quantity) {
    this.quantity = quantity;
  }

  /** What the value of such a part tells. */
  public Quantity quantity() {
    return quantity;
  }
}
