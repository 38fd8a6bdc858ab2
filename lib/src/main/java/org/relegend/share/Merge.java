package org.relegend.share;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Clash;
import org.relegend.map.EntryRef;
import org.relegend.map.Keyed;
import org.relegend.map.MapInfo;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Potential;
import org.relegend.map.Table;
import org.relegend.store.Json;
import org.relegend.store.TableCodec;

/**
 * Brings together what two people made of one map. What one of them changed is taken; what both
 * changed alike is taken; else it is a clash, kept in the map with both versions, and the map goes
 * on with {@code mine} until somebody decides. Seen from the other side the same comes out, with
 * the two exchanged.
 */
public final class Merge {
  static final String INFO = "info";

  private final MapVersions versions;
  private final RemovalConflict contest;
  private final NetMerge.Result nets;
  private final boolean withBase;
  private final List<Clash> clashes = new ArrayList<>();
  private final JointClashes bundles = new JointClashes();

  private Merge(MapVersions given, boolean withBase) {
    this.withBase = withBase;
    MapVersions unified = PictureMatch.unified(given);
    contest = RemovalConflict.of(unified);
    nets = NetMerge.of(unified, contest.pins(), contest.nets());
    versions =
        new MapVersions(
            PictureMatch.renamed(nets.nets().base(), nets.base()),
            PictureMatch.renamed(nets.nets().mine(), nets.mine()),
            PictureMatch.renamed(nets.nets().theirs(), nets.theirs()));
  }

  /**
   * Merges two versions of one map.
   *
   * @param base the map that both began with
   * @throws IllegalArgumentException where the three are not versions of one map
   */
  public static MergeResult of(BoardMap base, BoardMap mine, BoardMap theirs) {
    return ofSized(PageSizes.asIn(mine, base), mine, PageSizes.asIn(mine, theirs));
  }

  private static MergeResult ofSized(BoardMap base, BoardMap mine, BoardMap theirs) {
    if (!base.id().equals(mine.id()) || !base.id().equals(theirs.id())) {
      throw new IllegalArgumentException(
          "these are not versions of one map: their ids are %s, %s and %s"
              .formatted(base.id(), mine.id(), theirs.id()));
    }
    if (mine.equals(theirs) || theirs.equals(base) && !mustAsk(base, mine)) {
      return new MergeResult(mine, List.of());
    }
    if (mine.equals(base) && !mustAsk(base, theirs)) {
      return new MergeResult(theirs, List.of());
    }
    return new Merge(new MapVersions(base, mine, theirs), true).merged();
  }

  /**
   * What is asked about even where only one side changed anything: lost or lessened zones, another
   * issue.
   */
  private static boolean mustAsk(BoardMap base, BoardMap changed) {
    return LostZones.any(base, changed)
        || !base.info().issue().equals(changed.info().issue())
        || base.boards().stream()
            .anyMatch(
                board ->
                    changed.boards().find(board.id()).stream()
                        .anyMatch(now -> !now.issue().equals(board.issue())));
  }

  /**
   * Merges two maps of one thing that have no common beginning, or none that is known. Nothing
   * counts as removed then. The result has the id of mine.
   */
  public static MergeResult of(BoardMap mine, BoardMap theirs) {
    BoardMap sized = PageSizes.asIn(mine, theirs);
    if (mine.equals(sized)) {
      return new MergeResult(mine, List.of());
    }
    BoardMap nothing = BoardMap.empty(mine.id(), mine.info());
    return new Merge(new MapVersions(nothing, mine, sized), false).merged();
  }

  private MergeResult merged() {
    BoardMap result = BoardMap.empty(versions.mine().id(), info());
    for (TableCodec<?, ?> codec : TableCodec.all()) {
      if (!codec.name().equals(MapTables.CLASHES.word())) {
        result = merged(codec, result);
      }
    }
    result =
        withKept(
            TableCodec.of(MapTables.BOARDS), withKept(TableCodec.of(MapTables.CHANNELS), result));
    result = withMembers(withAbsorbed(result));
    addPinClashes();
    for (List<Clash.Cell> cells : bundles.all()) {
      clashes.add(clash(cells));
    }
    return withClashes(result);
  }

  private MapInfo info() {
    Json.Obj nothing = Json.object();
    FieldMerge.Outcome outcome =
        FieldMerge.of(
            MapTables.CHANNELS, // the title page has neither lists nor evidence, as they have
            withBase ? TableCodec.info(versions.base().info()) : nothing,
            TableCodec.info(versions.mine().info()),
            TableCodec.info(versions.theirs().info()));
    differ(INFO, "", outcome.differing());
    return TableCodec.info(outcome.entry());
  }

  private void differ(String table, String key, List<List<FieldMerge.Conflict>> differing) {
    for (List<FieldMerge.Conflict> fields : differing) {
      List<Clash.Cell> cells = new ArrayList<>();
      for (FieldMerge.Conflict field : fields) {
        cells.add(
            new Clash.Cell(
                table, key, field.field(), compact(field.mine()), compact(field.theirs())));
      }
      clashes.add(clash(cells));
    }
  }

