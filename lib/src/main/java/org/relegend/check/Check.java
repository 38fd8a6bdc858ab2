package org.relegend.check;

import java.util.List;
import org.relegend.finding.Finding;

/** Looks for one sort of fault in a map. Changes nothing and keeps nothing between two maps. */
public interface Check {
  /** What its findings are known by: a few words of what is wrong, as "pin-on-two-nets". */
  String code();

  /** All there is to find, in the order of the map. */
  List<Finding> inspect(CheckContext context);
}
