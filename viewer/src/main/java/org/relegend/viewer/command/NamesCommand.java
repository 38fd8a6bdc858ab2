package org.relegend.viewer.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.EditGroup;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapIndex;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.Part;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.scan.PageNames;
import org.relegend.scan.PdfPages;
import org.relegend.scan.PictureException;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code names FOLDER PAGE [--accept]}. */
@Command(
    name = "names",
    description = {
      "Finds designators in a page's own text, with their positions and the values near them.",
      "With --accept, parts of the map that the page names just once are placed there."
    })
final class NamesCommand extends JsonCommand {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "PAGE", description = "the page, as page-1")
  private String page = "";

  @Option(names = "--accept", description = "place the parts found, where they aren't placed yet")
  private boolean accept;

  @Mixin private AuthorOption author = new AuthorOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException, EditRefusedException {
    if (!accept) {
      MapFolder opened = openToRead(folder);
      Page shown = page(opened.map());
      return result(opened.map(), shown, found(opened, shown), 0);
    }
    try (MapFolder opened = openToChange(folder)) {
      Page shown = page(opened.map());
      List<PageNames.Found> found = found(opened, shown);
      List<Placement> placements = placements(opened.map(), shown, found);
      if (!placements.isEmpty()) {
        EditGroup group =
            new EditGroup(
                "Place the names of " + shown.id(),
                List.copyOf(placements.stream().map(MapTables.PLACEMENTS::put).toList()));
        opened.save(group.applyTo(opened.map()));
      }
      return result(opened.map(), shown, found, placements.size());
    }
  }

  private Page page(BoardMap map) throws CommandFailure {
    Picture picture;
    try {
      picture = map.picture(new PictureId(page)).orElse(null);
    } catch (IllegalArgumentException noName) {
      throw new CommandFailure(String.valueOf(noName.getMessage()));
    }
    if (picture instanceof Page found) {
      return found;
    }
    List<String> pages =
        map.pictures().stream()
            .filter(Page.class::isInstance)
            .map(known -> known.id().text())
            .toList();
    throw new CommandFailure(
        pages.isEmpty()
            ? "the map has no pages yet: add one first (add)"
            : "the map has no page \"%s\": its pages are %s"
                .formatted(page, String.join(", ", pages)));
  }

  private static List<PageNames.Found> found(MapFolder opened, Page page) throws CommandFailure {
    Path file = opened.fileOf(page);
    if (!page.file().endsWith(".pdf")) {
      return List.of();
    }
    try (PdfPages pages = PdfPages.open(file)) {
      return PageNames.among(pages.words(page.number()));
    } catch (PictureException unreadable) {
      throw new CommandFailure(String.valueOf(unreadable.getMessage()));
    } catch (IOException unreadable) {
      throw new CommandFailure(file + ": can't be read: " + unreadable.getMessage());
    }
  }

  private List<Placement> placements(BoardMap map, Page page, List<PageNames.Found> found) {
    MapIndex index = new MapIndex(map);
    Attestation seen = author.attestation(Evidence.SEEN);
    Map<Part, List<PageNames.Found>> byPart = new LinkedHashMap<>();
    for (PageNames.Found name : found) {
      List<Part> parts = index.partsNamed(name.designator());
      if (parts.size() == 1) {
        byPart.computeIfAbsent(parts.get(0), part -> new ArrayList<>()).add(name);
      }
    }
    List<Placement> placements = new ArrayList<>();
    byPart.forEach(
        (part, names) -> {
          Subject subject = Subject.of(part.id());
          if (names.size() == 1
              && !map.placements().has(new Placement.Key(page.id(), subject, 1))) {
            placements.add(
                new Placement(page.id(), subject, names.get(0).word().box().centre(), seen));
          }
        });
    return placements;
  }

  private CommandResult result(BoardMap map, Page page, List<PageNames.Found> found, int placed) {
    MapIndex index = new MapIndex(map);
    return CommandResult.ok(
        () ->
            Json.object()
                .put("page", page.id().text())
                .put("names", Json.array(found, name -> json(index, name)))
                .put("placed", placed),
        out -> print(out, index, found, outcome(index, page, found, placed)));
  }

  /** How many were placed now, and why the others were not. */
  private String outcome(MapIndex index, Page page, List<PageNames.Found> found, int placed) {
    if (!accept) {
      return "none placed; --accept places them";
    }
    int unknown = 0;
    int unsure = 0;
    int there = -placed;
    Map<Part, Integer> times = new LinkedHashMap<>();
    for (PageNames.Found name : found) {
      List<Part> parts = index.partsNamed(name.designator());
      unknown += parts.isEmpty() ? 1 : 0;
      unsure += parts.size() > 1 ? 1 : 0;
      if (parts.size() == 1) {
        times.merge(parts.get(0), 1, Integer::sum);
      }
    }
    for (int count : times.values()) {
      unsure += count > 1 ? count : 0;
      there += count > 1 ? 0 : 1;
    }
    List<String> lines = new ArrayList<>(List.of(placed + " placed"));
    addIfAny(lines, there, "placed on %s already".formatted(page.id()));
    addIfAny(lines, unknown, "not in the map");
    addIfAny(lines, unsure, "not placed, for they stand there more than once");
    return String.join(", ", lines);
  }

  private static void addIfAny(List<String> lines, int count, String what) {
    if (count > 0) {
      lines.add(count + " " + what);
    }
  }

  private static Json json(MapIndex index, PageNames.Found name) {
    return Json.object()
        .put("designator", name.designator().text())
        .put("x", name.word().box().centre().x())
        .put("y", name.word().box().centre().y())
        .put("width", name.word().box().width())
        .put("height", name.word().box().height())
        .put("known", !index.partsNamed(name.designator()).isEmpty())
        .put("values", Json.texts(name.values()));
  }

  private static void print(
      PrintWriter out, MapIndex index, List<PageNames.Found> found, String outcome) {
    TextTable table = new TextTable();
    for (PageNames.Found name : found) {
      table.row(
          name.designator().text(),
          "at %.0f,%.0f".formatted(name.word().box().centre().x(), name.word().box().centre().y()),
          String.join(" or ", name.values()),
          index.partsNamed(name.designator()).isEmpty() ? "not in the map" : "");
    }
    table.print(out, "");
    if (found.isEmpty()) {
      out.println("no designators in this page's text; a scan has none");
    } else {
      out.println("%d names found, %s".formatted(found.size(), outcome));
    }
  }
}
