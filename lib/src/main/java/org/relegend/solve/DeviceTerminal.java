package org.relegend.solve;

/**
 * One terminal of a device.
 *
 * @param index counted from 0, in the order of the device's law
 */
public record DeviceTerminal(String device, int index) {}
