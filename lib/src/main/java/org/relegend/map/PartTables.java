package org.relegend.map;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The tables of parts, channels, matings, twins and where those differ. */
final class PartTables {
  private PartTables() {}

  static final class Channels extends MapTable<String, Channel> {
    Channels(int position) {
      super(position, "channels");
    }

    @Override
    protected String putLabel(BoardMap map, Channel channel) {
      return (map.channels().has(channel.name()) ? "Change channel " : "Add channel ")
          + channel.name();
    }

    @Override
    protected String removeLabel(BoardMap map, String channel) {
      return "Remove channel " + channel;
    }

    /** Refused while something is in it. */
    @Override
    protected BoardMap leaving(BoardMap map, String channel) throws EditRefusedException {
      long parts = map.parts().stream().filter(part -> part.channel().equals(channel)).count();
      long nets = map.nets().stream().filter(net -> net.channel().equals(channel)).count();
      if (parts + nets > 0) {
        throw new EditRefusedException(
            "Channel %s still has %d parts and %d nets: take those out first."
                .formatted(channel, parts, nets));
      }
      return map;
    }
  }

  static final class Parts extends MapTable<PartId, Part> {
    Parts(int position) {
      super(position, "parts");
    }

    @Override
    protected String putLabel(BoardMap map, Part part) {
      return (map.parts().has(part.id()) ? "Change " : "Add ") + part.designator();
    }

    @Override
    protected String removeLabel(BoardMap map, PartId part) {
      return "Remove " + map.nameOf(part);
    }

    /** Boards that parts are the first on are added with them. */
    @Override
    protected BoardMap prepared(BoardMap map, Collection<Part> parts) {
      List<Board> boards =
          parts.stream()
              .map(Part::board)
              .distinct()
              .filter(board -> !map.boards().has(board))
              .map(Board::named)
              .toList();
      return boards.isEmpty() ? map : map.with(MapTables.BOARDS, map.boards().withAll(boards));
    }

    /** Its pins leave their nets. */
    @Override
    protected BoardMap leaving(BoardMap map, PartId part) {
      BoardMap rest = map.without(EntryRef.to(part));
      List<Net> cut =
          rest.nets().stream().filter(net -> joins(net, part)).map(net -> cut(net, part)).toList();
      return rest.with(MapTables.NETS, rest.nets().withAll(cut));
    }

    private static boolean joins(Net net, PartId part) {
      return net.members().stream().anyMatch(member -> member.pin().part().equals(part));
    }

    private static Net cut(Net net, PartId part) {
      return net.withMembers(
          net.members().stream().filter(member -> !member.pin().part().equals(part)).toList());
    }

    @Override
    public List<EntryRef> references(Part part) {
      return List.of(EntryRef.to(part.board()), EntryRef.toChannel(part.channel()));
    }

    @Override
    public Map<String, String> lists() {
      return Map.of("pins", "number", "sections", "name");
    }
  }

  static final class Twins extends MapTable<TwinPair.Key, TwinPair> {
    Twins(int position) {
      super(position, "twins");
    }

    @Override
    protected String putLabel(BoardMap map, TwinPair pair) {
      return "Twins " + map.nameOf(pair.a()) + " = " + map.nameOf(pair.b());
    }

    @Override
    protected String removeLabel(BoardMap map, TwinPair.Key pair) {
      return "No twins: " + map.nameOf(pair.a()) + ", " + map.nameOf(pair.b());
    }

    @Override
    protected void check(BoardMap map, TwinPair pair) throws EditRefusedException {
      Requirements.subject(map, pair.a());
      Requirements.subject(map, pair.b());
    }

    @Override
    public boolean addsToKnown() {
      return true;
    }

    @Override
    protected TwinPair joined(TwinPair known, TwinPair given) {
      return new TwinPair(
          given.a(), given.b(), AttestationMerge.union(known.evidence(), given.evidence()));
    }

    @Override
    public List<EntryRef> references(TwinPair twin) {
      return List.of(EntryRef.to(twin.a()), EntryRef.to(twin.b()));
    }

    @Override
    public TwinPair renamed(TwinPair twin, IdRenames r) {
      return r.of(twin.a()).equals(r.of(twin.b()))
          ? twin // one net now: a pair that speaks of a net that is gone, which the checks tell
          : new TwinPair(r.of(twin.a()), r.of(twin.b()), twin.evidence());
    }
  }

  static final class Matings extends MapTable<Mating, Mating> {
    Matings(int position) {
      super(position, "matings");
    }

    @Override
    protected String putLabel(BoardMap map, Mating mating) {
      return "Plug " + map.nameOf(mating.a()) + " into " + map.nameOf(mating.b());
    }

    @Override
    protected String removeLabel(BoardMap map, Mating mating) {
      return "Unplug " + map.nameOf(mating.a()) + " from " + map.nameOf(mating.b());
    }

    @Override
    protected void check(BoardMap map, Mating mating) throws EditRefusedException {
      Requirements.part(map, mating.a());
      Requirements.part(map, mating.b());
    }

    @Override
    public List<EntryRef> references(Mating mating) {
      return List.of(EntryRef.to(mating.a()), EntryRef.to(mating.b()));
    }
  }

  static final class Deviations extends MapTable<ChannelDeviation.Key, ChannelDeviation> {
    Deviations(int position) {
      super(position, "deviations");
    }

    @Override
    protected String putLabel(BoardMap map, ChannelDeviation deviation) {
      return "Mark as " + deviation.cause().word() + ": " + names(map, deviation.at());
    }

    @Override
    protected String removeLabel(BoardMap map, ChannelDeviation.Key deviation) {
      return "Drop the mark on " + names(map, deviation.at());
    }

    @Override
    protected void check(BoardMap map, ChannelDeviation deviation) throws EditRefusedException {
      for (Subject subject : deviation.at()) {
        Requirements.subject(map, subject);
      }
    }

    @Override
    public List<EntryRef> references(ChannelDeviation deviation) {
      return deviation.at().stream().map(EntryRef::to).toList();
    }

    @Override
    public Set<String> claim() {
      return Set.of("cause");
    }

    @Override
    public ChannelDeviation renamed(ChannelDeviation d, IdRenames r) {
      List<Subject> at = d.at().stream().map(r::of).distinct().toList();
      return new ChannelDeviation(at, d.aspect(), d.cause(), d.evidence(), d.note());
    }

    private static String names(BoardMap map, List<Subject> subjects) {
      return String.join(", ", subjects.stream().map(map::nameOf).toList());
    }
  }
}
