package org.relegend.viewer.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.relegend.lineup.Extent;
import org.relegend.lineup.Facing;
import org.relegend.lineup.Fit;
import org.relegend.lineup.FitResult;
import org.relegend.lineup.Fitter;
import org.relegend.lineup.GreyImage;
import org.relegend.lineup.KeptLineUp;
import org.relegend.lineup.LineUp;
import org.relegend.lineup.LineUps;
import org.relegend.lineup.Model;
import org.relegend.lineup.PhotoLineUp;
import org.relegend.lineup.PhotoResult;
import org.relegend.lineup.PointPair;
import org.relegend.lineup.Refusal;
import org.relegend.lineup.Warning;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.Picture;
import org.relegend.map.PictureEdits;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Found;
import org.relegend.map.Point;
import org.relegend.scan.PhotoFile;
import org.relegend.scan.PictureException;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lineup FOLDER PICTURE PICTURE [--pairs pairs.csv]}. */
@Command(
    name = "lineup",
    description = {
      "Finds what carries points of one picture to another of the same board, and its error.",
      "Two photos of one side are lined up by themselves; where that would be a guess it says so",
      "(exit code 1) and asks for pairs. A picture is one of the map, or the file of a photo.",
      "With --accept the pairs are kept in the map, and what is placed on one picture shows on the",
      "other. Pairs that the map keeps are used again, unless --again is given."
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

  @Option(names = "--accept", description = "keep the pairs in the map; both must be its pictures")
  private boolean accept;

  @Option(names = "--again", description = "line up by itself, whatever pairs the map keeps")
  private boolean again;

  @Mixin private AuthorOption author = new AuthorOption();

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
      Details details,
      Found found,
      List<PointPair> kept) {}

  /** What only clicked pairs tell. */
  private record Details(List<String> warnings, List<Integer> doubtful) {
    static final Details NONE = new Details(List.of(), List.of());
  }

  @Override
  Answer answer() throws CommandFailure, StoreException, EditRefusedException {
    if (!accept) {
      MapFolder opened = openToRead(folder);
      Named first = named(opened, from);
      Named second = named(opened, to);
      return told(first, second, outcome(opened.map(), first, second), false);
    }
    try (MapFolder opened = openToChange(folder)) {
      Named first = named(opened, from);
      Named second = named(opened, to);
      if (first.known().isEmpty() || second.known().isEmpty()) {
        throw new CommandFailure(
            "--accept: %s is a file that the map doesn't have: add it first (add)"
                .formatted(first.known().isEmpty() ? from : to));
      }
      Outcome outcome = outcome(opened.map(), first, second);
      opened.save(new PictureEdits.PutPairs(kept(first, second, outcome)).applyTo(opened.map()));
      return told(first, second, outcome, true);
    }
  }

  private Outcome outcome(BoardMap map, Named first, Named second) throws CommandFailure {
    Path table = pairs;
    if (table != null) {
      return fitted(first, second, PairRows.read(table));
    }
    Optional<PicturePairs> known = keptBefore(map, first, second);
    return known.isPresent() && !again
        ? kept(map, known.get(), first.known().orElseThrow().id())
        : matched(first, second);
  }

  private static Optional<PicturePairs> keptBefore(BoardMap map, Named first, Named second) {
    return first
        .known()
        .flatMap(
            a ->
                second
                    .known()
                    .flatMap(b -> map.lineUps().find(PicturePairs.Key.of(a.id(), b.id()))));
  }

  private static PicturePairs kept(Named first, Named second, Outcome outcome, Attestation says) {
    return new PicturePairs(
        first.known().orElseThrow().id(),
        second.known().orElseThrow().id(),
        outcome.found(),
        outcome.kept().stream().map(pair -> new PicturePairs.Spot(pair.from(), pair.to())).toList(),
        List.of(says));
  }

  private PicturePairs kept(Named first, Named second, Outcome outcome) {
    Evidence evidence = outcome.found() == Found.CLICKED ? Evidence.SEEN : Evidence.MATCHED;
    return kept(first, second, outcome, author.attestation(evidence));
  }

  private static Outcome matched(Named first, Named second) throws CommandFailure {
    PhotoResult result = PhotoLineUp.of(grey(first), grey(second));
    if (result instanceof PhotoResult.Unaligned refused) {
      throw CommandFailure.doesNotHold(refused.message() + places(refused.places()));
    }
    PhotoResult.Aligned aligned = (PhotoResult.Aligned) result;
    PhotoResult.Evidence evidence = aligned.evidence();
    return new Outcome(
        Model.HOMOGRAPHY,
        aligned.lineUp(),
        evidence.rms(),
        evidence.p95(),
        evidence.confirming(),
        evidence.patches(),
        Details.NONE,
        Found.AUTOMATIC,
        aligned.kept());
  }

  /** By the pairs that the map keeps. */
  private static Outcome kept(BoardMap map, PicturePairs pairs, PictureId first)
      throws CommandFailure {
    KeptLineUp.Result result = LineUps.of(map).result(pairs.a(), pairs.b()).orElseThrow();
    if (result instanceof KeptLineUp.Refused refused) {
      throw CommandFailure.doesNotHold(refused.refusal().message());
    }
    KeptLineUp kept = ((KeptLineUp.Lined) result).kept();
    boolean forward = first.equals(pairs.a());
    LineUp lineUp = forward ? kept.lineUp() : kept.lineUp().reversed();
    List<PointPair> points =
        pairs.from(first).stream().map(spot -> new PointPair(spot.onA(), spot.onB())).toList();
    List<Integer> inliers =
        kept.fit().map(Fit::inliers).orElse(IntStream.range(0, points.size()).boxed().toList());
    double[] distances =
        inliers.stream()
            .map(points::get)
            .mapToDouble(pair -> lineUp.transform().apply(pair.from()).distance(pair.to()))
            .sorted()
            .toArray();
    return new Outcome(
        kept.fit().map(Fit::model).orElse(Model.HOMOGRAPHY),
        lineUp,
        Math.sqrt(Arrays.stream(distances).map(d -> d * d).average().orElse(0)),
        distances[(int) Math.ceil(0.95 * distances.length) - 1],
        distances.length,
        points.size(),
        kept.fit().map(LineUpCommand::details).orElse(Details.NONE),
        pairs.found(),
        points);
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
    Model model =
        first.known().isPresent() && second.known().isPresent()
            ? KeptLineUp.model(first.known().get(), pairs.size())
            : Model.richestFor(pairs.size());
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
        details(fit),
        Found.CLICKED,
        pairs);
  }

  private static Details details(Fit fit) {
    return new Details(
        fit.warnings().stream().map(Warning::message).toList(),
        fit.doubtful().stream().map(error -> error.pair() + 1).toList());
  }

  private static Facing facing(Named first, Named second) {
    return first.known().isPresent() && second.known().isPresent()
        ? KeptLineUp.facing(first.known().get(), second.known().get())
        : Facing.UNKNOWN;
  }

  private static Answer told(Named first, Named second, Outcome outcome, boolean accepted) {
    double[] matrix = outcome.lineUp().transform().matrix();
    double radius = outcome.lineUp().uncertainty(first.extent().centre()).radius95();
    return Answer.ok(
        () -> json(first, second, outcome, matrix, radius).put("accepted", accepted),
        out -> {
          print(out, first, second, outcome, radius);
          if (accepted) {
            out.println("kept in the map: what is placed on one shows on the other");
          }
        });
  }

  private static Json.Obj json(
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
