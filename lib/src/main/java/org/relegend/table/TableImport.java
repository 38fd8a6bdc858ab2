package org.relegend.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.relegend.map.BoardMap;
import org.relegend.map.Channel;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapTables;
import org.relegend.map.Part;

/**
 * Reads tables of parts, joined pins and placements into one edit of a map. Parts are known again
 * by designator and board, nets by name, so reading the same tables again comes to nothing, and
 * tables that say more add what is new. Takes time and memory in proportion to map and tables.
 */
public final class TableImport {
  private final BoardMap map;
  private final Map<TableSort, TableSource> sources;
  private final ImportOptions options;
  private final TableProblems problems = new TableProblems();
  private final List<String> warnings = new ArrayList<>();
  private final PartCompletion completion;
  private final MapDraft draft;

  private TableImport(BoardMap map, Map<TableSort, TableSource> sources, ImportOptions options) {
    this.map = map;
    this.sources = sources;
    this.options = options;
    completion = new PartCompletion(options.kinds());
    draft = new MapDraft(map);
  }

  /**
   * Plans the import.
   *
   * <p>A pin of a part that is neither in the map nor in a table of parts is a problem, unless
   * there is no table of parts: then the part is made.
   *
   * @param sources the tables there are; each sort may be absent
   * @throws TableException where anything in them is wrong or contradicts the map
   */
  public static ImportPlan plan(
      BoardMap map, Map<TableSort, TableSource> sources, ImportOptions options)
      throws TableException {
    return new TableImport(map, Map.copyOf(sources), options).plan();
  }

  private ImportPlan plan() throws TableException {
    PartRows parts = new PartRows(draft, options, problems);
    rows(TableSort.PARTS).forEach(parts::read);
    boolean makesParts = !sources.containsKey(TableSort.PARTS);
    PinRows pins = new PinRows(draft, options, problems, makesParts);
    rows(TableSort.PINS).forEach(pins::read);
    NetRows nets = new NetRows(draft, options, problems, warnings);
    rows(TableSort.NETS).forEach(nets::read);
    nets.finish();
    PlacementRows placements = new PlacementRows(draft, options, completion, problems);
    rows(TableSort.PLACEMENTS).forEach(placements::read);
    problems.throwIfAny();
    return finished(pins.joined(), placements);
  }

  private List<TableRow> rows(TableSort sort) throws TableException {
    TableSource source = sources.get(sort);
    if (source == null) {
      return List.of();
    }
    TableText table = TableText.read(source, sort.columns());
    warnings.addAll(table.warnings());
    return table.rows();
  }

  private ImportPlan finished(int joined, PlacementRows placements) {
    List<Part> parts = parts();
    List<NetDraft> nets = draft.nets().stream().filter(NetDraft::isChanged).toList();
    List<Edit> steps = new ArrayList<>();
    Stream.concat(
            parts.stream().map(Part::channel), nets.stream().map(net -> net.fields().channel()))
        .filter(channel -> !channel.isEmpty() && !map.channels().has(channel))
        .distinct()
        .forEach(channel -> steps.add(MapTables.CHANNELS.put(new Channel(channel, "", ""))));
    parts.forEach(part -> steps.add(MapTables.PARTS.put(part)));
    nets.forEach(net -> steps.add(MapTables.NETS.put(net.finished())));
    placements.changed().forEach(place -> steps.add(MapTables.PLACEMENTS.put(place)));
    long newParts = parts.stream().filter(part -> !map.parts().has(part.id())).count();
    long newNets = nets.stream().filter(NetDraft::isNew).count();
    long newPlaces =
        placements.changed().stream().filter(p -> !map.placements().has(p.key())).count();
    ImportSummary summary =
        new ImportSummary(
            (int) newParts,
            parts.size() - (int) newParts,
            (int) newNets,
            nets.size() - (int) newNets,
            joined,
            (int) newPlaces,
            placements.changed().size() - (int) newPlaces);
    return new ImportPlan(new EditGroup("Import tables", steps), summary, warnings);
  }

  /** The parts that are new or changed, completed by what their kinds tell. */
  private List<Part> parts() {
    List<Part> changed = new ArrayList<>();
    for (PartDraft draft : draft.parts()) {
      if (draft.isTold()) {
        Part finished = completion.complete(draft.finished(), draft.pinsBefore());
        completion.doubt(finished).ifPresent(warnings::add);
        if (draft.differs(finished)) {
          changed.add(finished);
        }
      }
    }
    return changed;
  }
}
