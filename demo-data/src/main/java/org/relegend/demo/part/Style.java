package org.relegend.demo.part;

/** The families of bodies. */
public enum Style {
  RESISTOR,
  STOOD_OFF_RESISTOR,
  BOX_CAPACITOR,
  BEAD,
  DISC,
  POLYSTYRENE,
  CAN,
  UPRIGHT_AXIAL,
  DIP,
  SOCKETED_DIP,
  TO92,
  METAL_CAN,
  GLASS_DIODE,
  ROUND_BRIDGE,
  PRESET,
  JACK,
  HEADER,
  TERMINAL_BLOCK,
  FUSE,
  SWITCH,
  TRANSFORMER
}
