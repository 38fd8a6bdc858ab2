package org.relegend.circuit;

import java.util.List;
import java.util.Optional;
import org.relegend.map.BoardId;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/**
 * One pin at a node, with all that the map knows of it.
 *
 * @param part empty where a net names a part that the map hasn't got
 * @param terminals what the pin is in each section it works in, in the words of its kind; one
 *     without a section for parts of one element and for supply pins
 * @param role in the map's words, else in those of the kind; empty while unknown
 * @param nets the nets it is on, as built: one; none for a loose pin; several by mistake
 * @param placements its pads, then the bodies of its sections, then those of the part
 * @param twins declared twins of the pin, then of its sections, then of the part
 * @param evidence the best that stands for its being on its net; empty while nobody said
 * @param weakest the weakest link of the way to it, through what was passed; empty where a link has
 *     no evidence
 * @param through what was passed on the way to it, from the node asked for; empty on that node
 * @param drawn what the drawing has for it instead, where it differs from the board
 */
public record JoinedPin(
    PinRef pin,
    Optional<Part> part,
    List<Terminal> terminals,
    String role,
    List<NetId> nets,
    List<Placement> placements,
    List<Subject> twins,
    Optional<Evidence> evidence,
    Optional<Evidence> weakest,
    List<Pass> through,
    Optional<DrawingDiscrepancy> drawn) {
  public JoinedPin {
    terminals = List.copyOf(terminals);
    nets = List.copyOf(nets);
    placements = List.copyOf(placements);
    twins = List.copyOf(twins);
    through = through instanceof PassList ? through : List.copyOf(through);
  }

  /** The part's designator, or its id where the map hasn't got it. */
  public String designator() {
    return part.map(found -> found.designator().text()).orElse(pin.part().text());
  }

  /** The part's value as fitted; empty while unknown. */
  public String value() {
    return part.map(Part::value).orElse("");
  }

  public Optional<BoardId> board() {
    return part.map(Part::board);
  }

  /** Names of the sections it works in: none, one, or several where they are tied inside. */
  public List<String> sections() {
    return terminals.stream().map(Terminal::section).filter(name -> !name.isEmpty()).toList();
  }

  JoinedPin by(List<Pass> way, Optional<Evidence> weakestLink) {
    return new JoinedPin(
        pin, part, terminals, role, nets, placements, twins, evidence, weakestLink, way, drawn);
  }
}
