package org.relegend.viewer.session;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Side;

/** Which page lies on the left and which photo on the right, and whether they follow each other. */
public final class ShownPictures {
  private final MapDocument document;
  private final ChangeNotifier hub;
  private @Nullable PictureId page;
  private @Nullable PictureId photo;
  private @Nullable PictureId facing;
  private @Nullable PictureId beside;
  private boolean linked = true;
  private boolean comparing;

  public ShownPictures(MapDocument document, ChangeNotifier hub) {
    this.document = document;
    this.hub = hub;
    refresh();
  }

  /** The page on the left; none while the map has none. */
  public Optional<Page> page() {
    return Optional.ofNullable(page)
        .flatMap(document.laid()::picture)
        .filter(Page.class::isInstance)
        .map(Page.class::cast);
  }

  /** The photo on the right; none while the map has none. */
  public Optional<Photo> photo() {
    return Optional.ofNullable(photo)
        .flatMap(document.laid()::picture)
        .filter(Photo.class::isInstance)
        .map(Photo.class::cast);
  }

  /** What lies on the left: a page, or while two photos are lined up, the other of them. */
  public Optional<? extends Picture> left() {
    return facing().isPresent() ? facing() : page();
  }

  /** What lies on the right: a photo, or while two pages are lined up, the other of them. */
  public Optional<? extends Picture> right() {
    return beside().isPresent() ? beside() : photo();
  }

  /** What can be laid on the right: photos, or while two pages are lined up, pages. */
  public List<Picture> rights() {
    return beside().isPresent() ? pages() : photos();
  }

  /** Lays a picture of {@link #rights} on the right. */
  public void showRight(PictureId picture) {
    hub.check();
    if (beside == null) {
      show(picture);
    } else if (!picture.equals(beside)) {
      page = picture.equals(page) ? beside : page;
      beside = picture;
      hub.fire(Change.PICTURES);
    }
  }

  /** The page that is being lined up with the one on the left. */
  public Optional<Picture> beside() {
    return Optional.ofNullable(beside).flatMap(document.laid()::picture);
  }

  /** Lays the next page after the one on the left on the right; tells whether there is one. */
  public boolean layPageBeside() {
    List<PictureId> pages = pages().stream().map(Picture::id).toList();
    if (pages.size() < 2) {
      return false;
    }
    int shown = pages.indexOf(page);
    beside = pages.get((shown + 1) % pages.size());
    facing = null;
    comparing = false;
    hub.fire(Change.PICTURES);
    return true;
  }

  /** The photo that is being lined up with the one on the right. */
  public Optional<Picture> facing() {
    return Optional.ofNullable(facing).flatMap(document.laid()::picture);
  }

  /**
   * What can be laid on the left: pages, or while two photos are lined up, photos of that board.
   */
  public List<Picture> lefts() {
    return facing().isPresent() ? photosOfThatBoard() : pages();
  }

  private List<Picture> photosOfThatBoard() {
    return photos().stream()
        .filter(
            other ->
                photo().filter(shown -> other.shownBoard().equals(shown.shownBoard())).isPresent())
        .filter(other -> !isOwnShown() || !document.isOwn(other.id()))
        .toList();
  }

  /**
   * Lays another photo of the board shown on the left: its other side, or else any; beside a photo
   * of the unit the map's of the same side. Tells whether there is one.
   */
  public boolean face() {
    Optional<PictureId> other =
        (isOwnShown() ? sameSide() : otherSide())
            .map(Photo::id)
            .or(
                () ->
                    photosOfThatBoard().stream()
                        .map(Picture::id)
                        .filter(id -> !id.equals(photo))
                        .findFirst());
    other.ifPresent(this::face);
    return other.isPresent();
  }

  /** Lays this photo on the left; where it lies on the right, the two change places. */
  private void face(PictureId picture) {
    if (picture.equals(photo)) {
      photo = facing;
    }
    facing = picture;
    hub.fire(Change.PICTURES);
  }

  /** Lays a picture of {@link #lefts} on the left. */
  public void showLeft(PictureId picture) {
    hub.check();
    if (facing == null) {
      show(picture);
    } else if (comparing) {
      compare(picture, Objects.requireNonNull(photo));
    } else if (!picture.equals(facing)) {
      face(picture);
    }
  }

  /** Whether the photos of two channels lie side by side; both may be the same photo. */
  public boolean isComparing() {
    return comparing;
  }

