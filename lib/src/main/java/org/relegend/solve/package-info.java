/**
 * The solved circuit: direct voltages and currents of what the map knows, small signals about them,
 * and each usual failure solved beforehand. A {@link org.relegend.solve.Netlist} is apart from
 * maps, so that a circuit without a map is solved alike. Must not know readings, jobs or files.
 */
@NullMarked
package org.relegend.solve;

import org.jspecify.annotations.NullMarked;
