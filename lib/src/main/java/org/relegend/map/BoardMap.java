package org.relegend.map;

import java.util.List;
import java.util.Optional;

/**
 * The board map: all that is true of every unit of one model and revision. A value: every change is
 * an {@link Edit} and gives a new map that shares what didn't change. Faults in what people entered
 * (a placement of a part that isn't there) are no errors here but findings of the checks.
 *
 * @param id what this map is known by for good, across copies and merges
 * @param tables all else: {@link MapTables} lists them
 */
public record BoardMap(String id, MapInfo info, Tables<BoardMap> tables)
    implements TabledDocument<BoardMap> {
  public BoardMap {
    NameRules.checkedToken("map id", id);
  }

  /** A map with nothing in it yet. */
  public static BoardMap empty(String id, MapInfo info) {
    return new BoardMap(id, info, Tables.empty(MapTables.ALL.size()));
  }

  public Table<BoardId, Board> boards() {
    return tables.get(MapTables.BOARDS);
  }

  public Table<PictureId, Picture> pictures() {
    return tables.get(MapTables.PICTURES);
  }

  public Table<String, Channel> channels() {
    return tables.get(MapTables.CHANNELS);
  }

  public Table<PartId, Part> parts() {
    return tables.get(MapTables.PARTS);
  }

  public Table<NetId, Net> nets() {
    return tables.get(MapTables.NETS);
  }

  public Table<Placement.Key, Placement> placements() {
    return tables.get(MapTables.PLACEMENTS);
  }

  public Table<TwinPair.Key, TwinPair> twins() {
    return tables.get(MapTables.TWINS);
  }

  public Table<DrawingDiscrepancy.Key, DrawingDiscrepancy> discrepancies() {
    return tables.get(MapTables.DISCREPANCIES);
  }

  public Table<ZoneId, HazardZone> zones() {
    return tables.get(MapTables.ZONES);
  }

  public Table<Mating, Mating> matings() {
    return tables.get(MapTables.MATINGS);
  }

  public Table<ChannelDeviation.Key, ChannelDeviation> deviations() {
    return tables.get(MapTables.DEVIATIONS);
  }

  public Table<PicturePairs.Key, PicturePairs> lineUps() {
    return tables.get(MapTables.LINE_UPS);
  }

  public Table<Clash.Key, Clash> clashes() {
    return tables.get(MapTables.CLASHES);
  }

  public Optional<Part> part(PartId part) {
    return parts().find(part);
  }

  public Optional<Net> net(NetId net) {
    return nets().find(net);
  }

  public Optional<Picture> picture(PictureId picture) {
    return pictures().find(picture);
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
        zones().stream()
            .filter(other -> other.picture().equals(zone.picture()))
            .filter(other -> other.kind() == zone.kind() || other.id().equals(zone.id()))
            .map(HazardZone::id)
            .toList();
    int number = zones().has(zone.id()) ? alike.indexOf(zone.id()) + 1 : alike.size() + 1;
    String caption = picture(zone.picture()).map(Picture::caption).orElse(zone.picture().text());
    return "%s zone %d on %s".formatted(zone.kind().word().replace('-', ' '), number, caption);
  }

  public BoardMap withInfo(MapInfo changed) {
    return new BoardMap(id, changed, tables);
  }

  @Override
  public BoardMap withTables(Tables<BoardMap> changed) {
    return new BoardMap(id, info, changed);
  }

  /** The map without what goes with something that is gone, in whatever table that stands. */
  BoardMap without(EntryRef gone) {
    return ReferenceRemoval.without(this, gone);
  }

  /** The map without a picture and all that lies on it or is lined up with it. */
  public BoardMap withoutPicture(PictureId picture) {
    return with(MapTables.PICTURES, pictures().without(picture)).without(EntryRef.to(picture));
  }
}
