package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * What is shown of the thing chosen: the cards of one node, or of a part and of all its nodes.
 *
 * @param subject what was chosen; nothing, where the strip is empty
 */
public record CardStrip(Optional<Subject> subject, List<Group> groups) {
  /**
   * Cards that belong together.
   *
   * @param net the node they are joined at; none for the card of the part itself
   * @param via the pin of the chosen part that leads there
   * @param pins how many pins the node has in all
   */
  public record Group(Optional<NetId> net, Optional<PinRef> via, int pins, List<NodeCard> cards) {
    public Group {
      cards = List.copyOf(cards);
    }

    public Group with(List<NodeCard> changed) {
      return new Group(net, via, pins, changed);
    }
  }

  /** Nothing chosen. */
  public static final CardStrip EMPTY = new CardStrip(Optional.empty(), List.of());

  public CardStrip {
    groups = List.copyOf(groups);
  }

  /** All cards from left to right. */
  public List<NodeCard> cards() {
    return groups.stream().flatMap(group -> group.cards().stream()).toList();
  }
}
