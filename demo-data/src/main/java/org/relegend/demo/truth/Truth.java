package org.relegend.demo.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Hole;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.page.Dot;
import org.relegend.demo.page.Mark;
import org.relegend.demo.part.Body;
import org.relegend.demo.photo.Camera;
import org.relegend.demo.photo.Shot;
import org.relegend.demo.photo.Side;
import org.relegend.demo.ray.Vec;

/** Works out the true places on photos and pages. */
public final class Truth {
  private Truth() {}

  /** All pads of a photo, its holes and corners, and on the component side its bodies. */
  public static List<Place> of(String picture, Shot shot) {
    Design design = shot.specimen().design();
    Camera.View view = shot.camera().view();
    List<Place> places = new ArrayList<>();
    if (shot.side() == Side.COMPONENT) {
      for (Body body : shot.specimen().bodies().values()) {
        List<Spot> outline = Hull.of(body.hull().stream().map(view::see).toList());
        Spot at = view.see(body.middle());
        places.add(new Place(picture, Place.Kind.BODY, body.designator(), at, outline));
      }
    }
    for (PlacedPin pin : design.pins()) {
      places.add(point(picture, Place.Kind.PAD, pin.name(), seen(shot, pin.at())));
    }
    int count = 0;
    for (Hole hole : design.holes()) {
      count++;
      places.add(point(picture, Place.Kind.HOLE, "hole-" + count, seen(shot, hole.at())));
    }
    Spot[] corners = {
      new Spot(0, 0),
      new Spot(design.width(), 0),
      new Spot(design.width(), design.height()),
      new Spot(0, design.height())
    };
    for (int k = 0; k < corners.length; k++) {
      places.add(point(picture, Place.Kind.CORNER, "corner-" + (k + 1), seen(shot, corners[k])));
    }
    return places;
  }

  /** What stands on a page. */
  public static List<Place> of(String picture, List<Mark> marks) {
    return marks.stream()
        .map(
            mark ->
                new Place(
                    picture,
                    Place.Kind.valueOf(mark.kind().name()),
                    mark.subject(),
                    spot(mark.at()),
                    mark.outline().stream().map(Truth::spot).toList()))
        .toList();
  }

  /** Where a photo shows a place of the board, given in millimetres of the component side. */
  public static Spot seen(Shot shot, Spot at) {
    double width = shot.specimen().design().width();
    double x = shot.side() == Side.COMPONENT ? at.x() : width - at.x();
    return shot.camera().view().see(new Vec(x, at.y(), 0));
  }

  /** The places as a table: {@code picture,kind,subject,x,y}. */
  public static String table(List<Place> places) {
    StringBuilder text = new StringBuilder("picture,kind,subject,x,y\n");
    for (Place place : places) {
      text.append(head(place)).append(',').append(numbers(place.at(), ",")).append('\n');
    }
    return text.toString();
  }

  /** The outlines as a table: {@code picture,kind,subject,outline}, corners as {@code x y;x y}. */
  public static String outlines(List<Place> places) {
    StringBuilder text = new StringBuilder("picture,kind,subject,outline\n");
    for (Place place : places) {
      if (!place.outline().isEmpty()) {
        List<String> corners =
            place.outline().stream().map(corner -> numbers(corner, " ")).toList();
        text.append(head(place)).append(',').append(String.join(";", corners)).append('\n');
      }
    }
    return text.toString();
  }

  private static String head(Place place) {
    String kind = place.kind().name().toLowerCase(Locale.ROOT);
    return place.picture() + "," + kind + "," + place.subject();
  }

  private static String numbers(Spot at, String between) {
    return rounded(at.x()) + between + rounded(at.y());
  }

  /** To a hundredth, without the needless digits a formatter would print. */
  private static String rounded(double value) {
    long hundredths = Math.round(value * 100);
    long rest = Math.abs(hundredths % 100);
    String sign = hundredths < 0 ? "-" : "";
    return sign + Math.abs(hundredths / 100) + "." + (rest < 10 ? "0" : "") + rest;
  }

  private static Place point(String picture, Place.Kind kind, String subject, Spot at) {
    return new Place(picture, kind, subject, at, List.of());
  }

  private static Spot spot(Dot dot) {
    return new Spot(dot.x(), dot.y());
  }
}
