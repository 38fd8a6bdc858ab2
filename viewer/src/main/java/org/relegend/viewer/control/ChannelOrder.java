package org.relegend.viewer.control;

import java.util.List;
import java.util.TreeSet;
import org.relegend.map.BoardMap;
import org.relegend.map.Channel;
import org.relegend.map.NameRules;
import org.relegend.map.Part;

/** The channels of a map in one order, so that each keeps its shape and colour. */
public final class ChannelOrder {
  private ChannelOrder() {}

  /** Those declared, and those that parts are said to be in. */
  public static List<String> of(BoardMap map) {
    TreeSet<String> names = new TreeSet<>(NameRules.NATURAL);
    map.channels().stream().map(Channel::name).forEach(names::add);
    map.parts().stream().map(Part::channel).filter(name -> !name.isEmpty()).forEach(names::add);
    return List.copyOf(names);
  }
}
