package org.relegend.twin;

import org.relegend.map.Subject;

/**
 * Two parts, sections, pins or nets that do the same work in two channels, as the circuit tells.
 *
 * @param a in the channel that the seeds name first
 * @param trust 0 to 1: how well the pins around agree, lowered by what speaks against the seeds; an
 *     order, not a probability
 */
public record ProposedTwin(Subject a, Subject b, TwinBasis basis, double trust) {
  /** Below this a pair should be looked at before it is used. */
  public static final double LOW = 0.5;
}
