package org.relegend.hazard;

import org.relegend.map.PartId;

/**
 * A battery, which no switch and no bleeder makes dead.
 *
 * @param chemistry "lead-acid", "lithium", or empty where nobody told
 * @param caution what to mind, in words that go on after its name
 */
public record Battery(PartId part, String chemistry, String caution) {}
