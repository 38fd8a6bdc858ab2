package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.relegend.map.BoardMap;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.MapIndex;
import org.relegend.map.Subject;
import org.relegend.store.Json;
import org.relegend.twin.ProposedTwin;
import org.relegend.twin.SeedContradiction;
import org.relegend.twin.TwinDifference;
import org.relegend.twin.TwinGroup;
import org.relegend.twin.TwinResult;

/** Found twins, told either way. */
record TwinsText(BoardMap map) {
  Json json(List<TwinResult> found, int accepted) {
    MapIndex index = new MapIndex(map);
    return Json.object()
        .put("pairs", Json.array(all(found, TwinResult::pairs), this::pair))
        .put("pins", Json.array(all(found, TwinResult::pins), this::pair))
        .put(
            "groups",
            Json.array(
                all(found, TwinResult::groups),
                group -> Json.object().put("a", names(group.a())).put("b", names(group.b()))))
        .put(
            "differences",
            Json.array(all(found, TwinResult::differences), difference -> json(index, difference)))
        .put(
            "contradictions",
            Json.array(
                all(found, TwinResult::contradictions),
                contradiction ->
                    Json.object()
                        .put(
                            "pairs",
                            Json.array(
                                contradiction.pairs(),
                                seed ->
                                    Json.object()
                                        .put("a", map.nameOf(seed.a()))
                                        .put("b", map.nameOf(seed.b()))))
                        .put("reason", contradiction.reason())))
        .put("common", names(all(found, TwinResult::common)))
        .put("accepted", (long) accepted);
  }

  private static <T> List<T> all(List<TwinResult> found, Function<TwinResult, List<T>> part) {
    List<T> all = new ArrayList<>();
    found.forEach(twins -> all.addAll(part.apply(twins)));
    return all;
  }

  private Json names(List<Subject> subjects) {
    return Json.array(subjects, subject -> Json.of(map.nameOf(subject)));
  }

  private Json pair(ProposedTwin pair) {
    return Json.object()
        .put("kind", kind(pair.a()))
        .put("a", map.nameOf(pair.a()))
        .put("b", map.nameOf(pair.b()))
        .put("basis", pair.basis().word())
        .put("trust", pair.trust());
  }

  static String kind(Subject subject) {
    if (subject instanceof Subject.OfNet) {
      return "net";
    }
    if (subject instanceof Subject.OfPin) {
      return "pin";
    }
    return subject instanceof Subject.OfSection ? "section" : "part";
  }

  private Json json(MapIndex index, TwinDifference difference) {
    Json.Obj object =
        Json.object()
            .put("aspect", difference.aspect().word())
            .put("a", names(difference.a()))
            .put("b", names(difference.b()))
            .put("told", difference.text())
            .put("placements", Json.array(places(index, difference), PlacementText::json));
    return mark(difference).map(mark -> object.put("cause", mark.cause().word())).orElse(object);
  }

  private static List<org.relegend.map.Placement> places(
      MapIndex index, TwinDifference difference) {
    List<org.relegend.map.Placement> places = new ArrayList<>();
    difference.a().forEach(subject -> places.addAll(index.placementsOf(subject)));
    difference.b().forEach(subject -> places.addAll(index.placementsOf(subject)));
    return places;
  }

  private Optional<ChannelDeviation> mark(TwinDifference difference) {
    return map.deviations().find(difference.key());
  }

  void print(PrintWriter out, List<TwinResult> found, int accepted) {
    for (TwinResult twins : found) {
      print(out, twins);
    }
    if (found.isEmpty()) {
      out.println("no part of the circuit was found to repeat; give a seed with --seed A=B");
    }
    if (accepted > 0) {
      out.println(accepted + " twins accepted");
    }
  }

  private void print(PrintWriter out, TwinResult twins) {
    TextTable table = new TextTable();
    for (ProposedTwin pair : twins.pairs()) {
      table.row(
          map.nameOf(pair.a()),
          map.nameOf(pair.b()),
          kind(pair.a()),
          pair.basis().word(),
          String.format(Locale.ROOT, "%.2f", pair.trust()));
    }
    table.print(out, "");
    if (!twins.common().isEmpty()) {
      out.println("common to both: " + list(twins.common()));
    }
    for (TwinGroup group : twins.groups()) {
      out.println(
          "can't be told apart: any of %s with any of %s"
              .formatted(list(group.a()), list(group.b())));
    }
    for (TwinDifference difference : twins.differences()) {
      out.println(
          "differs (%s%s): %s"
              .formatted(
                  difference.aspect().word(),
                  mark(difference).map(mark -> ", " + mark.cause().word()).orElse(""),
                  difference.text()));
    }
    for (SeedContradiction contradiction : twins.contradictions()) {
      out.println("contradiction: " + contradiction(contradiction));
    }
  }

  private String list(List<Subject> subjects) {
    return subjects.stream().map(map::nameOf).collect(Collectors.joining(", "));
  }

  String contradiction(SeedContradiction contradiction) {
    String pairs =
        contradiction.pairs().stream()
            .map(seed -> map.nameOf(seed.a()) + "=" + map.nameOf(seed.b()))
            .collect(Collectors.joining(" and "));
    return "%s can't %sbe right: %s"
        .formatted(pairs, contradiction.pairs().size() > 1 ? "both " : "", contradiction.reason());
  }
}
