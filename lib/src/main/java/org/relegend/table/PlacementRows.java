package org.relegend.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.relegend.map.Attestation;
import org.relegend.map.Evidence;
import org.relegend.map.NameRules;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Subject;

/** Reads rows of placements, after the parts and pins they may speak of. */
final class PlacementRows {
  private record Spot(PictureId picture, Subject subject) {}

  private final MapDraft draft;
  private final ImportOptions options;
  private final TableProblems problems;
  private final PlacementTargets targets;
  private final Map<Spot, List<Placement>> known = new HashMap<>();
  private final Map<Spot, Integer> lines = new HashMap<>();
  private final Map<Placement.Key, Placement> changed = new TreeMap<>();

  PlacementRows(
      MapDraft draft, ImportOptions options, PartCompletion completion, TableProblems problems) {
    this.draft = draft;
    this.options = options;
    this.problems = problems;
    targets = new PlacementTargets(draft, completion);
    draft.map().placements().forEach(this::remember);
  }

  private void remember(Placement placement) {
    Spot spot = new Spot(placement.picture(), placement.subject());
    List<Placement> there = known.computeIfAbsent(spot, s -> new ArrayList<>(1));
    there.removeIf(other -> other.ordinal() == placement.ordinal());
    there.add(placement);
  }

  /** New and changed placements, in order. */
  List<Placement> changed() {
    return List.copyOf(changed.values());
  }

  void read(TableRow row) {
    Optional<Subject> target = row.read("target", targets::subject, problems);
    Optional<Picture> picture = row.read("picture", this::picture, problems);
    OptionalDouble x = row.number("x", problems);
    OptionalDouble y = row.number("y", problems);
    Optional<Evidence> evidence =
        row.has("evidence")
            ? row.read("evidence", Evidence::of, problems)
            : Optional.of(ImportOptions.OF_PLACEMENTS);
    if (picture.isEmpty() || x.isEmpty() || y.isEmpty()) {
      return;
    }
    Point at = new Point(x.getAsDouble(), y.getAsDouble());
    boolean inside = isInside(picture.get(), at, row);
    if (inside && target.isPresent() && evidence.isPresent()) {
      Attestation attestation = options.attestation(evidence.get());
      place(new Placement(picture.get().id(), target.get(), at, attestation), attestation, row);
    }
  }

  private Picture picture(String text) {
    List<Picture> named =
        draft.map().pictures().stream()
            .filter(p -> p.id().text().equals(text) || p.title().equals(text))
            .toList();
    if (named.size() == 1) {
      return named.get(0);
    }
    String all =
        String.join(", ", draft.map().pictures().stream().map(p -> p.id().text()).toList());
    throw new IllegalArgumentException(
        "\"%s\" names %d pictures of the map, which has: %s"
            .formatted(NameRules.printable(text), named.size(), all.isEmpty() ? "none" : all));
  }

  private boolean isInside(Picture picture, Point at, TableRow row) {
    boolean x = at.x() >= 0 && at.x() <= picture.width();
    boolean y = at.y() >= 0 && at.y() <= picture.height();
    if (!x) {
      outside(picture, "x", picture.width(), row);
    }
    if (!y) {
      outside(picture, "y", picture.height(), row);
    }
    return x && y;
  }

  private void outside(Picture picture, String column, double size, TableRow row) {
    problems.add(
        row.problem(
            column,
            "%s lies outside picture %s: expected 0 to %s"
                .formatted(
                    NameRules.printable(row.text(column)),
                    picture.id(),
                    size == Math.rint(size) ? Long.toString((long) size) : Double.toString(size))));
  }

  private void place(Placement result, Attestation attestation, TableRow row) {
    Spot spot = new Spot(result.picture(), result.subject());
    List<Placement> there = known.getOrDefault(spot, List.of());
    Integer earlier = lines.putIfAbsent(spot, row.line());
    Optional<Placement> same = there.stream().filter(p -> p.at().equals(result.at())).findFirst();
    if (same.isPresent()) {
      if (!ImportAttestations.by(attestation, same.get().evidence())) {
        put(same.get().confirmedBy(attestation));
      }
    } else if (there.isEmpty()) {
      put(result);
    } else if (result.subject() instanceof Subject.OfNet) {
      put(anotherLabel(result, there));
    } else if (options.replace() && earlier == null) {
      put(there.get(0).movedTo(result.at(), attestation));
    } else {
      clash(result, there.get(0), Optional.ofNullable(earlier), row);
    }
  }

  /** A page shows the label of a net in many places, so a new place is no contradiction. */
  private static Placement anotherLabel(Placement result, List<Placement> there) {
    int ordinal = 1 + there.stream().mapToInt(Placement::ordinal).max().orElse(0);
    return new Placement(
        result.picture(),
        result.subject(),
        ordinal,
        result.at(),
        result.outline(),
        result.evidence());
  }

  private void put(Placement placement) {
    changed.put(placement.key(), placement);
    remember(placement);
  }

  private void clash(Placement result, Placement known, Optional<Integer> earlier, TableRow row) {
    problems.add(
        row.problem(
            "target",
            "%s is placed on %s at %s, %s %s and at %s, %s here: correct one%s"
                .formatted(
                    row.text("target"),
                    result.picture(),
                    known.at().x(),
                    known.at().y(),
                    earlier.map(line -> "in line " + line).orElse("in the map"),
                    result.at().x(),
                    result.at().y(),
                    earlier.isPresent() ? "" : ", or let the table replace it")));
  }
}
