package org.relegend.store;

import static org.relegend.store.Codecs.NUMBER;
import static org.relegend.store.Codecs.TEXT;
import static org.relegend.store.Codecs.WHOLE_NUMBER;
import static org.relegend.store.Codecs.list;
import static org.relegend.store.Codecs.maybe;
import static org.relegend.store.Codecs.parsed;
import static org.relegend.store.Codecs.word;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.relegend.map.Attestation;
import org.relegend.map.Board;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardTurn;
import org.relegend.map.Channel;
import org.relegend.map.Designator;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.Keyed;
import org.relegend.map.MapInfo;
import org.relegend.map.Mating;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Page;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.Section;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.map.ZoneId;

/** The fields of everything a map holds, in the order they are written in. */
final class MapShapes {
  private MapShapes() {}

  static final Codec<BoardId> BOARD_ID = parsed(BoardId::new, BoardId::text);
  static final Codec<PictureId> PICTURE_ID = parsed(PictureId::new, PictureId::text);
  static final Codec<PartId> PART_ID = parsed(PartId::new, PartId::text);
  static final Codec<NetId> NET_ID = parsed(NetId::new, NetId::text);
  static final Codec<ZoneId> ZONE_ID = parsed(ZoneId::new, ZoneId::text);
  static final Codec<PinRef> PIN_REF = parsed(PinRef::parse, PinRef::toString);
  static final Codec<Subject> SUBJECT = parsed(Subject::parse, Subject::toString);
  static final Codec<DrawingDiscrepancy.Aspect> ASPECT =
      word(
          DrawingDiscrepancy.Aspect.values(),
          DrawingDiscrepancy.Aspect::word,
          DrawingDiscrepancy.Aspect::of);
  private static final Codec<Designator> DESIGNATOR = parsed(Designator::new, Designator::text);
  static final Codec<Instant> INSTANT = parsed(InstantCodec::parse, Instant::toString);
  private static final Codec<Evidence> BASIS =
      word(Evidence.values(), Evidence::word, Evidence::of);
  private static final Codec<Side> SIDE = word(Side.values(), Side::word, Side::of);
  private static final Codec<BoardTurn> TURN =
      word(BoardTurn.values(), BoardTurn::word, BoardTurn::of);
  private static final Codec<HazardZone.Kind> HAZARD =
      word(HazardZone.Kind.values(), HazardZone.Kind::word, HazardZone.Kind::of);
  private static final Codec<Potential.Nature> NATURE =
      word(Potential.Nature.values(), Potential.Nature::word, Potential.Nature::of);

  static final Codec<MapInfo> INFO = info();
  static final Codec<Attestation> ATTESTATION = attestation();
  static final Codec<List<Attestation>> EVIDENCE = list(ATTESTATION);
  private static final Codec<List<Point>> OUTLINE = list(PointCodec.POINT);
  static final Codec<Board> BOARD = board();
  static final Codec<Picture> PICTURE = picture();
  static final Codec<Channel> CHANNEL = channel();
  static final Codec<Part> PART = part();
  static final Codec<Net.Member> MEMBER = member();
  static final Codec<Net> NET = net();
  static final Codec<Placement> PLACEMENT = placement();
  static final Codec<TwinPair> TWIN = twin();
  static final Codec<DrawingDiscrepancy> DISCREPANCY = DeviationShapes.discrepancy();
  static final Codec<HazardZone> ZONE = zone();
  static final Codec<Mating> MATING = mating();

