package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.relegend.lineup.Fit;
import org.relegend.lineup.FitResult;
import org.relegend.lineup.FitWarning;
import org.relegend.lineup.Fitter;
import org.relegend.lineup.LineUp;
import org.relegend.lineup.LineUps;
import org.relegend.lineup.PhotoResult;
import org.relegend.lineup.PointPair;
import org.relegend.lineup.Refusal;
import org.relegend.lineup.SideRelation;
import org.relegend.lineup.StoredLineUp;
import org.relegend.lineup.TransformModel;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.map.Point;
import org.relegend.scan.MatchImage;
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
      "Finds what carries points of one picture to another, and its error.",
      "Both show the same board.",
      "Two photos of one side, or two scans of a page, are lined up by themselves; where that would",
      "be a guess it says so (exit code 1) and asks for pairs. A picture is one of the map, or the",
      "file of a photo; TO may also be a folder of photos: the one that lines up best is taken.",
      "With --accept the pairs are kept in the map, and what is placed on one picture shows on the",
      "other. Pairs that the map keeps are used again, unless --again is given."
    })
final class LineUpCommand extends JsonCommand {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "FROM", description = "a picture of the map, or a file")
  private String from = "";

  @Parameters(
      index = "2",
      paramLabel = "TO",
      description = "a picture of the map, a file, or a folder")
  private String to = "";

  @Option(names = "--pairs", paramLabel = "FILE", description = "a table of x1,y1,x2,y2")
  private @Nullable Path pairs;

  @Option(names = "--accept", description = "keep the pairs in the map; both must be its pictures")
  private boolean accept;

  @Option(names = "--again", description = "line up by itself, whatever pairs the map keeps")
  private boolean again;

  @Mixin private AuthorOption author = new AuthorOption();

  /** What either way of lining up comes to. */
  private record Outcome(
      NamedPicture first,
      NamedPicture second,
      TransformModel model,
      LineUp lineUp,
      double rms,
      double p95,
      int inliers,
      int pairs,
      Details details,
      Origin origin,
      List<PointPair> kept) {}

  /** What only clicked pairs tell. */
  private record Details(List<String> warnings, List<Integer> doubtful) {
    static final Details NONE = new Details(List.of(), List.of());
  }

  @Override
  CommandResult answer() throws CommandFailure, StoreException, EditRefusedException {
    if (!accept) {
      MapFolder opened = openToRead(folder);
      NamedPicture first = NamedPicture.one(opened, from);
      List<NamedPicture> others = NamedPicture.all(opened, to);
      return result(
          others.size() > 1 && pairs == null
              ? bestOf(first, others)
              : outcome(opened.map(), first, NamedPicture.one(opened, to)),
          false);
    }
    try (MapFolder opened = openToChange(folder)) {
      NamedPicture first = NamedPicture.one(opened, from);
      NamedPicture second = NamedPicture.one(opened, to);
      if (first.known().isEmpty() || second.known().isEmpty()) {
        throw new CommandFailure(
            "--accept: %s is a file that the map doesn't have: add it first (add)"
                .formatted(first.known().isEmpty() ? from : to));
      }
      Outcome outcome = outcome(opened.map(), first, second);
      opened.save(MapTables.LINE_UPS.put(kept(outcome)).applyTo(opened.map()));
      return result(outcome, true);
    }
  }

  /** That photo of a folder which lines up by itself, with the most agreement. */
  private static Outcome bestOf(NamedPicture first, List<NamedPicture> others)
      throws CommandFailure {
    MatchImage pixels = first.matchable();
    Optional<Outcome> best = Optional.empty();
    for (NamedPicture other : others) {
      if (pixels.lineUp(other.matchable(), () -> false) instanceof PhotoResult.Aligned aligned
          && best.map(b -> b.inliers() < aligned.evidence().confirming()).orElse(true)) {
        best = Optional.of(matched(first, other, aligned));
      }
    }
    return best.orElseThrow(
        () ->
            CommandFailure.doesNotHold(
                "None of the %d photos lines up with %s by itself (%s). Name one of them, and click four pairs (--pairs)."
                    .formatted(
                        others.size(),
                        first.name(),
                        String.join(", ", others.stream().map(NamedPicture::name).toList()))));
  }

  private Outcome outcome(BoardMap map, NamedPicture first, NamedPicture second)
      throws CommandFailure {
    Path table = pairs;
    if (table != null) {
      return fitted(first, second, PairRows.read(table));
    }
    Optional<PicturePairs> known = keptBefore(map, first, second);
    return known.isPresent() && !again
        ? kept(map, known.get(), first, second)
        : matched(first, second);
  }

  private static Optional<PicturePairs> keptBefore(
      BoardMap map, NamedPicture first, NamedPicture second) {
    return first
        .known()
        .flatMap(
            a ->
                second
                    .known()
                    .flatMap(b -> map.lineUps().find(PicturePairs.Key.of(a.id(), b.id()))));
  }

  private PicturePairs kept(Outcome outcome) {
    Evidence evidence = outcome.origin() == Origin.CLICKED ? Evidence.SEEN : Evidence.MATCHED;
    return new PicturePairs(
        outcome.first().known().orElseThrow().id(),
        outcome.second().known().orElseThrow().id(),
        outcome.origin(),
        outcome.kept().stream().map(pair -> new PicturePairs.Spot(pair.from(), pair.to())).toList(),
        List.of(author.attestation(evidence)));
  }

  private static Outcome matched(NamedPicture first, NamedPicture second) throws CommandFailure {
    PhotoResult result = first.matchable().lineUp(second.matchable(), () -> false);
    if (result instanceof PhotoResult.Unaligned refused) {
      throw CommandFailure.doesNotHold(refused.message() + places(refused.places()));
    }
    return matched(first, second, (PhotoResult.Aligned) result);
  }

  private static Outcome matched(
      NamedPicture first, NamedPicture second, PhotoResult.Aligned aligned) {
    PhotoResult.Evidence evidence = aligned.evidence();
    return new Outcome(
        first,
        second,
        TransformModel.HOMOGRAPHY,
        aligned.lineUp(),
        evidence.rms(),
        evidence.p95(),
        evidence.confirming(),
        evidence.patches(),
        Details.NONE,
        Origin.AUTOMATIC,
        aligned.kept());
  }

  /** By the pairs that the map keeps. */
  private static Outcome kept(
      BoardMap map, PicturePairs pairs, NamedPicture first, NamedPicture second)
      throws CommandFailure {
    PictureId from = first.known().orElseThrow().id();
    StoredLineUp.Result result = LineUps.of(map).result(pairs.a(), pairs.b()).orElseThrow();
    if (result instanceof StoredLineUp.Refused refused) {
      throw CommandFailure.doesNotHold(refused.refusal().message());
    }
    StoredLineUp kept = ((StoredLineUp.Lined) result).kept();
    boolean forward = from.equals(pairs.a());
    LineUp lineUp = forward ? kept.lineUp() : kept.lineUp().reversed();
    List<PointPair> points =
        pairs.from(from).stream().map(spot -> new PointPair(spot.onA(), spot.onB())).toList();
    List<Integer> inliers =
        kept.fit().map(Fit::inliers).orElse(IntStream.range(0, points.size()).boxed().toList());
    double[] distances =
        inliers.stream()
            .map(points::get)
            .mapToDouble(pair -> lineUp.transform().apply(pair.from()).distance(pair.to()))
            .sorted()
            .toArray();
    return new Outcome(
        first,
        second,
        kept.fit().map(Fit::model).orElse(TransformModel.HOMOGRAPHY),
        lineUp,
        Math.sqrt(Arrays.stream(distances).map(d -> d * d).average().orElse(0)),
        distances[(int) Math.ceil(0.95 * distances.length) - 1],
        distances.length,
        points.size(),
        kept.fit().map(LineUpCommand::details).orElse(Details.NONE),
        pairs.origin(),
        points);
  }

  private static String places(List<Point> places) {
    List<String> lines = new ArrayList<>();
    places.forEach(p -> lines.add(String.format(Locale.ROOT, "%.0f,%.0f", p.x(), p.y())));
    return lines.isEmpty() ? "" : " Good places on the first: " + String.join("; ", lines) + ".";
  }

  private static Outcome fitted(NamedPicture first, NamedPicture second, List<PointPair> pairs)
      throws CommandFailure {
    TransformModel model =
        first.known().isPresent() && second.known().isPresent()
            ? StoredLineUp.model(first.known().get(), pairs.size())
            : TransformModel.richestFor(pairs.size());
    FitResult result =
        Fitter.of(model)
            .expecting(facing(first, second))
            .fit(pairs, first.extent(), second.extent());
    if (result instanceof Refusal refused) {
      throw CommandFailure.doesNotHold(refused.message());
    }
    Fit fit = (Fit) result;
    return new Outcome(
        first,
        second,
        fit.model(),
        fit.lineUp(),
        fit.rms(),
        fit.p95(),
        fit.inliers().size(),
        pairs.size(),
        details(fit),
        Origin.CLICKED,
        pairs);
  }

  private static Details details(Fit fit) {
    return new Details(
        fit.warnings().stream().map(FitWarning::message).toList(),
        fit.doubtful().stream().map(error -> error.pair() + 1).toList());
  }

  private static SideRelation facing(NamedPicture first, NamedPicture second) {
    return first.known().isPresent() && second.known().isPresent()
        ? StoredLineUp.facing(first.known().get(), second.known().get())
        : SideRelation.UNKNOWN;
  }

  private static CommandResult result(Outcome outcome, boolean accepted) {
    double[] matrix = outcome.lineUp().transform().matrix();
    double radius = outcome.lineUp().uncertainty(outcome.first().extent().centre()).radius95();
    return CommandResult.ok(
        () -> json(outcome, matrix, radius).put("accepted", accepted),
        out -> {
          print(out, outcome, radius);
          if (accepted) {
            out.println("kept in the map: what is placed on one shows on the other");
          }
        });
  }

  private static Json.Obj json(Outcome outcome, double[] matrix, double radius) {
    List<Json> numbers = new ArrayList<>();
    for (double number : matrix) {
      numbers.add(Json.of(number));
    }
    return Json.object()
        .put("from", outcome.first().name())
        .put("to", outcome.second().name())
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

  private static void print(PrintWriter out, Outcome outcome, double radius) {
    out.println(
        String.format(
            Locale.ROOT,
            "%s to %s: %s%s; %d of %d pairs agree, rms %.1f px, 95 %% within %.1f px",
            outcome.first().name(),
            outcome.second().name(),
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
