package org.relegend.demo.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.relegend.demo.design.Artwork;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Link;
import org.relegend.demo.design.PlacedPart;
import org.relegend.demo.design.Spot;
import org.relegend.demo.ray.Paint;
import org.relegend.demo.ray.Solid;
import org.relegend.demo.ray.Vec;

/**
 * One unit of a board: which bodies it really carries, and how carelessly they were put in.
 *
 * @param replaced bodies that differ from the factory's, by designator
 * @param heatMarks places where the laminate was scorched
 * @param repairs wires soldered on behind the board where copper was lost, seen from the component
 *     side
 */
public record Specimen(
    Design design,
    Artwork artwork,
    long seed,
    Map<String, Fitting> replaced,
    List<Spot> heatMarks,
    List<Link> repairs) {
  public Specimen {
    replaced = Map.copyOf(replaced);
    heatMarks = List.copyOf(heatMarks);
    repairs = List.copyOf(repairs);
  }

  /** The body fitted for a part: the replacement if there is one, else the factory's. */
  public Fitting fitted(PlacedPart part) {
    Fitting other = replaced.get(part.designator());
    return other == null ? Originals.of(part) : other;
  }

  /** The same unit with some bodies exchanged. */
  public Specimen with(Map<String, Fitting> others) {
    Map<String, Fitting> all = new TreeMap<>(replaced);
    all.putAll(others);
    return new Specimen(design, artwork, seed, all, heatMarks, repairs);
  }

  /** Everything that stands on the component side. */
  public List<Solid> solids() {
    List<Solid> solids = new ArrayList<>();
    for (PlacedPart part : design.parts()) {
      solids.addAll(kit(part).solids());
    }
    for (Link link : artwork.links()) {
      solids.addAll(wire(link));
    }
    return solids;
  }

  /** The bodies on the component side, in the order of the tables. */
  public Map<String, Body> bodies() {
    Map<String, Body> bodies = new LinkedHashMap<>();
    for (PlacedPart part : design.parts()) {
      bodies.put(part.designator(), kit(part).whole());
    }
    return bodies;
  }

  private Kit kit(PlacedPart part) {
    Fitting fitting = fitted(part);
    Kit kit = new Kit(part, design.pinsOf(part.designator()), fitting, seed);
    Families.of(fitting.style()).build(kit);
    return kit;
  }

  private List<Solid> wire(Link link) {
    Kit kit = new Kit(ANONYMOUS, Map.of(), Originals.of(ANONYMOUS), seed);
    Vec from = new Vec(link.from().x(), link.from().y(), 0);
    Vec to = new Vec(link.to().x(), link.to().y(), 0);
    Vec along = to.minus(from).unit();
    boolean earth = link.net().equals("EARTH");
    double lift = earth ? 1.1 : 0.55;
    double radius = earth ? 0.75 : 0.33;
    Paint skin = earth ? Paint.of(0x3C7A3A, 0.45) : Kit.TIN;
    kit.wire(
        skin,
        radius,
        from.plus(new Vec(0, 0, -0.5)),
        from.plus(along.times(0.15)).plus(new Vec(0, 0, lift * 0.6)),
        from.plus(along.times(0.7)).plus(new Vec(0, 0, lift)),
        to.minus(along.times(0.7)).plus(new Vec(0, 0, lift)),
        to.minus(along.times(0.15)).plus(new Vec(0, 0, lift * 0.6)),
        to.plus(new Vec(0, 0, -0.5)));
    return kit.solids();
  }

  private static final PlacedPart ANONYMOUS =
      new PlacedPart("link", "resistor", "0R0", "", new Spot(0, 0));
}
