package org.relegend.demo.part;

/** Which class builds which style of body. */
final class Families {
  private Families() {}

  static Family of(Style style) {
    return switch (style) {
      case RESISTOR -> new Resistor();
      case STOOD_OFF_RESISTOR -> new StoodOffResistor();
      case BOX_CAPACITOR -> new BoxCapacitor();
      case BEAD -> new Bead();
      case DISC -> new Disc();
      case POLYSTYRENE -> new Polystyrene();
      case CAN -> new Can();
      case UPRIGHT_AXIAL -> new UprightAxial();
      case DIP -> new Dip(false);
      case SOCKETED_DIP -> new Dip(true);
      case TO92 -> new To92();
      case METAL_CAN -> new MetalCan();
      case GLASS_DIODE -> new GlassDiode();
      case ROUND_BRIDGE -> new RoundBridge();
      case PRESET -> new Preset();
      case JACK -> new Jack();
      case HEADER -> new Header();
      case TERMINAL_BLOCK -> new TerminalBlock();
      case FUSE -> new Fuse();
      case SWITCH -> new PowerSwitch();
      case TRANSFORMER -> new Transformer();
    };
  }
}
