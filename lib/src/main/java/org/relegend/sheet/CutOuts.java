package org.relegend.sheet;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.relegend.map.BoardMap;
import org.relegend.map.HazardZone;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.scan.PictureException;

/**
 * Cut-outs of pages and photos with what is marked on them. A picture whose file can't be read is
 * an empty frame that says so, and the rest is printed all the same.
 */
final class CutOuts {
  private static final double CAPTION = 7.5;
  private static final double CAPTION_LINE = 9;
  private static final int CAPTION_LINES = 2;

  /** Room for the lines of a caption, in points. */
  private static final double CAPTION_ROOM = CAPTION_LINES * CAPTION_LINE + 3;

  private static final double GAP = 8;
  private static final double PAGE_HEIGHT = 205;
  private static final double PHOTO_HEIGHT = 190;

  /** Below this part of their height pictures go on another page instead. */
  private static final double SMALLEST = 0.7;

  /** One picture with its marks. */
  record View(Picture picture, List<PrintedMark> marks) {
    View {
      marks = List.copyOf(marks);
    }

    List<Point> points() {
      return marks.stream().map(PrintedMark::at).toList();
    }
  }

  private final BoardMap map;
  private final Function<Picture, Path> files;
  private final PrintPixels pixels = new PrintPixels();
  private final Set<String> troubles = new LinkedHashSet<>();

  CutOuts(BoardMap map, Function<Picture, Path> files) {
    this.map = map;
    this.files = files;
  }

  /** What could not be read, one sentence each. */
  List<String> troubles() {
    return List.copyOf(troubles);
  }

  /**
   * Pages over the whole width, photos two and two; somewhat smaller where all then fits on the
   * page that was begun.
   *
   * @param below height of what follows, in points
   */
  void draw(PageFlow flow, List<View> views, double below) {
    List<View> pages = views.stream().filter(view -> view.picture() instanceof Page).toList();
    List<View> photos = views.stream().filter(view -> view.picture() instanceof Photo).toList();
    int rows = pages.size() + (photos.size() + 1) / 2;
    double high = pages.size() * PAGE_HEIGHT + (rows - pages.size()) * PHOTO_HEIGHT;
    double fitting = (flow.room() - below - rows * (CAPTION_ROOM + GAP)) / high;
    double factor = fitting < SMALLEST ? 1 : Math.min(1, fitting);
    for (View page : pages) {
      row(flow, List.of(page), PAGE_HEIGHT * factor);
    }
    for (int i = 0; i < photos.size(); i += 2) {
      row(flow, photos.subList(i, Math.min(photos.size(), i + 2)), PHOTO_HEIGHT * factor);
    }
  }

  /** Whole pictures with their zones, two and two. */
  void whole(PageFlow flow, List<Picture> pictures) {
    for (int i = 0; i < pictures.size(); i += 2) {
      row(
          flow,
          pictures.subList(i, Math.min(pictures.size(), i + 2)).stream()
              .map(picture -> new View(picture, List.of()))
              .toList(),
          225);
    }
  }

  /** One whole picture over the width of the paper, with its marks. */
  void large(PageFlow flow, View view) {
    double height = Math.min(360, flow.press().width() * 0.75);
    flow.need(height + CAPTION_ROOM);
    Rectangle2D room =
        new Rectangle2D.Double(
            flow.press().left(), flow.y() + CAPTION_ROOM, flow.press().width(), height);
    PrintWindow window = PrintWindow.whole(view.picture(), room);
    draw(flow, view, window);
    flow.down(window.frame().getHeight() + CAPTION_ROOM + GAP);
  }

  private void row(PageFlow flow, List<View> views, double height) {
    flow.need(height + CAPTION_ROOM);
    int columns = views.size();
    double width = (flow.press().width() - GAP * (columns - 1)) / columns;
    double most = 0;
    for (int i = 0; i < views.size(); i++) {
      View view = views.get(i);
      Rectangle2D room =
          new Rectangle2D.Double(
              flow.press().left() + i * (width + GAP), flow.y() + CAPTION_ROOM, width, height);
      PrintWindow window =
          view.marks().isEmpty()
              ? PrintWindow.whole(view.picture(), room)
              : PrintWindow.around(view.points(), view.picture(), room);
      draw(flow, view, window);
      most = Math.max(most, window.frame().getHeight());
    }
    flow.down(most + CAPTION_ROOM + GAP);
  }

  private void draw(PageFlow flow, View view, PrintWindow window) {
    SheetPage leaf = flow.leaf();
    Rectangle2D frame = window.frame();
    List<String> caption = caption(leaf.face(), view.picture(), frame.getWidth());
    for (int i = 0; i < caption.size(); i++) {
      double up = (caption.size() - 1 - i) * CAPTION_LINE;
      leaf.text(caption.get(i), frame.getX(), frame.getY() - 4 - up, CAPTION, false);
    }
    Optional<PDImageXObject> image = image(flow, view.picture(), window);
    if (image.isPresent()) {
      leaf.image(image.get(), frame);
    } else {
      List<String> lines =
          leaf.face()
              .wrapped(
                  "The picture %s can't be read; places are marked on an empty frame."
                      .formatted(view.picture().file()),
                  CAPTION,
                  frame.getWidth() - 8);
      for (int i = 0; i < lines.size(); i++) {
        leaf.text(lines.get(i), frame.getX() + 4, frame.getY() + (i + 1) * 10, CAPTION, false);
      }
    }
    leaf.stroke(frame, 0.6, Color.BLACK);
    PrintedZones warnings = new PrintedZones(leaf, window, zonesOn(view.picture().id()));
    new MarkPainter(leaf, window, warnings.covered()).draw(view.marks());
    warnings.draw(); // last, over everything
  }

  private Optional<PDImageXObject> image(PageFlow flow, Picture picture, PrintWindow window) {
    try {
      return Optional.of(
          pixels.cut(
              flow.press().document(),
              picture,
              files.apply(picture),
              window.shown(),
              window.frame().getWidth()));
    } catch (PictureException unreadable) {
      troubles.add(String.valueOf(unreadable.getMessage()));
      return Optional.empty();
    }
  }

  List<HazardZone> zonesOn(PictureId picture) {
    List<HazardZone> zones = new ArrayList<>();
    map.zones().stream().filter(zone -> zone.picture().equals(picture)).forEach(zones::add);
    return zones;
  }

  /**
   * Says which side one looks at, since a part of a picture doesn't show it, and what hazard areas
   * the whole picture has. Where all of it has no room in two lines, the picture's own name is cut
   * and not what is told of it.
   */
  private List<String> caption(Typeface face, Picture picture, double width) {
    String text = captionText(picture);
    if (face.width(picture.caption() + text, CAPTION) <= width) {
      return List.of(face.printable(picture.caption() + text));
    }
    double room = Math.max(width / 4, 2 * width - 1.25 * face.width(text, CAPTION));
    String name = face.shortened(picture.caption(), CAPTION, Math.min(room, width));
    List<String> lines = face.wrapped(name + text, CAPTION, width);
    return lines.subList(0, Math.min(CAPTION_LINES, lines.size()));
  }

  private String captionText(Picture picture) {
    String side = "";
    if (picture instanceof Photo photo) {
      side =
          photo.side() == Side.SOLDER
              ? ", seen from below: mirrored"
              : ", seen from the component side";
    }
    int zones = zonesOn(picture.id()).size();
    return side
        + switch (zones) {
          case 0 -> ". No hazard areas have been marked on it.";
          case 1 -> ". 1 hazard area.";
          default -> ". %d hazard areas.".formatted(zones);
        };
  }
}
