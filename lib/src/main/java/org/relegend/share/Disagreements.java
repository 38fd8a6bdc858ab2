package org.relegend.share;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.map.BoardMap;
import org.relegend.map.Clash;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Photo;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.share.Disagreement.Kind;
import org.relegend.share.Disagreement.Position;
import org.relegend.store.Json;

/** All that a map says in two ways, with who stands for each. */
public final class Disagreements {
  /** How surely two places must be apart, by the line-up's error, to be told as two. */
  private static final double SURE = 0.999;

  /** Share of a photo's diagonal that people click apart by without meaning two places. */
  private static final double CLICKS = 1 / 300.0;

  private final BoardMap map;
  private final List<Disagreement> disagreements = new ArrayList<>();

  private Disagreements(BoardMap map) {
    this.map = map;
  }

  /** Those to be decided first, then the rest by kind, in the order of the map. */
  public static List<Disagreement> of(BoardMap map) {
    Disagreements all = new Disagreements(map);
    all.clashes();
    all.nodes();
    all.placedTwice();
    all.placedElsewhere();
    all.twins();
    all.drawing();
    return List.copyOf(all.disagreements);
  }

  private void add(Kind kind, String about, Subject subject, List<Position> positions) {
    disagreements.add(
        new Disagreement(kind, about, Optional.of(subject), Optional.empty(), positions));
  }

  private void clashes() {
    for (Clash clash : map.clashes()) {
      disagreements.add(
          new Disagreement(
              Kind.CLASH,
              ClashText.about(map, clash),
              ClashText.subject(clash),
              Optional.empty(),
              List.of(
                  version(clash, ClashDecisions.Side.MINE),
                  version(clash, ClashDecisions.Side.THEIRS))));
    }
  }

  private Position version(Clash clash, ClashDecisions.Side side) {
    List<org.relegend.map.Attestation> by = new ArrayList<>();
    for (Clash.Cell cell : clash.cells()) {
      String version = side.of(cell);
      if (!version.isEmpty()) {
        try {
          Attribution.in(Json.parse(version)).stream()
              .filter(s -> !by.contains(s))
              .forEach(by::add);
        } catch (IllegalArgumentException unreadable) {
          // the version's text is shown as it is
        }
      }
    }
    String whose = side == ClashDecisions.Side.MINE ? "mine: " : "theirs: ";
    return new Position(whose + ClashText.version(map, clash, side), by);
  }

  private void nodes() {
    Map<PinRef, List<Position>> byPin = new TreeMap<>();
    for (Net net : map.nets()) {
      for (Net.Member member : net.members()) {
        byPin
            .computeIfAbsent(member.pin(), pin -> new ArrayList<>())
            .add(new Position("at " + map.nameOf(Subject.of(net.id())), member.evidence()));
      }
    }
    byPin.forEach(
        (pin, positions) -> {
          if (positions.size() > 1) {
            Subject subject = Subject.of(pin);
            add(Kind.NODE, "node of " + map.nameOf(subject), subject, positions);
          }
        });
  }

  /** Pages show net labels more than once; a photo shows a thing once. */
  private void placedTwice() {
    Map<String, List<Placement>> onPhotos = new LinkedHashMap<>();
    for (Placement placement : map.placements()) {
      if (map.picture(placement.picture()).orElse(null) instanceof Photo) {
        onPhotos
            .computeIfAbsent(
                placement.subject() + " " + placement.picture(), key -> new ArrayList<>())
            .add(placement);
      }
    }
    for (List<Placement> places : onPhotos.values()) {
      if (places.size() > 1) {
        placed(places.get(0), places.stream().map(this::position).toList());
      }
    }
  }

  private void placed(Placement one, List<Position> positions) {
    disagreements.add(
        new Disagreement(
            Kind.PLACE,
            "place of %s on %s".formatted(map.nameOf(one.subject()), one.picture()),
            Optional.of(one.subject()),
            Optional.of(one.picture()),
            positions));
  }

  private Position position(Placement placement) {
    return new Position(
        String.format(Locale.ROOT, "at %.0f, %.0f", placement.at().x(), placement.at().y()),
        placement.evidence());
  }