  private static String compact(@Nullable Json json) {
    return json == null ? "" : json.compact();
  }

  /** All three tables in step, as they are in one order: no key is looked up. */
  private <K extends Comparable<? super K>, V extends Keyed<K>> BoardMap merged(
      TableCodec<K, V> codec, BoardMap result) {
    TableCursor<K, V> base = new TableCursor<>(codec.table().of(versions.base()));
    TableCursor<K, V> mine = new TableCursor<>(codec.table().of(versions.mine()));
    TableCursor<K, V> theirs = new TableCursor<>(codec.table().of(versions.theirs()));
    List<V> kept = new ArrayList<>(codec.table().of(versions.mine()).size());
    for (K key = TableCursor.first(mine, theirs);
        key != null;
        key = TableCursor.first(mine, theirs)) {
      V goesOn = merged(codec, key, base.upTo(key), mine.upTo(key), theirs.upTo(key));
      if (goesOn != null) {
        kept.add(goesOn);
      }
    }
    return result.with(codec.table(), Table.of(kept));
  }

  private <K extends Comparable<? super K>, V extends Keyed<K>> @Nullable V merged(
      TableCodec<K, V> codec, K key, @Nullable V base, @Nullable V mine, @Nullable V theirs) {
    if (mine != null && mine.equals(theirs)) {
      return mine;
    }
    EntryRef self = new EntryRef(codec.name(), codec.keyText(key));
    List<EntryRef> together = together(codec, self, mine, theirs);
    if (!together.isEmpty()) {
      bundles.add(self, whole(codec, self, mine, theirs), together);
      return mine;
    }
    if (mine != null && theirs != null) {
      return fields(codec, self, base, mine, theirs);
    }
    V there = mine != null ? mine : theirs;
    if (base == null || there == null) {
      return there;
    }
    if (self.table().equals("nets") && nets.stays().contains(new NetId(self.key()))) {
      return there;
    }
    if (base.equals(there) && !isZoneOfAPictureThatStays(there)) {
      return null;
    }
    bundles.add(self, whole(codec, self, mine, theirs), List.of());
    return codec.name().equals(MapTables.ZONES.word()) ? there : mine;
  }

