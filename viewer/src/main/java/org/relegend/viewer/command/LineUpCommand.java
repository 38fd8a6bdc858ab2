package org.relegend.viewer.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.relegend.lineup.Extent;
import org.relegend.lineup.Facing;
import org.relegend.lineup.Fit;
import org.relegend.lineup.FitResult;
import org.relegend.lineup.Fitter;
import org.relegend.lineup.GreyImage;
import org.relegend.lineup.LineUp;
import org.relegend.lineup.Model;
import org.relegend.lineup.PhotoLineUp;
import org.relegend.lineup.PhotoResult;
import org.relegend.lineup.PointPair;
import org.relegend.lineup.Refusal;
import org.relegend.lineup.Warning;
import org.relegend.map.BoardMap;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PictureException;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lineup FOLDER PICTURE PICTURE [--pairs pairs.csv]}. */
@Command(
    name = "lineup",
    description = {
      "Finds what carries points of one picture to another of the same board, and its error.",
      "Two photos of one side are lined up by themselves; where that would be a guess it says so",
      "(exit code 1) and asks for pairs. A picture is one of the map, or the file of a photo."
    })
final class LineUpCommand extends Answering {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "FROM", description = "a picture of the map, or a file")
  private String from = "";

  @Parameters(index = "2", paramLabel = "TO", description = "a picture of the map, or a file")
  private String to = "";

  @Option(names = "--pairs", paramLabel = "FILE", description = "a table of x1,y1,x2,y2")
  private @Nullable Path pairs;

  /** A picture that was named: its file, its size, and what the map knows of it. */
  private record Named(String name, Path file, Extent extent, Optional<Picture> known) {}

  /** What either way of lining up comes to. */
  private record Outcome(
      Model model,
      LineUp lineUp,
      double rms,
      double p95,
      int inliers,
      int pairs,
      Details details) {}

  /** What only clicked pairs tell. */
  private record Details(List<String> warnings, List<Integer> doubtful) {
    static final Details NONE = new Details(List.of(), List.of());
  }

  @Override
  Answer answer() throws CommandFailure, StoreException {
    try (MapFolder opened = MapFolder.openReadOnly(folder)) {
      Named first = named(opened, from);
      Named second = named(opened, to);
      Path table = pairs;
      if (table != null) {
        return told(first, second, fitted(first, second, PairRows.read(table)));
      }
      PhotoResult result = PhotoLineUp.of(grey(first), grey(second));
      if (result instanceof PhotoResult.Unaligned refused) {
        throw CommandFailure.doesNotHold(refused.message() + places(refused.places()));
      }
      PhotoResult.Aligned aligned = (PhotoResult.Aligned) result;
      PhotoResult.Evidence evidence = aligned.evidence();
      return told(
          first,
          second,
          new Outcome(
              Model.HOMOGRAPHY,
              aligned.lineUp(),
              evidence.rms(),
              evidence.p95(),
              evidence.confirming(),
              evidence.patches(),
              Details.NONE));
    }
  }

  private static String places(List<Point> places) {
    List<String> told = new ArrayList<>();
    places.forEach(p -> told.add(String.format(Locale.ROOT, "%.0f,%.0f", p.x(), p.y())));
    return told.isEmpty() ? "" : " Good places on the first: " + String.join("; ", told) + ".";
  }

  private static Named named(MapFolder opened, String name) throws CommandFailure {
    BoardMap map = opened.map();
    try {
      Optional<Picture> picture = map.picture(new PictureId(name));
      if (picture.isPresent()) {
        Picture known = picture.get();
        return new Named(
            name, opened.fileOf(known), Extent.of(known.width(), known.height()), picture);
      }
    } catch (IllegalArgumentException noPictureName) {
      // then it can only be a file
    }
    Path file = Path.of(name);
    if (!Files.isRegularFile(file)) {
      throw new CommandFailure("\"%s\" is neither a picture of the map nor a file".formatted(name));
    }
    try {
      PhotoFile photo = PhotoFile.probe(file);
      return new Named(
          name, file, Extent.of(photo.seenWidth(), photo.seenHeight()), Optional.empty());
    } catch (PictureException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    }
  }

  private static GreyImage grey(Named picture) throws CommandFailure {
    try {
      PhotoFile.probe(picture.file());
      return GreyImage.of(ImageIO.read(picture.file().toFile()));
    } catch (PictureException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    } catch (IOException unreadable) {
      throw new CommandFailure(picture.file() + ": can't be read: " + unreadable.getMessage());
    }
  }

  private static Outcome fitted(Named first, Named second, List<PointPair> pairs)
      throws CommandFailure {
    Model model = Model.richestFor(pairs.size());
    FitResult result =
        Fitter.of(model)
            .expecting(facing(first, second))
            .fit(pairs, first.extent(), second.extent());
    if (result instanceof Refusal refused) {
      throw CommandFailure.doesNotHold(refused.message());
    }
    Fit fit = (Fit) result;
    return new Outcome(
        fit.model(),
        fit.lineUp(),
        fit.rms(),
        fit.p95(),
        fit.inliers().size(),
        pairs.size(),
        new Details(
            fit.warnings().stream().map(Warning::message).toList(),
            fit.doubtful().stream().map(error -> error.pair() + 1).toList()));
  }

  private static Facing facing(Named first, Named second) {
    return first.known().isPresent()
            && second.known().isPresent()
            && first.known().get() instanceof Photo a
            && second.known().get() instanceof Photo b
        ? a.side() == b.side() ? Facing.SAME : Facing.OPPOSITE
        : Facing.UNKNOWN;
  }

  private static Answer told(Named first, Named second, Outcome outcome) {
    double[] matrix = outcome.lineUp().transform().matrix();
    double radius = outcome.lineUp().uncertainty(first.extent().centre()).radius95();
    return Answer.ok(
        () -> json(first, second, outcome, matrix, radius),
        out -> print(out, first, second, outcome, radius));
  }

  private static Json json(
      Named first, Named second, Outcome outcome, double[] matrix, double radius) {
    List<Json> numbers = new ArrayList<>();
    for (double number : matrix) {
      numbers.add(Json.of(number));
    }
    return Json.object()
        .put("from", first.name())
        .put("to", second.name())
        .put("model", outcome.model().title())
        .put("matrix", numbers)
        .put("rms", outcome.rms())
        .put("p95", outcome.p95())
        .put("inliers", outcome.inliers())
        .put("pairs", outcome.pairs())
        .put("mirrors", outcome.lineUp().transform().mirrors())
        .put("radius95", radius)
        .put("warnings", Json.texts(outcome.details().warnings()))
        .put("doubtful", Json.array(outcome.details().doubtful(), n -> Json.of((long) n)));
  }

  private static void print(
      PrintWriter out, Named first, Named second, Outcome outcome, double radius) {
    out.println(
        String.format(
            Locale.ROOT,
            "%s to %s: %s%s; %d of %d pairs agree, rms %.1f px, 95 %% within %.1f px",
            first.name(),
            second.name(),
            outcome.model().title(),
            outcome.lineUp().transform().mirrors() ? ", mirrored" : "",
            outcome.inliers(),
            outcome.pairs(),
            outcome.rms(),
            outcome.p95()));
    out.println(
        String.format(
            Locale.ROOT,
            "in the middle a carried place is within %.1f px, 95 of 100 times",
            radius));
    outcome.details().warnings().forEach(out::println);
    for (int pair : outcome.details().doubtful()) {
      out.println("look at pair " + pair + " again");
    }
  }
}
