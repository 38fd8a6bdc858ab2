package org.relegend.viewer.session;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Side;

/** Which page lies on the left and which photo on the right, and whether they follow each other. */
public final class Desk {
  private final Document document;
  private final Hub hub;
  private @Nullable PictureId page;
  private @Nullable PictureId photo;
  private boolean linked = true;

  Desk(Document document, Hub hub) {
    this.document = document;
    this.hub = hub;
    settle();
  }

  /** The page on the left; none while the map has none. */
  public Optional<Page> page() {
    return Optional.ofNullable(page)
        .flatMap(document.map()::picture)
        .filter(Page.class::isInstance)
        .map(Page.class::cast);
  }

  /** The photo on the right; none while the map has none. */
  public Optional<Photo> photo() {
    return Optional.ofNullable(photo)
        .flatMap(document.map()::picture)
        .filter(Photo.class::isInstance)
        .map(Photo.class::cast);
  }

  /** All pages, in the order of their names. */
  public List<Picture> pages() {
    return document.map().pictures().stream().filter(Page.class::isInstance).toList();
  }

  /** All photos of all boards, those of one board together. */
  public List<Picture> photos() {
    return document.map().pictures().stream()
        .filter(Photo.class::isInstance)
        .map(Photo.class::cast)
        .sorted(java.util.Comparator.comparing(Photo::board).thenComparing(Photo::side))
        .map(Picture.class::cast)
        .toList();
  }

  public boolean shows(PictureId picture) {
    return picture.equals(page) || picture.equals(photo);
  }

  /** Lays a picture on its place: a page left, a photo right. */
  public void show(PictureId picture) {
    hub.check();
    Optional<Picture> found = document.map().picture(picture);
    if (found.isEmpty() || shows(picture)) {
      return;
    }
    if (found.get() instanceof Page) {
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

  /** The photo of the other side of the same board, if there is one. */
  Optional<Photo> otherSide() {
    return photo()
        .flatMap(
            shown ->
                photos().stream()
                    .map(Photo.class::cast)
                    .filter(other -> other.board().equals(shown.board()))
                    .filter(other -> other.side() != shown.side())
                    .findFirst());
  }

  /**
   * Takes note that the map changed: pictures that are gone are laid aside, the first ones shown.
   */
  void settle() {
    PictureId pageBefore = page;
    PictureId photoBefore = photo;
    BoardMap map = document.map();
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
    if (!java.util.Objects.equals(page, pageBefore)
        || !java.util.Objects.equals(photo, photoBefore)) {
      hub.fire(Change.PICTURES);
    }
  }
}
