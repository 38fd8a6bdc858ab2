package org.relegend.hazard;

import org.relegend.circuit.Node;

/**
 * Two nodes of opposite sign of which neither is above the limits against the reference, while the
 * voltage between them is.
 *
 * @param volts direct, above zero
 */
public record Across(Node positive, Node negative, double volts) {}
