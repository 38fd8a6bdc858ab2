package org.relegend.map;

import java.util.List;

/**
 * The list of the board map's tables, in the order in which entries can be put back. A new table is
 * a constant here with its number, and a line in {@link #ALL}.
 */
public final class MapTables {
  private MapTables() {}

  public static final MapTable<BoardId, Board> BOARDS = new PictureTables.Boards(0);
  public static final MapTable<String, Channel> CHANNELS = new PartTables.Channels(1);
  public static final MapTable<PictureId, Picture> PICTURES = new PictureTables.Pictures(2);
  public static final MapTable<PartId, Part> PARTS = new PartTables.Parts(3);
  public static final MapTable<NetId, Net> NETS = new NetTables.Nets(4);
  public static final MapTable<Placement.Key, Placement> PLACEMENTS =
      new PictureTables.Placements(5);

  /** Putting a pair adds its evidence to what is known of the pair. */
  public static final MapTable<TwinPair.Key, TwinPair> TWINS = new PartTables.Twins(6);

  public static final MapTable<DrawingDiscrepancy.Key, DrawingDiscrepancy> DISCREPANCIES =
      new NetTables.Discrepancies(7);
  public static final MapTable<ZoneId, HazardZone> ZONES = new PictureTables.Zones(8);
  public static final MapTable<Mating, Mating> MATINGS = new PartTables.Matings(9);
  public static final MapTable<ChannelDeviation.Key, ChannelDeviation> DEVIATIONS =
      new PartTables.Deviations(10);
  public static final MapTable<PicturePairs.Key, PicturePairs> LINE_UPS =
      new PictureTables.LineUps(11);
  public static final MapTable<Clash.Key, Clash> CLASHES = new NetTables.Clashes(12);

  public static final List<MapTable<?, ?>> ALL =
      List.of(
          BOARDS,
          CHANNELS,
          PICTURES,
          PARTS,
          NETS,
          PLACEMENTS,
          TWINS,
          DISCREPANCIES,
          ZONES,
          MATINGS,
          DEVIATIONS,
          LINE_UPS,
          CLASHES);
}
