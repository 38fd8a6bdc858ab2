package org.relegend.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.hazard.UnmarkedHazard;
import org.relegend.map.HazardZone;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;

/** Placed pins and bodies with mains or high voltage that lie in no zone of that kind. */
final class UnmarkedDanger implements Check {
  private record Place(PictureId picture, HazardZone.Kind kind) {}

  @Override
  public String code() {
    return "unmarked-danger";
  }

  /** One finding for each picture and kind, so that one new zone mends it. */
  @Override
  public List<Finding> inspect(CheckContext context) {
    return findings(
        context,
        code(),
        Severity.ERROR,
        context.hazards().unmarked().stream()
            .filter(danger -> danger.kind() != HazardZone.Kind.STORED_CHARGE)
            .toList());
  }

  static List<Finding> findings(
      CheckContext context, String code, Severity severity, List<UnmarkedHazard> unmarked) {
    Map<Place, List<Subject>> places = new LinkedHashMap<>();
    Map<Place, List<String>> inPart = new LinkedHashMap<>();
    for (UnmarkedHazard danger : unmarked) {
      Place at = new Place(danger.picture(), danger.kind());
      places.computeIfAbsent(at, place -> new ArrayList<>()).add(danger.subject());
      if (danger.inPart()) {
        inPart
            .computeIfAbsent(at, place -> new ArrayList<>())
            .add(danger.text(context.map().nameOf(danger.subject())));
      }
    }
    List<Finding> findings = new ArrayList<>();
    places.forEach(
        (place, subjects) ->
            findings.add(
                new Finding(
                        code,
                        severity,
                        subjects,
                        message(context, place, subjects, inPart.getOrDefault(place, List.of())),
                        "Unplug. Draw a %s zone around them, with a margin for the hand."
                            .formatted(words(place.kind())))
                    .on(place.picture())));
    return findings;
  }

  private static String message(
      CheckContext context, Place place, List<Subject> subjects, List<String> inPart) {
    String text =
        "On %s %s outside of every %s zone: %s"
            .formatted(
                context.caption(place.picture()),
                CountText.verb(
                    subjects.size(),
                    inPart.isEmpty() ? "one place lies" : "one place lies in part",
                    inPart.isEmpty() ? "places lie" : "places lie at least in part"),
                words(place.kind()),
                context.names(subjects));
    return inPart.isEmpty()
        ? text
        : "%s. Of some a zone holds a part only; outside lie %s"
            .formatted(text, String.join(", ", inPart));
  }

  private static String words(HazardZone.Kind kind) {
    return kind.word().replace('-', ' ');
  }
}