  /**
   * Pads placed on two photos of one side that are lined up, where the one isn't where the line-up
   * carries the other. Bodies are left out: tall parts lean.
   */
  private void placedElsewhere() {
    PlacementCarrier carrier = PlacementCarrier.of(map);
    Map<Subject, List<Placement>> pads = new HashMap<>();
    for (Placement placement : map.placements()) {
      if (placement.subject() instanceof Subject.OfPin && placement.ordinal() == 1) {
        pads.computeIfAbsent(placement.subject(), key -> new ArrayList<>()).add(placement);
      }
    }
    for (Placement placement : map.placements()) {
      for (Placement other : pads.getOrDefault(placement.subject(), List.of())) {
        if (placement.ordinal() == 1 && placement.picture().compareTo(other.picture()) < 0) {
          elsewhere(carrier, placement, other);
        }
      }
    }
  }

  private void elsewhere(PlacementCarrier carrier, Placement placement, Placement other) {
    if (map.picture(placement.picture()).orElse(null) instanceof Photo
        && map.picture(other.picture()).orElse(null) instanceof Photo there) {
      carrier
          .carry(placement.picture(), placement.at(), other.picture())
          .filter(
              carried ->
                  carried.at().distance(other.at())
                      > carried.error().radius(SURE)
                          + CLICKS * Math.hypot(there.width(), there.height()))
          .ifPresent(
              carried ->
                  placed(
                      other,
                      List.of(
                          position(other),
                          new Position(
                              String.format(
                                  Locale.ROOT,
                                  "at %.0f, %.0f, by its place on %s",
                                  carried.at().x(),
                                  carried.at().y(),
                                  placement.picture()),
                              placement.evidence()))));
    }
  }

  private void twins() {
    Map<Subject, List<Position>> byOne = new TreeMap<>();
    for (TwinPair twin : map.twins()) {
      byOne
          .computeIfAbsent(twin.a(), key -> new ArrayList<>())
          .add(new Position("twin " + map.nameOf(twin.b()), twin.evidence()));
      byOne
          .computeIfAbsent(twin.b(), key -> new ArrayList<>())
          .add(new Position("twin " + map.nameOf(twin.a()), twin.evidence()));
    }
    byOne.forEach(
        (subject, positions) -> {
          if (positions.size() > 1 && map.channels().size() < 3) {
            add(Kind.TWIN, "twin of " + map.nameOf(subject), subject, positions);
          }
        });
  }

  private void drawing() {
    for (DrawingDiscrepancy discrepancy : map.discrepancies()) {
      String drawn =
          discrepancy.drawn().isEmpty()
              ? "nothing"
              : discrepancy.aspect() == DrawingDiscrepancy.Aspect.NET
                  ? node(discrepancy.drawn())
                  : discrepancy.drawn();
      add(
          Kind.DRAWING,
          "%s of %s"
              .formatted(
                  discrepancy.aspect() == DrawingDiscrepancy.Aspect.NET
                      ? "node"
                      : discrepancy.aspect().word(),
                  map.nameOf(discrepancy.subject())),
          discrepancy.subject(),
          List.of(
              new Position("drawing: " + drawn, List.of()),
              new Position("board: " + built(discrepancy), discrepancy.evidence())));
    }
  }

  private String node(String drawn) {
    try {
      return map.net(new NetId(drawn)).map(net -> map.nameOf(Subject.of(net.id()))).orElse(drawn);
    } catch (IllegalArgumentException noName) {
      return drawn;
    }
  }

  private String built(DrawingDiscrepancy discrepancy) {
    if (discrepancy.subject() instanceof Subject.OfPin of) {
      return map.nets().stream()
          .filter(net -> net.has(of.pin()))
          .findFirst()
          .map(net -> map.nameOf(Subject.of(net.id())))
          .orElse("not known yet");
    }
    return discrepancy.subject() instanceof Subject.OfPart of
        ? map.part(of.part())
            .map(
                part ->
                    discrepancy.aspect() == DrawingDiscrepancy.Aspect.VALUE
                        ? part.value()
                        : part.kind())
            .filter(text -> !text.isEmpty())
            .orElse("not known yet")
        : "not known yet";
  }
}