  /** Hazard zones don't go without a word, even where one side only removed them. */
  private boolean isZoneOfAPictureThatStays(Object there) {
    return there instanceof org.relegend.map.HazardZone zone
        && versions.mine().pictures().has(zone.picture())
        && versions.theirs().pictures().has(zone.picture());
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> Clash.Cell whole(
      TableCodec<K, V> codec, EntryRef self, @Nullable V mine, @Nullable V theirs) {
    return new Clash.Cell(
        self.table(),
        self.key(),
        "",
        mine == null ? "" : codec.json(mine).compact(),
        theirs == null ? "" : codec.json(theirs).compact());
  }

  /** The contested things that an entry speaks of, or is. */
  private <K extends Comparable<? super K>, V extends Keyed<K>> List<EntryRef> together(
      TableCodec<K, V> codec, EntryRef self, @Nullable V mine, @Nullable V theirs) {
    if (contest.all().isEmpty()) {
      return List.of();
    }
    TreeMap<String, EntryRef> refs = new TreeMap<>();
    if (contest.has(self)) {
      refs.put(self.toString(), self);
    }
    for (V version : java.util.Arrays.asList(mine, theirs)) {
      if (version != null) {
        for (EntryRef ref : codec.table().references(version)) {
          if (contest.has(ref)) {
            refs.put(ref.toString(), ref);
          } else if (contest.isRemoved(ref)) {
            return List.of(); // then it goes with that, whatever else it speaks of
          }
        }
      }
    }
    return List.copyOf(refs.values());
  }

  private <K extends Comparable<? super K>, V extends Keyed<K>> V fields(
      TableCodec<K, V> codec, EntryRef self, @Nullable V base, V mine, V theirs) {
    Json.Obj before = base == null ? Json.object() : codec.json(base);
    boolean asks = LostZones.lessened(base, mine) || LostZones.lessened(base, theirs);
    FieldMerge.Outcome outcome =
        asks
            ? FieldMerge.asking(codec.table(), before, codec.json(mine), codec.json(theirs))
            : FieldMerge.of(codec.table(), before, codec.json(mine), codec.json(theirs));
    differ(self.table(), self.key(), outcome.differing());
    return codec.entry(outcome.entry());
  }

  /** Boards and channels that one side removed while the other put something there: they stay. */
  private <K extends Comparable<? super K>, V extends Keyed<K>> BoardMap withKept(
      TableCodec<K, V> codec, BoardMap result) {
    BoardMap kept = result;
    for (V entry : codec.table().of(versions.base())) {
      EntryRef self = new EntryRef(codec.name(), codec.keyText(entry.key()));
      V mine = codec.table().of(versions.mine()).find(entry.key()).orElse(null);
      V theirs = codec.table().of(versions.theirs()).find(entry.key()).orElse(null);
      V there = mine != null ? mine : theirs;
      boolean gone = (mine == null) != (theirs == null) && !codec.table().of(kept).has(entry.key());
      if (gone && there != null && isSpokenOf(kept, self)) {
        bundles.add(self, whole(codec, self, mine, theirs), List.of());
        kept = kept.with(codec.table(), codec.table().of(kept).with(there));
      }
    }
    return kept;
  }

  private static boolean isSpokenOf(BoardMap map, EntryRef ref) {
    return TableCodec.all().stream().anyMatch(codec -> speaksOf(codec, map, ref));
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> boolean speaksOf(
      TableCodec<K, V> codec, BoardMap map, EntryRef ref) {
    return codec.table().of(map).stream()
        .anyMatch(entry -> codec.table().references(entry).contains(ref));
  }

  /** What was said of a net that the other side joined to another is said of that one. */
  private BoardMap withAbsorbed(BoardMap map) {
    BoardMap result = map;
    for (NetMerge.Absorbed absorbed : nets.absorbed()) {
      Net net = result.net(absorbed.into()).orElse(null);
      if (net == null) {
        continue;
      }
      Json.Obj now = TableCodec.of(MapTables.NETS).json(net);
      Json there = now.fields().get(absorbed.field());
      if (absorbed.value().equals(there)) {
        continue;
      }
      if (absorbed.field().equals("potential") && net.potential().equals(Potential.UNKNOWN)) {
        Net outcome =
            TableCodec.of(MapTables.NETS).entry(now.put(absorbed.field(), absorbed.value()));
        result = result.with(MapTables.NETS, result.nets().with(outcome));
        continue;
      }
      Clash.Cell cell =
          new Clash.Cell(
              "nets",
              absorbed.into().text(),
              absorbed.field(),
              compact(there),
              absorbed.value().compact());
      clashes.add(clash(List.of(absorbed.theirs() ? cell : cell.swapped())));
    }
    return result;
  }

  private BoardMap withMembers(BoardMap map) {
    Map<NetId, Net> changed = new HashMap<>();
    nets.members()
        .forEach(
            (id, members) ->
                changed.put(id, map.net(id).orElseGet(() -> Net.named(id)).withMembers(members)));
    return map.with(MapTables.NETS, map.nets().withAll(changed.values()));
  }

  private void addPinClashes() {
    nets.clashes().forEach(cells -> clashes.add(clash(cells)));
    nets.fixed()
        .forEach(
            (pin, cell) ->
                bundles.add(new EntryRef(PinCells.TABLE, pin.toString()), cell, of(pin, cell)));
  }

  /** The contested things that decide a pin: its part, and the nets either side has it on. */
  private List<EntryRef> of(PinRef pin, Clash.Cell cell) {
    List<EntryRef> refs = new ArrayList<>();
    refs.add(EntryRef.to(pin.part()));
    for (String version : List.of(cell.mine(), cell.theirs())) {
      PinCells.parse(pin, version).forEach(on -> refs.add(EntryRef.to(on.net())));
    }
    refs.removeIf(ref -> !contest.has(ref));
    return refs;
  }

  private static Clash clash(List<Clash.Cell> cells) {
    Clash.Cell first = cells.get(0);
    boolean one = cells.stream().allMatch(cell -> cell.key().equals(first.key()));
    String field = cells.size() == 1 ? first.field() : "";
    String about =
        "%s %s%s%s"
            .formatted(
                first.table(),
                first.key(),
                field.isEmpty() ? "" : " " + field,
                one ? "" : " and what goes with it");
    return new Clash(about.strip().replace("  ", " "), 1, cells);
  }

  /** Clashes that either side brought along, and those found now. */
  private MergeResult withClashes(BoardMap map) {
    Table<Clash.Key, Clash> base = versions.base().clashes();
    Table<Clash.Key, Clash> mine = versions.mine().clashes();
    Table<Clash.Key, Clash> theirs = versions.theirs().clashes();
    Map<Clash.Key, Clash> all = new LinkedHashMap<>();
    for (Clash clash : mine) {
      boolean decidedByThem =
          base.find(clash.key()).filter(clash::equals).isPresent() && !theirs.has(clash.key());
      if (!decidedByThem) {
        all.put(clash.key(), clash);
      }
    }
    List<Clash> more = new ArrayList<>();
    for (Clash clash : theirs) {
      boolean known = mine.find(clash.key()).filter(clash::equals).isPresent();
      boolean decidedByMe =
          base.find(clash.key()).filter(clash::equals).isPresent() && !mine.has(clash.key());
      if (!known && !decidedByMe) {
        more.add(clash);
      }
    }
    more.addAll(clashes);
    List<Clash> numbered = new ArrayList<>();
    for (Clash clash : more) {
      int ordinal = 1;
      while (all.containsKey(new Clash.Key(clash.about(), ordinal))) {
        ordinal++;
      }
      Clash fitting = new Clash(clash.about(), ordinal, clash.cells());
      all.put(fitting.key(), fitting);
      if (clashes.contains(clash)) {
        numbered.add(fitting);
      }
    }
    BoardMap result = map.with(MapTables.CLASHES, Table.of(all.values()));
    return new MergeResult(result, numbered);
  }
}
