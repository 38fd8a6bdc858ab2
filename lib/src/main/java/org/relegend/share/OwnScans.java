package org.relegend.share;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.relegend.lineup.Extent;
import org.relegend.lineup.GreyImage;
import org.relegend.lineup.ScanLineUp;
import org.relegend.lineup.ScanResult;
import org.relegend.lineup.ScanResult.Aligned;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.map.PicturePairs.Spot;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;
import org.relegend.scan.GreyPage;
import org.relegend.scan.PictureException;
import org.relegend.scan.PictureIntake;
import org.relegend.scan.Progress;
import org.relegend.store.Digests;
import org.relegend.store.StoreException;

/**
 * Puts one's own scans of a schematic in the place of pages that a pack left out. The very same
 * file becomes the page's file. Any other stays a page of its own, since places on the two differ,
 * and is lined up with the one that it shows, by the pins that were placed there.
 */
public final class OwnScans {
  private static final int PIXELS = 2_000_000;

  /**
   * What became of a scan, or of one page of it.
   *
   * @param number of the page in the file, from 1
   * @param shown what it shows, of the pictures that have no file; none where that can't be told
   * @param own the page that it became in the map; none where it became the other one's file
   * @param why it isn't lined up; empty where it is
   */
  public record ScanOutcome(
      Path scan, int number, Optional<Picture> shown, Optional<PictureId> own, String why) {
    /** For people: what became of it, and what is left to do. */
    public String line() {
      String name = number > 1 ? "page %d of %s".formatted(number, scan) : scan.toString();
      if (own.isEmpty()) {
        return shown
            .map(same -> "%s is the file of %s".formatted(scan, same.caption()))
            .orElse("%s: %s".formatted(name, why));
      }
      return shown
          .map(
              page ->
                  "%s is in the map as %s and shows page %s: what is placed there shows on it"
                      .formatted(name, own.get(), page.caption()))
          .orElse("%s is in the map as %s, not lined up: %s".formatted(name, own.get(), why));
    }
  }

  /** A page of one's own, and the absent one that it shows most surely. */
  private record Match(Page shown, Aligned found) {}

  private final Path folder;
  private final Attestation says;
  private final boolean anyScan;
  private final List<ScanOutcome> results = new ArrayList<>();
  private final List<Edit> edits = new ArrayList<>();
  private BoardMap map;

  /**
   * @param folder of the map
   * @param says who stands for the line-ups
   */
  public OwnScans(Path folder, BoardMap map, Attestation says) {
    this(folder, map, says, true);
  }

  /**
   * @param anyScan whether a scan of one page becomes a page of the map also where it isn't known
   *     what it shows; else nothing is done with it
   */
  public OwnScans(Path folder, BoardMap map, Attestation says, boolean anyScan) {
    this.folder = folder;
    this.map = map;
    this.says = says;
    this.anyScan = anyScan;
  }

  /** Whether a map has a page without its file. */
  public static boolean isPageMissing(Path folder, BoardMap map) {
    return map.pictures().stream()
        .anyMatch(p -> p instanceof Page && !Files.exists(folder.resolve(p.file())));
  }

  /** The map with the scans that were taken. */
  public BoardMap map() {
    return map;
  }

  /** What leads there, as one edit. */
  public EditGroup edit(String title) {
    return new EditGroup(title, edits);
  }

  public List<ScanOutcome> results() {
    return List.copyOf(results);
  }

  /** Pictures of the map that have no file. */
  public List<Picture> missing() {
    return map.pictures().stream().filter(p -> !Files.exists(folder.resolve(p.file()))).toList();
  }

