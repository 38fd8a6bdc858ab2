package org.relegend.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.relegend.map.Board;
import org.relegend.map.BoardId;
import org.relegend.map.Channel;
import org.relegend.map.Clash;
import org.relegend.map.Deviation;
import org.relegend.map.Discrepancy;
import org.relegend.map.HazardZone;
import org.relegend.map.Keyed;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Page;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.Placement;
import org.relegend.map.TwinPair;
import org.relegend.map.ZoneId;
import org.relegend.store.Shelf;

/** The rules of all tables, in the order in which entries can be put back. */
final class Rules {
  private Rules() {}

  private static final Set<String> ALONE = Set.of();
  private static final Map<String, String> NO_LISTS = Map.of();

  static final Rule<BoardId, Board> BOARDS =
      rule("boards", ALONE, NO_LISTS, board -> List.of(), (board, r) -> board);
  static final Rule<PictureId, Picture> PICTURES =
      rule(
          "pictures",
          Set.of("file", "sha256", "width", "height"),
          NO_LISTS,
          Rules::boardOf,
          Rules::renamed);
  static final Rule<String, Channel> CHANNELS =
      rule("channels", ALONE, NO_LISTS, channel -> List.of(), (channel, r) -> channel);
  static final Rule<PartId, Part> PARTS =
      rule(
          "parts",
          ALONE,
          Map.of("pins", "number", "sections", "name"),
          part -> List.of(Ref.to(part.board()), Ref.toChannel(part.channel())),
          (part, r) -> part);

  /** Without their members, which {@link NetMerge} sees to. */
  static final Rule<NetId, Net> NETS =
      rule("nets", ALONE, NO_LISTS, net -> List.of(Ref.toChannel(net.channel())), (net, r) -> net);

  static final Rule<Placement.Key, Placement> PLACEMENTS =
      rule(
          "placements",
          Set.of("x", "y", "outline"),
          NO_LISTS,
          p -> List.of(Ref.to(p.picture()), Ref.to(p.subject())),
          (p, r) -> at(p, r, p.ordinal()));
  static final Rule<TwinPair.Key, TwinPair> TWINS =
      rule(
          "twins",
          ALONE,
          NO_LISTS,
          twin -> List.of(Ref.to(twin.a()), Ref.to(twin.b())),
          Rules::renamed);
  static final Rule<Discrepancy.Key, Discrepancy> DISCREPANCIES =
      rule("discrepancies", Set.of("drawn"), NO_LISTS, Rules::of, Rules::renamed);
  static final Rule<ZoneId, HazardZone> ZONES =
      rule(
          "zones",
          Set.of("picture", "kind", "outline"),
          NO_LISTS,
          zone -> List.of(Ref.to(zone.picture())),
          (z, r) ->
              new HazardZone(
                  z.id(), r.of(z.picture()), z.kind(), z.outline(), z.note(), z.evidence()));
  static final Rule<Mating, Mating> MATINGS =
      rule(
          "matings",
          ALONE,
          NO_LISTS,
          mating -> List.of(Ref.to(mating.a()), Ref.to(mating.b())),
          (mating, r) -> mating);
  static final Rule<Deviation.Key, Deviation> DEVIATIONS =
      rule(
          "deviations",
          Set.of("cause"),
          NO_LISTS,
          deviation -> deviation.at().stream().map(Ref::to).toList(),
          (d, r) ->
              new Deviation(
                  d.at().stream().map(r::of).distinct().toList(),
                  d.aspect(),
                  d.cause(),
                  d.evidence(),
                  d.note()));
  static final Rule<PicturePairs.Key, PicturePairs> LINE_UPS =
      rule(
          "lineups",
          Set.of("found", "pairs"),
          NO_LISTS,
          pairs -> List.of(Ref.to(pairs.a()), Ref.to(pairs.b())),
          (p, r) -> new PicturePairs(r.of(p.a()), r.of(p.b()), p.found(), p.spots(), p.evidence()));
  static final Rule<Clash.Key, Clash> CLASHES =
      rule("clashes", ALONE, NO_LISTS, clash -> List.of(), (clash, r) -> clash);

  static final List<Rule<?, ?>> ALL =
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

  static Rule<?, ?> named(String table) {
    return ALL.stream()
        .filter(rule -> rule.table().equals(table))
        .findFirst()
        .orElseThrow(() -> new NoSuchElementException("no table \"" + table + "\""));
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> Rule<K, V> rule(
      String table,
      Set<String> claim,
      Map<String, String> lists,
      Function<V, List<Ref>> refs,
      BiFunction<V, Renames, V> renamed) {
    for (Shelf<?, ?> shelf : Shelf.all()) {
      if (shelf.name().equals(table)) {
        @SuppressWarnings("unchecked") // each table's name tells its entries; RulesTest tries all
        Shelf<K, V> typed = (Shelf<K, V>) shelf;
        return new Rule<>(typed, claim, lists, refs, renamed);
      }
    }
    throw new NoSuchElementException("no table \"" + table + "\"");
  }

  private static List<Ref> boardOf(Picture picture) {
    return picture.shownBoard().map(Ref::to).map(List::of).orElse(List.of());
  }

  private static List<Ref> of(Discrepancy discrepancy) {
    List<Ref> refs = new ArrayList<>();
    refs.add(Ref.to(discrepancy.subject()));
    if (discrepancy.aspect() == Discrepancy.Aspect.NET && !discrepancy.drawn().isEmpty()) {
      refs.add(new Ref("nets", discrepancy.drawn()));
    }
    return refs;
  }

  private static Picture renamed(Picture picture, Renames r) {
    PictureId id = r.of(picture.id());
    return picture instanceof Photo p
        ? new Photo(
            id,
            p.title(),
            p.file(),
            p.board(),
            p.side(),
            p.turn(),
            p.sha256(),
            p.width(),
            p.height())
        : page(id, (Page) picture);
  }

  private static Page page(PictureId id, Page p) {
    return new Page(id, p.title(), p.file(), p.number(), p.sha256(), p.width(), p.height());
  }

  static Placement at(Placement p, Renames r, int ordinal) {
    return new Placement(
        r.of(p.picture()), r.of(p.subject()), ordinal, p.at(), p.outline(), p.evidence());
  }

  private static TwinPair renamed(TwinPair twin, Renames r) {
    return r.of(twin.a()).equals(r.of(twin.b()))
        ? twin // one net now: a pair that speaks of a net that is gone, which the checks tell
        : new TwinPair(r.of(twin.a()), r.of(twin.b()), twin.evidence());
  }

  private static Discrepancy renamed(Discrepancy d, Renames r) {
    String drawn =
        d.aspect() == Discrepancy.Aspect.NET && !d.drawn().isEmpty() && isName(d.drawn())
            ? r.of(new NetId(d.drawn())).text()
            : d.drawn();
    return new Discrepancy(r.of(d.subject()), d.aspect(), drawn, d.evidence(), d.note());
  }

  /** The drawing's net may be any line of text, also one that no net can be called. */
  private static boolean isName(String text) {
    return !text.contains("\"");
  }
}
