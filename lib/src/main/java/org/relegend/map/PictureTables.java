package org.relegend.map;

import java.util.List;
import java.util.Set;

/** The tables of boards, pictures, and what lies on those. */
final class PictureTables {
  private PictureTables() {}

  static final class Boards extends MapTable<BoardId, Board> {
    Boards(int position) {
      super(position, "boards");
    }

    @Override
    protected String putLabel(BoardMap map, Board board) {
      return (map.boards().has(board.id()) ? "Change board " : "Add board ") + board.id();
    }

    @Override
    protected String removeLabel(BoardMap map, BoardId board) {
      return "Remove board " + board;
    }

    /** Refused while something is on it. */
    @Override
    protected BoardMap leaving(BoardMap map, BoardId board) throws EditRefusedException {
      long parts = map.parts().stream().filter(part -> part.board().equals(board)).count();
      long photos =
          map.pictures().stream()
              .filter(picture -> picture.shownBoard().filter(board::equals).isPresent())
              .count();
      if (parts + photos > 0) {
        throw new EditRefusedException(
            "Board %s still has %d parts and %d photos: move or remove those first."
                .formatted(board, parts, photos));
      }
      return map;
    }
  }

  /** The pictures; their files are the store's business. */
  static final class Pictures extends MapTable<PictureId, Picture> {
    Pictures(int position) {
      super(position, "pictures");
    }

    @Override
    protected String putLabel(BoardMap map, Picture picture) {
      return (map.pictures().has(picture.id()) ? "Change " : "Add ") + picture.caption();
    }

    @Override
    protected String removeLabel(BoardMap map, PictureId picture) {
      return "Remove " + caption(map, picture);
    }

    @Override
    protected void check(BoardMap map, Picture picture) throws EditRefusedException {
      if (picture instanceof Photo photo && !map.boards().has(photo.board())) {
        throw new EditRefusedException(
            "Photo %s shows board %s, which the map doesn't have: add the board first."
                .formatted(picture.id(), photo.board()));
      }
    }

    @Override
    protected BoardMap leaving(BoardMap map, PictureId picture) {
      return map.without(EntryRef.to(picture));
    }

    @Override
    public List<EntryRef> references(Picture picture) {
      return picture.shownBoard().map(EntryRef::to).map(List::of).orElse(List.of());
    }

    @Override
    public Set<String> claim() {
      return Set.of("file", "sha256", "width", "height");
    }

    @Override
    public Picture renamed(Picture picture, IdRenames renames) {
      return picture.withId(renames.of(picture.id()));
    }
  }

  static final class Placements extends MapTable<Placement.Key, Placement> {
    Placements(int position) {
      super(position, "placements");
    }

    @Override
    protected String putLabel(BoardMap map, Placement placement) {
      String verb = map.placements().has(placement.key()) ? "Move " : "Place ";
      return verb + map.nameOf(placement.subject());
    }

    @Override
    protected String removeLabel(BoardMap map, Placement.Key placement) {
      return "Take away " + map.nameOf(placement.subject());
    }

    @Override
    protected void check(BoardMap map, Placement placement) throws EditRefusedException {
      Requirements.picture(map, placement.picture());
      Requirements.subject(map, placement.subject());
    }

    @Override
    public List<EntryRef> references(Placement placement) {
      return List.of(EntryRef.to(placement.picture()), EntryRef.to(placement.subject()));
    }

    @Override
    public Set<String> claim() {
      return Set.of("x", "y", "outline");
    }

    @Override
    public Placement renamed(Placement p, IdRenames renames) {
      return p.of(renames.of(p.picture()), renames.of(p.subject()), p.ordinal());
    }
  }

  static final class Zones extends MapTable<ZoneId, HazardZone> {
    Zones(int position) {
      super(position, "zones");
    }

    @Override
    protected String putLabel(BoardMap map, HazardZone zone) {
      return (map.zones().has(zone.id()) ? "Change " : "Draw ") + map.nameOf(zone);
    }

    @Override
    protected String removeLabel(BoardMap map, ZoneId zone) {
      return "Remove " + map.zones().find(zone).map(map::nameOf).orElse("zone " + zone);
    }

    @Override
    protected void check(BoardMap map, HazardZone zone) throws EditRefusedException {
      if (!map.pictures().has(zone.picture())) {
        throw new EditRefusedException(
            "Zone %s lies on picture %s, which the map doesn't have."
                .formatted(zone.id(), zone.picture()));
      }
    }

    @Override
    public List<EntryRef> references(HazardZone zone) {
      return List.of(EntryRef.to(zone.picture()));
    }

    @Override
    public Set<String> claim() {
      return Set.of("picture", "kind", "outline");
    }

    @Override
    public HazardZone renamed(HazardZone z, IdRenames renames) {
      return new HazardZone(
          z.id(), renames.of(z.picture()), z.kind(), z.outline(), z.note(), z.evidence());
    }
  }

  static final class LineUps extends MapTable<PicturePairs.Key, PicturePairs> {
    LineUps(int position) {
      super(position, "lineups");
    }

    @Override
    protected String putLabel(BoardMap map, PicturePairs pairs) {
      String verb = map.lineUps().has(pairs.key()) ? "Change line-up of " : "Line up ";
      return verb + captions(map, pairs.key());
    }

    @Override
    protected String removeLabel(BoardMap map, PicturePairs.Key pairs) {
      return "Take away line-up of " + captions(map, pairs);
    }

    @Override
    protected void check(BoardMap map, PicturePairs pairs) throws EditRefusedException {
      Picture a = Requirements.picture(map, pairs.a());
      Picture b = Requirements.picture(map, pairs.b());
      if (!a.shownBoard().equals(b.shownBoard())) {
        throw new EditRefusedException(
            "%s and %s don't show the same board, so nothing can be carried between them."
                .formatted(a.caption(), b.caption()));
      }
    }

    @Override
    public List<EntryRef> references(PicturePairs pairs) {
      return List.of(EntryRef.to(pairs.a()), EntryRef.to(pairs.b()));
    }

    @Override
    public Set<String> claim() {
      return Set.of("found", "pairs");
    }

    @Override
    public PicturePairs renamed(PicturePairs p, IdRenames r) {
      return new PicturePairs(r.of(p.a()), r.of(p.b()), p.origin(), p.spots(), p.evidence());
    }

    private static String captions(BoardMap map, PicturePairs.Key pairs) {
      return caption(map, pairs.a()) + " and " + caption(map, pairs.b());
    }
  }

  private static String caption(BoardMap map, PictureId picture) {
    return map.picture(picture).map(Picture::caption).orElse(picture.text());
  }
}