  /**
   * Takes a scan; each page of a PDF is looked at.
   *
   * @throws PictureException where it can't be read
   * @throws StoreException where it can't be read back
   * @throws IOException where it can't be copied
   * @throws CancellationException where the progress says so
   */
  public void take(Path scan, Progress progress)
      throws PictureException, StoreException, IOException {
    if (isTheFile(scan)) {
      return;
    }
    int pages = PictureIntake.pagesIn(scan);
    for (int number = 1; number <= pages; number++) {
      if (!progress.at((number - 1.0) / pages)) {
        throw new CancellationException("lining up " + scan);
      }
      take(scan, number, pages == 1 && anyScan);
    }
    if (results.stream().noneMatch(one -> one.scan().equals(scan))) {
      results.add(
          new ScanOutcome(
              scan,
              1,
              Optional.empty(),
              Optional.empty(),
              "none of its %d pages is known by the pins placed on a page that is missing; add the "
                      .formatted(pages)
                  + "right one (add) and line the two up by pairs"));
    }
  }

  /** Whether it is an absent picture's own file, which it then becomes. */
  private boolean isTheFile(Path scan) throws StoreException, IOException {
    String digest = Digests.sha256(scan);
    List<Picture> same =
        missing().stream().filter(picture -> picture.sha256().equals(digest)).toList();
    for (Picture picture : same) {
      Path place = folder.resolve(picture.file());
      if (!Files.exists(place)) {
        Files.createDirectories(place.getParent() == null ? folder : place.getParent());
        Files.copy(scan, place);
      }
      results.add(new ScanOutcome(scan, 1, Optional.of(picture), Optional.empty(), ""));
    }
    return !same.isEmpty();
  }

  private void take(Path scan, int number, boolean alone) throws PictureException, StoreException {
    GreyPage grey = GreyPage.of(scan, number, PIXELS);
    GreyImage image = GreyImage.of(grey.width(), grey.height(), grey.brightness());
    List<Match> matches = new ArrayList<>();
    String why = "no page of the map is without its file";
    double nearest = -1;
    for (Picture picture : missing()) {
      if (picture instanceof Page page) {
        ScanResult result =
            ScanLineUp.of(image, Extent.of(page.width(), page.height()), pins(page.id()));
        if (result instanceof Aligned found) {
          matches.add(new Match(page, found));
        } else if (result.evidence().sure() > nearest) {
          nearest = result.evidence().sure();
          why = ((ScanResult.Unaligned) result).message();
        }
      }
    }
    Optional<Match> best =
        matches.stream().max(Comparator.comparingDouble(m -> m.found().evidence().sure()));
    if (best.isEmpty() && !alone) {
      return;
    }
    Page own = added(scan, number);
    best.ifPresent(match -> lineUp(own, match, grey));
    results.add(
        new ScanOutcome(
            scan,
            number,
            best.map(Match::shown).map(page -> page),
            Optional.of(own.id()),
            best.isPresent() ? "" : why));
  }

  private List<Point> pins(PictureId page) {
    return map.placements().stream()
        .filter(p -> p.picture().equals(page) && p.subject() instanceof Subject.OfPin)
        .map(Placement::at)
        .toList();
  }

  private Page added(Path scan, int number) throws PictureException, StoreException {
    EditGroup adding =
        new PictureIntake(folder, map).pages(scan, "", List.of(number), Progress.UNWATCHED);
    apply(adding.steps());
    return (Page) MapTables.PICTURES.putBy(adding.steps()).get(0);
  }

  private void lineUp(Page own, Match match, GreyPage grey) {
    double scale = own.width() / grey.width();
    List<Spot> spots =
        match.found().kept().stream()
            .map(
                pair ->
                    new Spot(pair.from(), new Point(scale * pair.to().x(), scale * pair.to().y())))
            .toList();
    apply(
        List.of(
            MapTables.LINE_UPS.put(
                new PicturePairs(
                    match.shown().id(), own.id(), Origin.AUTOMATIC, spots, List.of(says)))));
  }

  private void apply(List<Edit> steps) {
    try {
      for (Edit step : steps) {
        map = step.applyTo(map);
        edits.add(step);
      }
    } catch (EditRefusedException impossible) {
      throw new IllegalStateException(impossible); // they only add what wasn't there
    }
  }
}
