package org.relegend.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The tables of nets, of where the drawing differs, and of what is undecided. */
final class NetTables {
  private NetTables() {}

  static final class Nets extends MapTable<NetId, Net> {
    Nets(int position) {
      super(position, "nets");
    }

    @Override
    protected String putLabel(BoardMap map, Net net) {
      return (map.nets().has(net.id()) ? "Change net " : "Add net ") + net.name();
    }

    @Override
    protected String removeLabel(BoardMap map, NetId net) {
      return "Remove net " + map.nameOf(Subject.of(net));
    }

    /** Its pins are joined to nothing then. */
    @Override
    protected BoardMap leaving(BoardMap map, NetId net) {
      return map.without(EntryRef.to(net));
    }

    /** Members are left out here, since merges see to them pin by pin. */
    @Override
    public List<EntryRef> references(Net net) {
      return List.of(EntryRef.toChannel(net.channel()));
    }
  }

  static final class Discrepancies extends MapTable<DrawingDiscrepancy.Key, DrawingDiscrepancy> {
    Discrepancies(int position) {
      super(position, "discrepancies");
    }

    @Override
    protected String putLabel(BoardMap map, DrawingDiscrepancy discrepancy) {
      return "Note what the drawing has for " + map.nameOf(discrepancy.subject());
    }

    @Override
    protected String removeLabel(BoardMap map, DrawingDiscrepancy.Key discrepancy) {
      return "Drop the note on " + map.nameOf(discrepancy.subject());
    }

    @Override
    protected void check(BoardMap map, DrawingDiscrepancy discrepancy) throws EditRefusedException {
      Requirements.subject(map, discrepancy.subject());
    }

    @Override
    public List<EntryRef> references(DrawingDiscrepancy discrepancy) {
      List<EntryRef> refs = new ArrayList<>(goesWith(discrepancy));
      if (discrepancy.aspect() == DrawingDiscrepancy.Aspect.NET && !discrepancy.drawn().isEmpty()) {
        refs.add(new EntryRef("nets", discrepancy.drawn()));
      }
      return refs;
    }

    /** What the drawing has stays true of it when the net is gone from the map. */
    @Override
    public List<EntryRef> goesWith(DrawingDiscrepancy discrepancy) {
      return List.of(EntryRef.to(discrepancy.subject()));
    }

    @Override
    public Set<String> claim() {
      return Set.of("drawn");
    }

    @Override
    public DrawingDiscrepancy renamed(DrawingDiscrepancy d, IdRenames r) {
      String drawn =
          d.aspect() == DrawingDiscrepancy.Aspect.NET && !d.drawn().isEmpty() && isName(d.drawn())
              ? r.of(new NetId(d.drawn())).text()
              : d.drawn();
      return new DrawingDiscrepancy(r.of(d.subject()), d.aspect(), drawn, d.evidence(), d.note());
    }

    /** The drawing's net may be any line of text, also one that no net can be called. */
    private static boolean isName(String text) {
      return !text.contains("\"");
    }
  }

  /** A decision is a group: what was chosen is put into the map, and the clash is removed. */
  static final class Clashes extends MapTable<Clash.Key, Clash> {
    Clashes(int position) {
      super(position, "clashes");
    }

    @Override
    protected String putLabel(BoardMap map, Clash clash) {
      return "Keep both versions of " + NameRules.printable(clash.about());
    }

    @Override
    protected String removeLabel(BoardMap map, Clash.Key clash) {
      return "Drop the clash about " + NameRules.printable(clash.about());
    }
  }
}
