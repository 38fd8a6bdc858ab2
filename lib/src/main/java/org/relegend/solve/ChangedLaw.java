package org.relegend.solve;

/**
 * A device that works by another law: a resistor of another value, an op-amp that is stuck.
 *
 * @param device its name in the netlist
 */
public record ChangedLaw(String part, FailureMode mode, String text, String device, DeviceLaw law)
    implements Fault {
  @Override
  public Netlist appliedTo(Netlist healthy) {
    Device old =
        healthy
            .device(device)
            .orElseThrow(() -> new IllegalArgumentException("there is no device " + device));
    return healthy.replaced(old.with(law));
  }
}