  /** Lays these two photos side by side. */
  public void compare(PictureId left, PictureId right) {
    if (!comparing || !left.equals(facing) || !right.equals(photo)) {
      comparing = true;
      facing = left;
      photo = right;
      hub.fire(Change.PICTURES);
    }
  }

  /** A page lies on the left again. */
  public void unface() {
    comparing = false;
    if (facing != null || beside != null) {
      facing = null;
      beside = null;
      hub.fire(Change.PICTURES);
    }
  }

  /** All pages, in the order of their names. */
  public List<Picture> pages() {
    return document.laid().pictures().stream().filter(Page.class::isInstance).toList();
  }

  /** All photos of all boards, those of one board together, those of this unit last. */
  public List<Picture> photos() {
    return document.laid().pictures().stream()
        .filter(Photo.class::isInstance)
        .map(Photo.class::cast)
        .sorted(
            Comparator.comparing(Photo::board)
                .thenComparing(photo -> document.isOwn(photo.id()))
                .thenComparing(Photo::side))
        .map(Picture.class::cast)
        .toList();
  }

  /** Whether it is a photo of this very unit. */
  public boolean isOwn(PictureId picture) {
    return document.isOwn(picture);
  }

  public boolean shows(PictureId picture) {
    return picture.equals(page)
        || picture.equals(beside)
        || picture.equals(facing)
        || beside == null && picture.equals(photo);
  }

  /** Lays a picture on its place: a page left, a photo right. */
  public void show(PictureId picture) {
    hub.check();
    Optional<Picture> found = document.laid().picture(picture);
    if (found.isEmpty() || picture.equals(page) || picture.equals(photo)) {
      return;
    }
    if (picture.equals(facing) && !comparing) {
      facing = photo;
    }
    if (found.get() instanceof Page) {
      beside = picture.equals(beside) ? page : beside;
      page = picture;
    } else {
      photo = picture;
    }
    hub.fire(Change.PICTURES);
  }

  /** Whether what is chosen on one picture is brought into view on the other. */
  public boolean isLinked() {
    return linked;
  }

  public void setLinked(boolean linked) {
    hub.check();
    this.linked = linked;
    hub.fire(Change.PICTURES);
  }

  /** The photo of the other side of the same board, of the unit beside one of the unit. */
  public Optional<Photo> otherSide() {
    return others(false)
        .min(Comparator.comparing(other -> document.isOwn(other.id()) != isOwnShown()));
  }

  /** The photo of the same side, of the unit beside one of the map, and the other way about. */
  public Optional<Photo> sameSide() {
    return others(true).filter(other -> document.isOwn(other.id()) != isOwnShown()).findFirst();
  }

  private Stream<Photo> others(boolean same) {
    return photo().stream()
        .flatMap(
            shown ->
                photos().stream()
                    .map(Photo.class::cast)
                    .filter(other -> !other.id().equals(shown.id()))
                    .filter(other -> other.board().equals(shown.board()))
                    .filter(other -> other.side() == shown.side() == same));
  }

  private boolean isOwnShown() {
    return photo().filter(shown -> document.isOwn(shown.id())).isPresent();
  }

  /**
   * Takes note that the map changed: pictures that are gone are laid aside, the first ones shown.
   */
  public void refresh() {
    PictureId pageBefore = page;
    PictureId photoBefore = photo;
    PictureId facingBefore = facing;
    PictureId besideBefore = beside;
    BoardMap map = document.laid();
    if (page == null || !map.pictures().has(page)) {
      page = pages().stream().findFirst().map(Picture::id).orElse(null);
    }
    if (photo == null || !map.pictures().has(photo)) {
      photo =
          photos().stream()
              .map(Photo.class::cast)
              .filter(found -> found.side() == Side.COMPONENT)
              .findFirst()
              .or(() -> photos().stream().map(Photo.class::cast).findFirst())
              .map(Photo::id)
              .orElse(null);
    }
    if (facing != null && !map.pictures().has(facing)) {
      facing = null;
      comparing = false;
    }
    if (beside != null && (!map.pictures().has(beside) || beside.equals(page))) {
      beside = null;
    }
    if (!Objects.equals(page, pageBefore)
        || !Objects.equals(beside, besideBefore)
        || !Objects.equals(facing, facingBefore)
        || !Objects.equals(photo, photoBefore)) {
      hub.fire(Change.PICTURES);
    }
  }
}