  /** The map as a whole. */
  static Codec<BoardMap> map() {
    JsonShape<BoardMap> s = new JsonShape<>();
    s.required("format", WHOLE_NUMBER, MapFormat::of);
    var id = s.required("id", TEXT, BoardMap::id);
    var info = s.required("info", INFO, BoardMap::info);
    TableFields<BoardMap> tables = new TableFields<>(s);
    MapTableCodecs.ALL.forEach(codec -> add(tables, codec));
    return s.madeBy(v -> new BoardMap(v.get(id), v.get(info), tables.of(v)));
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void add(
      TableFields<BoardMap> tables, TableCodec<K, V> codec) {
    tables.add(codec.table(), codec.value());
  }

  private static Codec<MapInfo> info() {
    JsonShape<MapInfo> s = new JsonShape<>();
    var title = s.required("title", TEXT, MapInfo::title);
    var maker = s.optional("maker", TEXT, "", MapInfo::maker);
    var model = s.optional("model", TEXT, "", MapInfo::model);
    var issue = s.optional("issue", TEXT, "", MapInfo::issue);
    var note = s.optional("note", TEXT, "", MapInfo::note);
    return s.madeBy(
        v -> new MapInfo(v.get(title), v.get(maker), v.get(model), v.get(issue), v.get(note)));
  }

  private static Codec<Attestation> attestation() {
    JsonShape<Attestation> s = new JsonShape<>();
    var evidence = s.required("evidence", BASIS, Attestation::evidence);
    var author = s.optional("author", TEXT, "", Attestation::author);
    var at = s.required("at", INSTANT, Attestation::at);
    var note = s.optional("note", TEXT, "", Attestation::note);
    return s.madeBy(v -> new Attestation(v.get(evidence), v.get(author), v.get(at), v.get(note)));
  }

  private static Codec<Board> board() {
    JsonShape<Board> s = new JsonShape<>();
    var id = s.required("id", BOARD_ID, Board::id);
    var title = s.optional("title", TEXT, "", Board::title);
    var issue = s.optional("issue", TEXT, "", Board::issue);
    var width = s.optional("width_mm", NUMBER, 0.0, Board::widthMm);
    var height = s.optional("height_mm", NUMBER, 0.0, Board::heightMm);
    var note = s.optional("note", TEXT, "", Board::note);
    return s.madeBy(
        v ->
            new Board(
                v.get(id), v.get(title), v.get(issue), v.get(width), v.get(height), v.get(note)));
  }

  /** Pages and photos in one list; {@code kind} tells which fields of the two there are. */
  private static Codec<Picture> picture() {
    JsonShape<Picture> s = new JsonShape<>();
    var id = s.required("id", PICTURE_ID, Picture::id);
    var kind = s.required("kind", TEXT, picture -> picture instanceof Page ? "page" : "photo");
    var title = s.optional("title", TEXT, "", Picture::title);
    var file = s.required("file", TEXT, Picture::file);
    var number = s.optional("number", maybe(WHOLE_NUMBER), Optional.empty(), onPage(Page::number));
    var board = s.optional("board", maybe(BOARD_ID), Optional.empty(), onPhoto(Photo::board));
    var side = s.optional("side", maybe(SIDE), Optional.empty(), onPhoto(Photo::side));
    var turn = s.optional("turn", maybe(TURN), Optional.empty(), MapShapes::turned);
    var sha256 = s.required("sha256", TEXT, Picture::sha256);
    var width = s.required("width", NUMBER, Picture::width);
    var height = s.required("height", NUMBER, Picture::height);
    return s.madeBy(
        v ->
            switch (v.get(kind)) {
              case "page" -> {
                v.refuse("a page", board, side, turn);
                yield new Page(
                    v.get(id),
                    v.get(title),
                    v.get(file),
                    v.need(number),
                    v.get(sha256),
                    v.get(width),
                    v.get(height));
              }
              case "photo" -> {
                v.refuse("a photo", number);
                yield new Photo(
                    v.get(id),
                    v.get(title),
                    v.get(file),
                    v.need(board),
                    v.need(side),
                    v.get(turn).orElse(BoardTurn.UNKNOWN),
                    v.get(sha256),
                    v.get(width),
                    v.get(height));
              }
              default ->
                  throw new IllegalArgumentException("the kind of a picture is page or photo");
            });
  }

  private static <V> Function<Picture, Optional<V>> onPage(Function<Page, V> part) {
    return picture ->
        picture instanceof Page page ? Optional.of(part.apply(page)) : Optional.empty();
  }

  private static <V> Function<Picture, Optional<V>> onPhoto(Function<Photo, V> part) {
    return picture ->
        picture instanceof Photo photo ? Optional.of(part.apply(photo)) : Optional.empty();
  }

  private static Optional<BoardTurn> turned(Picture picture) {
    return onPhoto(Photo::turn).apply(picture).filter(turn -> turn != BoardTurn.UNKNOWN);
  }

  private static Codec<Channel> channel() {
    JsonShape<Channel> s = new JsonShape<>();
    var name = s.required("name", TEXT, Channel::name);
    var panel = s.optional("panel", TEXT, "", Channel::panel);
    var note = s.optional("note", TEXT, "", Channel::note);
    return s.madeBy(v -> new Channel(v.get(name), v.get(panel), v.get(note)));
  }

  private static Codec<Pin> pin() {
    JsonShape<Pin> s = new JsonShape<>();
    var number = s.required("number", TEXT, Pin::number);
    var role = s.optional("role", TEXT, "", Pin::role);
    return s.madeBy(v -> new Pin(v.get(number), v.get(role)));
  }

  private static Codec<Section> section() {
    JsonShape<Section> s = new JsonShape<>();
    var name = s.required("name", TEXT, Section::name);
    var roles = s.required("roles", Codecs.TEXT_BY_NAME, Section::roles);
    return s.madeBy(v -> new Section(v.get(name), v.get(roles)));
  }

  private static Codec<Part> part() {
    JsonShape<Part> s = new JsonShape<>();
    var id = s.required("id", PART_ID, Part::id);
    var designator = s.required("designator", DESIGNATOR, Part::designator);
    var kind = s.optional("kind", TEXT, "", Part::kind);
    var value = s.optional("value", TEXT, "", Part::value);
    var casing = s.optional("package", TEXT, "", Part::casing);
    var board = s.required("board", BOARD_ID, Part::board);
    var channel = s.optional("channel", TEXT, "", Part::channel);
    var pins = s.optional("pins", list(pin()), List.of(), Part::pins);
    var sections = s.optional("sections", list(section()), List.of(), Part::sections);
    var note = s.optional("note", TEXT, "", Part::note);
    return s.madeBy(
        v ->
            new Part(
                v.get(id),
                v.get(designator),
                v.get(kind),
                v.get(value),
                v.get(casing),
                v.get(board),
                v.get(channel),
                v.get(pins),
                v.get(sections),
                v.get(note)));
  }

  private static Codec<Potential> potential() {
    JsonShape<Potential> s = new JsonShape<>();
    var nature = s.required("nature", NATURE, Potential::nature);
    var volts = s.optional("volts", NUMBER, 0.0, Potential::volts);
    return s.madeBy(v -> new Potential(v.get(nature), v.get(volts)));
  }

  private static Codec<Net.Member> member() {
    JsonShape<Net.Member> s = new JsonShape<>();
    var pin = s.required("pin", PIN_REF, Net.Member::pin);
    var evidence = s.optional("evidence", EVIDENCE, List.of(), Net.Member::evidence);
    return s.madeBy(v -> new Net.Member(v.get(pin), v.get(evidence)));
  }

  private static Codec<Net> net() {
    JsonShape<Net> s = new JsonShape<>();
    var id = s.required("id", NET_ID, Net::id);
    var name = s.required("name", TEXT, Net::name);
    var channel = s.optional("channel", TEXT, "", Net::channel);
    var potential = s.optional("potential", potential(), Potential.UNKNOWN, Net::potential);
    var members = s.optional("members", list(MEMBER), List.of(), Net::members);
    var note = s.optional("note", TEXT, "", Net::note);
    return s.madeBy(
        v ->
            new Net(
                v.get(id),
                v.get(name),
                v.get(channel),
                v.get(potential),
                v.get(members),
                v.get(note)));
  }

  private static Codec<Placement> placement() {
    JsonShape<Placement> s = new JsonShape<>();
    var picture = s.required("picture", PICTURE_ID, Placement::picture);
    var subject = s.required("subject", SUBJECT, Placement::subject);
    var ordinal = s.optional("ordinal", WHOLE_NUMBER, 1, Placement::ordinal);
    var x = s.required("x", NUMBER, placement -> placement.at().x());
    var y = s.required("y", NUMBER, placement -> placement.at().y());
    var outline = s.optional("outline", OUTLINE, List.of(), Placement::outline);
    var evidence = s.required("evidence", EVIDENCE, Placement::evidence);
    return s.madeBy(
        v ->
            new Placement(
                v.get(picture),
                v.get(subject),
                v.get(ordinal),
                new Point(v.get(x), v.get(y)),
                v.get(outline),
                v.get(evidence)));
  }

  private static Codec<TwinPair> twin() {
    JsonShape<TwinPair> s = new JsonShape<>();
    var a = s.required("a", SUBJECT, TwinPair::a);
    var b = s.required("b", SUBJECT, TwinPair::b);
    var evidence = s.required("evidence", EVIDENCE, TwinPair::evidence);
    return s.madeBy(v -> new TwinPair(v.get(a), v.get(b), v.get(evidence)));
  }

  private static Codec<HazardZone> zone() {
    JsonShape<HazardZone> s = new JsonShape<>();
    var id = s.required("id", ZONE_ID, HazardZone::id);
    var picture = s.required("picture", PICTURE_ID, HazardZone::picture);
    var kind = s.required("kind", HAZARD, HazardZone::kind);
    var outline = s.required("outline", OUTLINE, HazardZone::outline);
    var note = s.optional("note", TEXT, "", HazardZone::note);
    var evidence = s.required("evidence", EVIDENCE, HazardZone::evidence);
    return s.madeBy(
        v ->
            new HazardZone(
                v.get(id),
                v.get(picture),
                v.get(kind),
                v.get(outline),
                v.get(note),
                v.get(evidence)));
  }

  private static Codec<Mating> mating() {
    JsonShape<Mating> s = new JsonShape<>();
    var a = s.required("a", PART_ID, Mating::a);
    var b = s.required("b", PART_ID, Mating::b);
    return s.madeBy(v -> new Mating(v.get(a), v.get(b)));
  }
}
