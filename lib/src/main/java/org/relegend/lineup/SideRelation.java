package org.relegend.lineup;

/** What is known beforehand of the sides that two pictures show. */
public enum SideRelation {
  /** Both show the same side: a mirrored fit means something is wrong. */
  SAME,
  /** One shows the component side, the other the solder side: the fit must mirror. */
  OPPOSITE,
  /** Not known: the pairs decide. */
  UNKNOWN
}
