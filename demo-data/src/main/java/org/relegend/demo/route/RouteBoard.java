package org.relegend.demo.route;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.relegend.demo.design.Artwork;
import org.relegend.demo.design.Link;
import org.relegend.demo.design.Spot;
import org.relegend.demo.design.Tables;
import org.relegend.demo.design.Track;

/** Routes the leveller's board anew and writes its artwork table to the file it is given. */
public final class RouteBoard {
  private RouteBoard() {}

  public static void main(String[] arguments) throws IOException {
    Rules rules = new Rules(77.0 / 120, 1.0, 0.45, 77, 100);
    Artwork artwork = new Router(Tables.leveller(), rules).route();
    Files.writeString(Path.of(arguments[0]), table(artwork), StandardCharsets.UTF_8);
  }

  private static String table(Artwork artwork) {
    StringBuilder text = new StringBuilder("net,kind,width_mm,points\n");
    for (Track track : artwork.tracks()) {
      row(text, track.net(), "track", track.width(), track.points());
    }
    for (Link link : artwork.links()) {
      row(text, link.net(), "link", 0.7, List.of(link.from(), link.to()));
    }
    return text.toString();
  }

  private static void row(
      StringBuilder text, String net, String kind, double width, List<Spot> points) {
    String run = points.stream().map(at -> at.x() + " " + at.y()).collect(Collectors.joining(";"));
    text.append(net + "," + kind + "," + width + "," + run + "\n");
  }
}
