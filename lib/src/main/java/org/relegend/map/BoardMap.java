package org.relegend.map;

import java.util.List;
import java.util.Optional;

/**
 * The board map: all that is true of every unit of one model and revision. A value: every change is
 * an {@link Edit} and gives a new map that shares what didn't change. Faults in what people entered
 * (a placement of a part that isn't there) are no errors here but findings of the checks.
 *
 * @param id what this map is known by for good, across copies and merges
 */
public record BoardMap(
    String id,
    MapInfo info,
    Table<BoardId, Board> boards,
    Table<PictureId, Picture> pictures,
    Table<String, Channel> channels,
    Table<PartId, Part> parts,
    Table<NetId, Net> nets,
    Table<Placement.Key, Placement> placements,
    Table<TwinPair.Key, TwinPair> twins,
    Table<Discrepancy.Key, Discrepancy> discrepancies,
    Table<ZoneId, HazardZone> zones,
    Table<Mating, Mating> matings,
    Table<Deviation.Key, Deviation> deviations,
    Table<PicturePairs.Key, PicturePairs> lineUps,
    Table<Clash.Key, Clash> clashes) {
  public BoardMap {
    Names.checkedToken("map id", id);
  }

  /** A map with nothing in it yet. */
  public static BoardMap empty(String id, MapInfo info) {
    return new BoardMap(
        id,
        info,
        Table.empty(),
        Table.empty(),
        Table.empty(),
        Table.empty(),
        Table.empty(),
        Table.empty(),
        Table.empty(),
        Table.empty(),
        Table.empty(),
        Table.empty(),
        Table.empty(),
        Table.empty(),
        Table.empty());
  }

  public Optional<Part> part(PartId part) {
    return parts.find(part);
  }

  public Optional<Net> net(NetId net) {
    return nets.find(net);
  }

  public Optional<Picture> picture(PictureId picture) {
    return pictures.find(picture);
  }

  /** The part's designator, or its id where the part is gone: for messages and labels. */
  public String nameOf(PartId part) {
    return part(part).map(found -> found.designator().text()).orElse(part.text());
  }

  /** The subject in the technician's words: designators and net names in the place of ids. */
  public String nameOf(Subject subject) {
    if (subject instanceof Subject.OfPart s) {
      return nameOf(s.part());
    }
    if (subject instanceof Subject.OfSection s) {
      return nameOf(s.part()) + "/" + s.section();
    }
    if (subject instanceof Subject.OfPin s) {
      return nameOf(s.pin().part()) + "." + s.pin().pin();
    }
    NetId net = ((Subject.OfNet) subject).net();
    return net(net).map(Net::name).orElse(net.text());
  }

  /** A zone as people know it: what threatens, its number among those, and the picture's title. */
  public String nameOf(HazardZone zone) {
    List<ZoneId> alike =
        zones.stream()
            .filter(other -> other.picture().equals(zone.picture()))
            .filter(other -> other.kind() == zone.kind() || other.id().equals(zone.id()))
            .map(HazardZone::id)
            .toList();
    int number = zones.has(zone.id()) ? alike.indexOf(zone.id()) + 1 : alike.size() + 1;
    String caption = picture(zone.picture()).map(Picture::caption).orElse(zone.picture().text());
    return "%s zone %d on %s".formatted(zone.kind().word().replace('-', ' '), number, caption);
  }

  public BoardMap withInfo(MapInfo changed) {
    return new BoardMap(
        id,
        changed,
        boards,
        pictures,
        channels,
        parts,
        nets,
        placements,
        twins,
        discrepancies,
        zones,
        matings,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withBoards(Table<BoardId, Board> changed) {
    return new BoardMap(
        id,
        info,
        changed,
        pictures,
        channels,
        parts,
        nets,
        placements,
        twins,
        discrepancies,
        zones,
        matings,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withPictures(Table<PictureId, Picture> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        changed,
        channels,
        parts,
        nets,
        placements,
        twins,
        discrepancies,
        zones,
        matings,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withChannels(Table<String, Channel> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        changed,
        parts,
        nets,
        placements,
        twins,
        discrepancies,
        zones,
        matings,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withParts(Table<PartId, Part> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        channels,
        changed,
        nets,
        placements,
        twins,
        discrepancies,
        zones,
        matings,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withNets(Table<NetId, Net> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        channels,
        parts,
        changed,
        placements,
        twins,
        discrepancies,
        zones,
        matings,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withPlacements(Table<Placement.Key, Placement> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        channels,
        parts,
        nets,
        changed,
        twins,
        discrepancies,
        zones,
        matings,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withTwins(Table<TwinPair.Key, TwinPair> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        channels,
        parts,
        nets,
        placements,
        changed,
        discrepancies,
        zones,
        matings,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withDiscrepancies(Table<Discrepancy.Key, Discrepancy> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        channels,
        parts,
        nets,
        placements,
        twins,
        changed,
        zones,
        matings,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withZones(Table<ZoneId, HazardZone> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        channels,
        parts,
        nets,
        placements,
        twins,
        discrepancies,
        changed,
        matings,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withMatings(Table<Mating, Mating> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        channels,
        parts,
        nets,
        placements,
        twins,
        discrepancies,
        zones,
        changed,
        deviations,
        lineUps,
        clashes);
  }

  public BoardMap withDeviations(Table<Deviation.Key, Deviation> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        channels,
        parts,
        nets,
        placements,
        twins,
        discrepancies,
        zones,
        matings,
        changed,
        lineUps,
        clashes);
  }

  public BoardMap withLineUps(Table<PicturePairs.Key, PicturePairs> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        channels,
        parts,
        nets,
        placements,
        twins,
        discrepancies,
        zones,
        matings,
        deviations,
        changed,
        clashes);
  }

  public BoardMap withClashes(Table<Clash.Key, Clash> changed) {
    return new BoardMap(
        id,
        info,
        boards,
        pictures,
        channels,
        parts,
        nets,
        placements,
        twins,
        discrepancies,
        zones,
        matings,
        deviations,
        lineUps,
        changed);
  }
}
