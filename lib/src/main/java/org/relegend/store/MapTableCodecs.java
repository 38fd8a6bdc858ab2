package org.relegend.store;

import java.util.List;
import org.relegend.map.MapTables;

/** How entries and keys of each of the map's tables are written, in the order of the file. */
final class MapTableCodecs {
  private MapTableCodecs() {}

  /** In the order of the file. */
  static final List<TableCodec<?, ?>> ALL =
      List.of(
          TableCodec.of(MapTables.BOARDS, "board", MapShapes.BOARD, MapShapes.BOARD_ID),
          TableCodec.of(MapTables.PICTURES, "picture", MapShapes.PICTURE, MapShapes.PICTURE_ID),
          TableCodec.of(MapTables.CHANNELS, "channel", MapShapes.CHANNEL, Codecs.TEXT),
          TableCodec.of(MapTables.PARTS, "part", MapShapes.PART, MapShapes.PART_ID),
          TableCodec.of(MapTables.NETS, "net", MapShapes.NET, MapShapes.NET_ID),
          new TableCodec<>(
              MapTables.PLACEMENTS,
              new TableCodec.EditWords("place", "unplace", "placement"),
              MapShapes.PLACEMENT,
              KeyShapes.PLACEMENT),
          new TableCodec<>(
              MapTables.TWINS,
              new TableCodec.EditWords("declare-twin", "remove-twin", "pair"),
              MapShapes.TWIN,
              KeyShapes.TWIN),
          TableCodec.of(
              MapTables.DISCREPANCIES, "discrepancy", MapShapes.DISCREPANCY, KeyShapes.DISCREPANCY),
          TableCodec.of(MapTables.ZONES, "zone", MapShapes.ZONE, MapShapes.ZONE_ID),
          TableCodec.of(MapTables.MATINGS, "mating", MapShapes.MATING, MapShapes.MATING),
          TableCodec.of(
              MapTables.DEVIATIONS, "deviation", DeviationShapes.DEVIATION, DeviationShapes.KEY),
          TableCodec.of(MapTables.LINE_UPS, "pairs", PairShapes.PAIRS, PairShapes.KEY),
          TableCodec.of(MapTables.CLASHES, "clash", ClashShapes.CLASH, ClashShapes.KEY));

  /** In the order in which entries can be put back. */
  static final List<TableCodec<?, ?>> IN_ORDER =
      MapTables.ALL.stream().<TableCodec<?, ?>>map(TableCodec::of).toList();
}
