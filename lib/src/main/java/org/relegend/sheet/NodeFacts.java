package org.relegend.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.TwinIndex;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.JoinedList;
import org.relegend.circuit.JoinedPin;
import org.relegend.circuit.Node;
import org.relegend.hazard.HazardZones;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.NodeHazard;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Potential;
import org.relegend.map.Subject;

/** What the sheets say of one node, in words. */
record NodeFacts(Circuit circuit, Hazards hazards, TwinIndex known, Net net, JoinedList joined) {
  static NodeFacts of(Circuit circuit, Hazards hazards, TwinIndex known, NetId id) {
    Net net = circuit.map().net(id).orElseThrow();
    return new NodeFacts(circuit, hazards, known, net, circuit.joined(id));
  }

  private BoardMap map() {
    return circuit.map();
  }

  /** Name of the same net in the other channel; empty where none is known. */
  String twins() {
    return twin().map(Net::name).orElse("");
  }

  /** The same net in the other channel, as declared or as it follows from what is. */
  Optional<Net> twin() {
    return known.net(net.id()).flatMap(map()::net);
  }

  private String names(List<Subject> subjects) {
    return subjects.stream().map(map()::nameOf).collect(Collectors.joining(", "));
  }

  String name(JoinedPin pin) {
    return pin.designator() + "." + pin.pin().pin();
  }

  String evidence(JoinedPin pin) {
    return pin.evidence().map(Evidence::word).orElse("none told");
  }

  /** The pin's declared twin, else the same pin of the part's twin, else what is declared. */
  String twins(JoinedPin pin) {
    List<Subject> pins =
        pin.twins().stream().filter(twin -> twin instanceof Subject.OfPin).toList();
    if (!pins.isEmpty()) {
      return names(pins);
    }
    return known
        .part(pin.pin().part())
        .map(part -> map().nameOf(part) + "." + pin.pin().pin())
        .orElseGet(() -> names(pin.twins()));
  }

  /** Channel, voltage and note in one line; empty where nothing is known. */
  String summary() {
    List<String> lines = new ArrayList<>();
    if (!net.channel().isEmpty()) {
      lines.add("channel " + net.channel());
    }
    if (!twins().isEmpty()) {
      lines.add("twin " + twins());
    }
    if (net.potential().nature() != Potential.Nature.UNKNOWN) {
      lines.add(potential());
    }
    if (!net.note().isEmpty()) {
      lines.add(net.note());
    }
    return String.join(" · ", lines);
  }

  private String potential() {
    Potential potential = net.potential();
    String volts = potential.volts() == 0 ? "" : NetVoltage.text(potential.volts());
    return switch (potential.nature()) {
      case MAINS -> ("mains " + volts).strip();
      case EARTH -> "protective earth";
      case REFERENCE -> "the reference that voltages are measured against";
      case DC -> (volts + " DC").strip();
      case AC -> (volts + " AC").strip();
      case UNKNOWN -> "";
    };
  }

  /** Where the drawing differs at this node, one sentence each. */
  List<String> differences() {
    List<String> lines = new ArrayList<>();
    for (JoinedPin pin : joined.pins()) {
      pin.drawn()
          .ifPresent(
              drawn ->
                  lines.add(
                      "%s is here on the board; the drawing has it on %s."
                          .formatted(
                              name(pin),
                              drawn.drawn().isEmpty()
                                  ? "nothing"
                                  : map().nameOf(Subject.of(new NetId(drawn.drawn()))))));
    }
    for (JoinedPin pin : joined.alsoDrawnHere()) {
      lines.add(
          "The drawing has %s here; on the board it is on %s."
              .formatted(
                  name(pin),
                  pin.nets().isEmpty()
                      ? "no net"
                      : names(pin.nets().stream().map(Subject::of).toList())));
    }
    return lines;
  }

  /** The pictures that show the node, each with the pins' numbers at their places. */
  List<CutOuts.View> views() {
    Map<PictureId, List<PrintedMark>> marks = new LinkedHashMap<>();
    map().pictures().forEach(picture -> marks.put(picture.id(), new ArrayList<>()));
    for (int i = 0; i < joined.pins().size(); i++) {
      String number = String.valueOf(i + 1);
      places(joined.pins().get(i))
          .forEach(
              (picture, places) ->
                  places.forEach(
                      place ->
                          Optional.ofNullable(marks.get(picture))
                              .ifPresent(list -> list.add(PrintedMark.of(number, place)))));
    }
    List<CutOuts.View> views = new ArrayList<>();
    marks.forEach(
        (id, list) -> {
          Optional<Picture> picture = map().picture(id);
          if (!list.isEmpty() && picture.isPresent()) {
            views.add(new CutOuts.View(picture.get(), list));
          }
        });
    return views;
  }

  /** On each picture the pads or, where none is placed there, what is placed of the part. */
  private static Map<PictureId, List<Placement>> places(JoinedPin pin) {
    Map<PictureId, List<Placement>> places = new LinkedHashMap<>();
    for (Placement placement : pin.placements()) { // pads, then sections, then the part
      List<Placement> known = places.computeIfAbsent(placement.picture(), id -> new ArrayList<>());
      if (known.isEmpty() || known.get(0).subject().equals(placement.subject())) {
        known.add(placement);
      }
    }
    return places;
  }

  /** Why nobody knows what the node carries, where it is to be taken as high. */
  Optional<String> unknown() {
    NodeHazard hazard = hazards.at(net.id());
    return hazard.grade() == NodeHazard.Grade.UNKNOWN
        ? Optional.of(hazard.reason())
        : Optional.empty();
  }

  /** The dangers of the node itself, and of the zones that any place of its parts lies in. */
  Set<HazardZone.Kind> dangers() {
    Set<HazardZone.Kind> kinds = new LinkedHashSet<>();
    Node node = Node.of(net.id());
    hazards.reached().stream()
        .filter(reached -> reached.node().equals(node))
        .forEach(reached -> kinds.add(reached.kind()));
    hazards.charges().stream()
        .filter(charge -> charge.ends().contains(node) && charge.isNoteworthy(hazards.limits()))
        .forEach(charge -> kinds.add(HazardZone.Kind.STORED_CHARGE));
    for (JoinedPin pin : joined.pins()) {
      pin.placements().forEach(place -> zonesOver(place, kinds));
      map()
          .part(pin.pin().part())
          .ifPresent(part -> placesOf(part).forEach(place -> zonesOver(place, kinds)));
    }
    return kinds;
  }

  /** Hands reach for the whole part, wherever its other pins are. */
  private Stream<Placement> placesOf(Part part) {
    Stream<Subject> inside =
        Stream.concat(
            part.pins().stream().map(pin -> Subject.of(part.ref(pin))),
            part.sections().stream().map(own -> new Subject.OfSection(part.id(), own.name())));
    return Stream.concat(Stream.of(Subject.of(part.id())), inside)
        .flatMap(subject -> circuit.index().placementsOf(subject).stream());
  }

  private void zonesOver(Placement place, Set<HazardZone.Kind> kinds) {
    HazardZones.over(map(), place).forEach(zone -> kinds.add(zone.kind()));
  }
}
