package org.relegend.solve;

import org.relegend.map.PartId;

/**
 * A part of the map that the solved circuit does without. What lies at its nodes is not known.
 *
 * @param why a clause for people: "its value isn't known"
 */
public record Gap(PartId part, String why) {}
