package org.relegend.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.relegend.hazard.Unmarked;
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
      CheckContext context, String code, Severity severity, List<Unmarked> unmarked) {
    Map<Place, List<Subject>> places = new LinkedHashMap<>();
    for (Unmarked danger : unmarked) {
      places
          .computeIfAbsent(new Place(danger.picture(), danger.kind()), place -> new ArrayList<>())
          .add(danger.subject());
    }
    List<Finding> findings = new ArrayList<>();
    places.forEach(
        (place, subjects) ->
            findings.add(
                new Finding(
                        code,
                        severity,
                        subjects,
                        "On %s %s outside of every %s zone: %s"
                            .formatted(
                                context.caption(place.picture()),
                                Words.verb(subjects.size(), "one place lies", "places lie"),
                                words(place.kind()),
                                context.names(subjects)),
                        "Unplug. Draw a %s zone around them, with a margin for the hand."
                            .formatted(words(place.kind())))
                    .on(place.picture())));
    return findings;
  }

  private static String words(HazardZone.Kind kind) {
    return kind.word().replace('-', ' ');
  }
}
